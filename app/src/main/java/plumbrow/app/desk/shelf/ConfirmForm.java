package plumbrow.app.desk.shelf;

/**
 * What was typed about a value of a label.
 *
 * @param value what the page says instead
 * @param fault why it can't be so; empty where nothing is wrong
 */
public record ConfirmForm(String who, String value, String fault) {}
