package headertank.app.shop;

import java.util.Set;

/** Somebody who has signed in. */
public interface Member {
    long accountId();

    long shopId();

    /** The name to show. */
    String displayName();

    Set<Role> roles();
}
