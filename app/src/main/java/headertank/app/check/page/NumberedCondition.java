package headertank.app.check.page;

/**
 * A condition of a check under its number, which is the same on its first screen, where it is signed and on its sheet.
 *
 * @param key by which it is accepted
 * @param about what it is about, with its duty where it belongs to one
 * @param todo what to do
 */
public record NumberedCondition(int number, String key, String about, String todo) {}
