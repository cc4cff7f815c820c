package plumbrow.science.reference;

import java.util.List;
import java.util.Map;
import plumbrow.science.figure.Status;

/**
 * What a look through the reference data found.
 *
 * @param contested sources that disagree under the same conditions: no fault, both are kept and the spread is shown
 * @param troubles what must be put right
 */
public record DataReport(List<SetCount> sets, List<Contested> contested, List<Trouble> troubles) {

    /**
     * The sound rows of one set.
     *
     * @param byStatus rows of each status; those with a reserve count under their status
     * @param withReserve verified rows of which something was not seen
     */
    public record SetCount(String set, String file, int rows, Map<Status, Integer> byStatus, int withReserve) {}

    /** Values that differ for the same thing. */
    public record Contested(String file, String about, List<String> values, List<Integer> rows) {}

    public boolean clean() {
        return troubles.isEmpty();
    }
}
