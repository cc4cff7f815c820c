package plumbrow.advice.course;

import java.util.List;

/**
 * One candidate answer for a field: a complete set of passes.
 *
 * @param name unique within the field
 * @param baseline whether the others are compared with it; one per field
 */
public record Course(String field, String name, boolean baseline, RefugePlan refuge, String note, List<Pass> passes) {
    public Course {
        passes = List.copyOf(passes);
    }
}
