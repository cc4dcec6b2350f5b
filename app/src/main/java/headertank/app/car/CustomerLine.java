package headertank.app.car;

/** One customer in a list. */
public record CustomerLine(long id, String name, String phone, String email, String note, int cars) {}
