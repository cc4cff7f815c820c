package plumbrow.advice.pestpage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One weed or insect, from what this season's book and the reference data know.
 *
 * @param sentence what matters most
 * @param coming when it comes up or hatches, field by field
 * @param pressing what it costs, field by field
 * @param thresholds from when on a treatment pays, field by field
 * @param works products of the shelf, crop by crop, the best first
 * @param failed sites of action and traits that fail
 * @param unasked fields of which nobody has written what it resists
 * @param plans two passes for each crop
 * @param alike similar ones to borrow from
 */
public record PestPage(
        int year,
        LocalDate asOf,
        String name,
        PestKind kind,
        String sentence,
        List<Coming> coming,
        List<Pressing> pressing,
        List<Scouting> scouting,
        List<Threshold> thresholds,
        List<Works> works,
        List<FailedSite> failed,
        List<String> unasked,
        List<TwoPasses> plans,
        List<Alike> alike,
        List<String> cautions) {
    public PestPage {
        coming = List.copyOf(coming);
        pressing = List.copyOf(pressing);
        scouting = List.copyOf(scouting);
        thresholds = List.copyOf(thresholds);
        works = List.copyOf(works);
        failed = List.copyOf(failed);
        unasked = List.copyOf(unasked);
        plans = List.copyOf(plans);
        alike = List.copyOf(alike);
        cautions = List.copyOf(cautions);
    }

    /** Fields on which it is known when it comes. */
    public List<Coming> known() {
        return coming.stream().filter(one -> one.lookUp() == null).toList();
    }

    /** What is missing to know when it comes, with the fields that miss it. */
    public Map<String, List<String>> missing() {
        Map<String, List<String>> missing = new LinkedHashMap<>();
        for (Coming one : coming) {
            String lookUp = one.lookUp();
            if (lookUp != null) {
                missing.computeIfAbsent(lookUp, key -> new ArrayList<>()).add(one.field());
            }
        }
        return missing;
    }
}
