package plumbrow.advice.program;

import java.util.List;

/**
 * One candidate answer for a field: a complete set of passes.
 *
 * @param name unique within the field
 * @param baseline whether the others are compared with it; one per field
 */
public record Program(String field, String name, boolean baseline, RefugePlan refuge, String note, List<Pass> passes) {
    public Program {
        passes = List.copyOf(passes);
    }
}
