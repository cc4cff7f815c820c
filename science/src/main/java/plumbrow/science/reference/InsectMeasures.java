package plumbrow.science.reference;

import java.util.Map;

/** What is kept of insects and of refuges. Bounds are our own: what can be at all, generously. */
final class InsectMeasures {
    private static final String DEGREE_DAYS = "degree-days F";
    private static final String PLANTS = "infested plants";
    static final Map<String, Measure> ALL = Measures.byKey(
            Measure.of(
                    "action_threshold",
                    "count at which to act",
                    0,
                    2000,
                    "per plant",
                    "per stem",
                    "per sweep",
                    "per ft of row",
                    "per 100 plants",
                    "% of plants",
                    "% leaf lost",
                    "nodes",
                    "larvae/ft2",
                    "larvae/plant",
                    "beetles/plant",
                    "beetles/ear",
                    "beetles/trap/day",
                    "beetles/trap/week"),
            Measure.of("injury_level", "count at which the loss equals the cost", 0, 5000, "per plant"),
            Measure.of(
                    "yield_loss",
                    "yield lost",
                    0,
                    100,
                    "%",
                    "% per larva per plant",
                    "share per node",
                    "bu/ac per larva per plant",
                    "% per 10,000 aphid days"),
            Measure.of("calendar", "warmth at which it happens", 0, 5000, DEGREE_DAYS),
            Measure.of("hatch_50", "warmth at which half have hatched", 0, 2000, DEGREE_DAYS),
            Measure.of("doubling_time", "days to double", .1, 60, "d"),
            Measure.of("days_threshold_to_injury", "days from threshold to injury level", .1, 60, "d"),
            Measure.of("plan_stop_low", "sampling plan: do not treat up to", 0, 100, PLANTS),
            Measure.of("plan_treat_at", "sampling plan: treat from", 0, 100, PLANTS),
            Measure.of("plan_agreement", "sampling plan: right in", 0, 100, "%"),
            Measure.of("desirable_injury", "root injury that is well", 0, 3, "nodes"),
            Measure.of("unexpected_injury", "root injury that hints at resistance", 0, 3, "nodes"),
            Measure.of("untreated_injury", "root injury without treatment", 0, 3, "nodes"),
            Measure.of("blend_injury", "root injury in a blend", 0, 3, "nodes"),
            Measure.of("chance_loss_below_cost", "chance that the loss is less than the treatment", 0, 100, "%"),
            Measure.of("explained_variation", "variation explained", 0, 100, "%"),
            Measure.of("trials_protected", "trials with roots well protected", 0, 100, "%"),
            Measure.of("survival", "survival", 0, 100, "%"),
            Measure.of("control", "control", 0, 100, "%"),
            Measure.of("borers_per_egg_mass", "borers from one egg mass", 0, 100, "larvae/mass"),
            Measure.of("eggs_per_mass", "eggs in one mass", 0, 500, "eggs/mass"),
            Measure.of("biofix", "trap catch from which warmth is summed", 0, 500, "moths in 2 nights"),
            Measure.of("eil_constant", "constant of the injury level", 0, 100, "beetles/plant"),
            Measure.of("refuge_share", "least refuge", 0, 100, "% of corn"));

    private InsectMeasures() {}
}
