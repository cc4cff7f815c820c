package plumbrow.advice.field;

/**
 * Another county in which a part of a field lies. Every county a field lies in judges it.
 *
 * @param state two-letter postal code
 * @param county county name, without the word county
 */
public record AlsoIn(String field, String state, String county) {}
