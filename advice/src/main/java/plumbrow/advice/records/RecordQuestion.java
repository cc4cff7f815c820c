package plumbrow.advice.records;

/**
 * What is asked back before a record is kept: a record says what was done, also where that was wrong, but a slip of the pen is cheaper
 * to mend now.
 *
 * @param key by which it is answered
 * @param says what was found, against what
 */
public record RecordQuestion(String key, String says) {}
