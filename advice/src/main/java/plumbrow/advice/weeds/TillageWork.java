package plumbrow.advice.weeds;

/**
 * How a tillage pass is run.
 *
 * @param field the field, {@code program} the program, {@code pass} the number of the pass it belongs to
 * @param depthIn operating depth [in]
 */
public record TillageWork(String field, String program, int pass, Tool tool, double depthIn, String source) {}
