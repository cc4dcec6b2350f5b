package headertank.app.check;

/**
 * Why a signature is not accepted.
 *
 * @param field field of the form
 * @param key of the sentence in the message files
 * @param argument fills the sentence
 */
public record SignOffFault(String field, String key, String argument) {}
