package headertank.app.shop;

import java.util.function.Supplier;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;

/** Something that is looked up once in a request, and each time outside of one. */
public final class OncePerRequest<T> {

    private final String key;
    private final Supplier<T> lookUp;

    /**
     * @param owner whose it is; each owner has one
     * @param lookUp finds it, never null
     */
    public OncePerRequest(Class<?> owner, Supplier<T> lookUp) {
        this.key = owner.getName();
        this.lookUp = lookUp;
    }

    @SuppressWarnings("unchecked") // under this key stands nothing but what this has put there
    public T get() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request == null) {
            return lookUp.get();
        }
        Object known = request.getAttribute(key, RequestAttributes.SCOPE_REQUEST);
        if (known == null) {
            known = lookUp.get();
            request.setAttribute(key, known, RequestAttributes.SCOPE_REQUEST);
        }
        return (T) known;
    }

    /** To be called when it has changed within a request. */
    public void forget() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request != null) {
            request.removeAttribute(key, RequestAttributes.SCOPE_REQUEST);
        }
    }
}
