package plumbrow.app.desk.shelf;

/**
 * What was typed to put a value right.
 *
 * @param about what kind of value is added; empty where one that was read is put right
 * @param fault why it can't be so; empty where nothing is wrong
 */
public record MendForm(String who, String about, String value, String fault) {
    static final MendForm EMPTY = new MendForm("", "", "", "");
}
