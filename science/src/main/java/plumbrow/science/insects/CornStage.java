package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Leaf stage of corn from growing degree days (86/50 °F) since planting.
 *
 *   V = (G − Ge)/82 up to V10, then 10 + (G − Ge − 820)/50; Iowa uses 84 and 56
 *
 *   G growing degree days since planting [°F·d];  Ge those to emergence, 100 to 120, 115 by default
 *
 * Held at the leaf number of the hybrid, about 18 to 20. Tables disagree: an observed stage goes before this.
 *
 * Source: Nielsen, agry.purdue.edu vstageprediction, in agcrops.osu.edu 2018-15; Iowa: striptillfarmer.com/articles/2391.
 */
public final class CornStage {
    private static final double SLOW_LEAVES = 10;

    public static final Figure FIGURE = Figure.declare("corn-stage", Subject.INSECTS)
            .question("At which leaf stage is the corn?")
            .input(number("gdd", "Growing degree days since planting, 86/50", "GDD °F", Range.closed(0, 6000), "785"))
            .input(number("emergence_gdd", "Growing degree days to emergence", "GDD °F", Range.closed(50, 300), "115")
                    .orElse("115"))
            .input(word("table", "Rates per leaf", List.of("indiana", "iowa"), "indiana")
                    .orElse("indiana"))
            .input(number("leaves", "Leaf number of the hybrid", "leaves", Range.closed(8, 26), "20")
                    .orElse("20"))
            .output("leaf_stage", "Leaf stage", "V")
            .output("stage", "In words", "")
            .formula("V = (GDD − emergence) ÷ 82 up to V10, then 10 + (GDD − emergence − 820) ÷ 50")
            .source("[nielsen-vstage]", VERIFIED)
            .validity(
                    "Before emergence the stage is 0. Held at the hybrid's leaf number. An observed stage goes first.")
            .example("gdd=785 emergence_gdd=120", "leaf_stage=8.1 stage=V8", "[nielsen-vstage]", VERIFIED)
            .example("gdd=785", "leaf_stage=8.17", "independent arithmetic", COMPUTED)
            .example("gdd=400", "leaf_stage=3.48", "independent arithmetic", COMPUTED)
            .example("gdd=935", "leaf_stage=10.0", "independent arithmetic", COMPUTED)
            .example("gdd=1100", "leaf_stage=13.3", "independent arithmetic", COMPUTED)
            .example("gdd=1300", "leaf_stage=17.3", "independent arithmetic", COMPUTED)
            .example("gdd=785 emergence_gdd=120 table=iowa", "leaf_stage=7.92", "independent arithmetic", COMPUTED)
            .model(CornStage::solve);

    private CornStage() {}

    /** Leaf stage from degree days since emergence and those each leaf takes before and after V10. */
    public static double leafStage(double gddSinceEmergence, double slowRate, double fastRate) {
        double slow = SLOW_LEAVES * slowRate;
        return gddSinceEmergence <= slow
                ? Math.max(gddSinceEmergence, 0) / slowRate
                : SLOW_LEAVES + (gddSinceEmergence - slow) / fastRate;
    }

    private static Outputs solve(Given given, Working working) {
        double gdd = given.number("gdd");
        double emergence = given.number("emergence_gdd");
        double leaves = given.number("leaves");
        boolean iowa = given.word("table").equals("iowa");
        double slow = iowa ? 84 : 82;
        double fast = iowa ? 56 : 50;
        if (gdd < emergence) {
            working.line("degree days to emergence left", emergence - gdd, "GDD °F", "{} − {}", emergence, gdd);
            return new Outputs().put("leaf_stage", 0).put("stage", "not emerged");
        }
        double since = working.line("since emergence", gdd - emergence, "GDD °F", "{} − {}", gdd, emergence);
        double stage = leafStage(since, slow, fast);
        if (stage <= SLOW_LEAVES) {
            working.line("leaf stage", stage, "V", "{} ÷ {}", since, slow);
        } else {
            working.line("leaf stage", stage, "V", "10 + ({} − 10 × {}) ÷ {}", since, slow, fast);
        }
        double held = Math.min(stage, leaves);
        if (stage >= leaves) {
            working.caution("All leaves are out: the corn is at tassel or later.");
        }
        String words = stage >= leaves ? "VT or later" : held < 1 ? "VE" : "V" + (int) Math.floor(held);
        return new Outputs().put("leaf_stage", held).put("stage", words);
    }
}
