package headertank.app.shop;

/** What a member of the shop may do. Roles add up and imply nothing: an owner who also turns spanners holds both. */
public enum Role {
    FRONT_DESK,
    TECHNICIAN,
    OWNER;

    /** Name of the authority in Spring Security. */
    public String authority() {
        return "ROLE_" + name();
    }
}
