package plumbrow.advice.calendar;

import java.util.List;
import java.util.Map;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.SprayPlan;
import plumbrow.advice.weeds.TillageWork;

/**
 * A course after changes, with the rows that hang on the numbers of its passes.
 *
 * @param plans how its passes are sprayed
 * @param tillage how its tillage is run
 * @param keptNumbers number that each of its passes had before, by its number now
 */
record ChangedCourse(
        Course course, List<SprayPlan> plans, List<TillageWork> tillage, Map<Integer, Integer> keptNumbers) {
    /** Whether passes changed places. */
    boolean renumbered() {
        return keptNumbers.entrySet().stream()
                .anyMatch(number -> !number.getKey().equals(number.getValue()));
    }
}
