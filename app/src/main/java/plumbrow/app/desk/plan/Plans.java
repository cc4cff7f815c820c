package plumbrow.app.desk.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.farmplan.FarmPlan;
import plumbrow.advice.farmplan.FarmPlanner;
import plumbrow.advice.farmplan.PlanOptions;
import plumbrow.advice.season.Season;

/** The plans of all farms, made when they are first asked for and kept as long as the season stays equal. */
public final class Plans {
    private record Known(Season season, List<FarmPlan> plans) {}

    private @Nullable Known known;

    /** The plans of a season; whoever asks while another waits for them, waits too. */
    synchronized List<FarmPlan> of(Season season) {
        Known last = known;
        if (last == null || !last.season().equals(season)) {
            last = new Known(season, FarmPlanner.of(season, List.of(), PlanOptions.DEFAULT));
            known = last;
        }
        return last.plans();
    }
}
