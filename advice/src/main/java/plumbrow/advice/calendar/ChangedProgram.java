package plumbrow.advice.calendar;

import java.util.List;
import java.util.Map;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.weeds.TillageWork;

/**
 * A program after changes, with the rows that hang on the numbers of its passes.
 *
 * @param plans how its passes are sprayed
 * @param tillage how its tillage is run
 * @param keptNumbers number that each of its passes had before, by its number now
 */
record ChangedProgram(
        Program program, List<SprayPlan> plans, List<TillageWork> tillage, Map<Integer, Integer> keptNumbers) {
    /** Whether passes changed places. */
    boolean renumbered() {
        return keptNumbers.entrySet().stream()
                .anyMatch(number -> !number.getKey().equals(number.getValue()));
    }
}
