package plumbrow.advice.search;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.gates.Escape;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.weeds.TillageWork;

/**
 * A program that the search found. All money is the operator's, per acre of the field.
 *
 * @param program as it can go into the season, under a name of its own
 * @param plans how its passes are sprayed
 * @param tillage how its tillage is run, where the book says so
 * @param costUsdPerAcre [$/ac]
 * @param meanYieldBuPerAcre [bu/ac]
 * @param meanMarginUsdPerAcre [$/ac]
 * @param shortfallUsdPerAcre mean margin of its worst tenth of draws [$/ac]
 * @param sites for each driver weed, how many sites of action work on it
 * @param escape where it leans hardest on one site of action; null without herbicides or weeds
 * @param lookUps what must be looked up before it may be advised; empty where nothing is unknown
 */
public record Found(
        Program program,
        List<SprayPlan> plans,
        List<TillageWork> tillage,
        double costUsdPerAcre,
        double meanYieldBuPerAcre,
        double meanMarginUsdPerAcre,
        double shortfallUsdPerAcre,
        Standing standing,
        Map<String, Integer> sites,
        @Nullable Escape escape,
        List<Finding> lookUps) {
    public Found {
        plans = List.copyOf(plans);
        tillage = List.copyOf(tillage);
        lookUps = List.copyOf(lookUps);
    }

    public String name() {
        return program.name();
    }

    /** Share of plants that would survive if they resisted the site this program leans on most; 0 without such. */
    public double escapeShare() {
        return escape == null ? 0 : escape.share();
    }
}
