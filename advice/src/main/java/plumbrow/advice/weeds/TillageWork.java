package plumbrow.advice.weeds;

/**
 * How a tillage pass is run.
 *
 * @param field the field, {@code course} the course, {@code pass} the number of the pass it belongs to
 * @param depthIn operating depth [in]
 */
public record TillageWork(String field, String course, int pass, Tool tool, double depthIn, String source) {}
