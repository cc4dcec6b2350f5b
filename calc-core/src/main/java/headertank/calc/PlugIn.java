package headertank.calc;

/**
 * A rule, policy or supply of data that took part in a rating.
 *
 * @param kind what it is, e.g. {@code RiskRule}
 * @param id its stable name
 * @param version its version
 * @param source what it rests on, one line
 * @param problem why it gave no answer; empty when it did
 */
public record PlugIn(String kind, String id, String version, String source, String problem) {}
