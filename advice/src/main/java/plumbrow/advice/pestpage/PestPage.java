package plumbrow.advice.pestpage;

import java.time.LocalDate;
import java.util.List;

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
}
