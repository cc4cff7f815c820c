package plumbrow.app.desk.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.farmplan.FarmPlan;
import plumbrow.advice.farmplan.FarmPlanner;
import plumbrow.advice.farmplan.KnownPlan;
import plumbrow.advice.farmplan.PlanOptions;
import plumbrow.advice.season.Season;

/**
 * The plans of all farms, made when they are first asked for and kept as long as the season stays equal; after a change only the
 * farms it touches are planned anew. Safe for several threads.
 */
public final class Plans {
    private record Last(Season season, List<FarmPlan> plans) {}

    private final Map<String, KnownPlan> known = new HashMap<>();
    private @Nullable Last last;

    /** The plans of a season; whoever asks while another waits for them, waits too. */
    synchronized List<FarmPlan> of(Season season) {
        Last kept = last;
        if (kept == null || !kept.season().equals(season)) {
            kept = new Last(season, FarmPlanner.of(season, List.of(), PlanOptions.DEFAULT, known));
            last = kept;
        }
        return kept.plans();
    }
}
