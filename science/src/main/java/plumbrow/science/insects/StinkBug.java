package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.FigureInputException;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * At how many stink bugs soybean and corn are treated.
 *
 *   soybean  bugs a sweep: Ohio 0.40 (seed or food 0.20), Tennessee R1–R6 0.36, R6–R7 0.72, Georgia bloom to mid fill 0.12,
 *            later 0.24, Mississippi at R6 0.80
 *   corn     bugs on 100 plants (North Carolina): V1–V6 treat from 13, V14–VT from 18, R1–R4 from 52
 *
 * The corn table has no row for V7 to V13: there is no published threshold, and none is made up.
 *
 * Source: m.farms.com 198835 (Ohio), "The Magic Number", 8 July 2024 (Tennessee), thomascountyag.com (Georgia),
 * deltafarmpress.com (Mississippi), entomology.ces.ncsu.edu/stink-bug-threshold (corn).
 */
public final class StinkBug {
    private static final double CORN_PLANTS = 100;

    /** A rule for soybean: so many bugs in so many sweeps. */
    private enum Rule {
        OHIO_GRAIN("ohio-grain", 4, 10),
        OHIO_SEED("ohio-seed", 2, 10),
        TENNESSEE_R1_R6("tennessee-r1-r6", 9, 25),
        TENNESSEE_R6_R7("tennessee-r6-r7", 18, 25),
        GEORGIA_BLOOM("georgia-bloom-to-mid-fill", 3, 25),
        GEORGIA_LATER("georgia-later", 6, 25),
        MISSISSIPPI_R6("mississippi-r6", 20, 25);

        private final String word;
        private final double bugs;
        private final double sweeps;

        Rule(String word, double bugs, double sweeps) {
            this.word = word;
            this.bugs = bugs;
            this.sweeps = sweeps;
        }
    }

    /** Stages of corn with the most bugs that need nothing, and the fewest that are treated, on 100 plants. */
    private enum CornStages {
        V1_V6("v1-v6", 6, 13),
        V7_V13("v7-v13", Double.NaN, Double.NaN),
        V14_VT("v14-vt", 9, 18),
        R1_R4("r1-r4", 35, 52);

        private final String word;
        private final double nothing;
        private final double treat;

        CornStages(String word, double nothing, double treat) {
            this.word = word;
            this.nothing = nothing;
            this.treat = treat;
        }
    }

    public static final Figure SOYBEAN = Figure.declare("stink-bug-soybean", Subject.INSECTS)
            .question("Are there so many stink bugs that soybeans are treated?")
            .input(number("bugs", "Stink bugs caught", "bugs", Range.NOT_NEGATIVE, "9"))
            .input(number("sweeps", "Sweeps of the net", "sweeps", Range.closed(1, 10_000), "25"))
            .input(word(
                    "rule",
                    "Rule of the state",
                    List.of(
                            "ohio-grain",
                            "ohio-seed",
                            "tennessee-r1-r6",
                            "tennessee-r6-r7",
                            "georgia-bloom-to-mid-fill",
                            "georgia-later",
                            "mississippi-r6"),
                    "tennessee-r1-r6"))
            .output("per_sweep", "Bugs a sweep", "bugs/sweep")
            .output("threshold", "Threshold", "bugs/sweep")
            .output("verdict", "In words", "")
            .formula("bugs ÷ sweeps against the bugs a sweep of the rule")
            .source("[stinkbug-oh]; [stinkbug-tn]; [stinkbug-ga]; [stinkbug-ms]", VERIFIED)
            .validity("A 15-inch net, several places. No treatment after R7.")
            .caution("The rules differ sixfold by state and stage: use your own state's, never a mean of them.")
            .example(
                    "bugs=9 sweeps=25 rule=tennessee-r1-r6",
                    "per_sweep=.36 threshold=.36 verdict=treat",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "bugs=3 sweeps=10 rule=ohio-grain",
                    "threshold=.40 verdict=below the threshold",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "bugs=3 sweeps=10 rule=georgia-bloom-to-mid-fill",
                    "threshold=.12",
                    "independent arithmetic",
                    COMPUTED)
            .example("bugs=3 sweeps=10 rule=georgia-later", "threshold=.24", "independent arithmetic", COMPUTED)
            .example("bugs=3 sweeps=10 rule=mississippi-r6", "threshold=.80", "independent arithmetic", COMPUTED)
            .model(StinkBug::solveSoybean);

    public static final Figure CORN = Figure.declare("stink-bug-corn", Subject.INSECTS)
            .question("Are there so many stink bugs that corn is treated?")
            .input(number("bugs", "Stink bugs found", "bugs", Range.NOT_NEGATIVE, "15"))
            .input(number("plants", "Plants looked at", "plants", Range.closed(1, 100_000), "100"))
            .input(word("stage", "Stage of the corn", List.of("v1-v6", "v7-v13", "v14-vt", "r1-r4"), "v1-v6"))
            .output("per_100", "Bugs on 100 plants", "bugs")
            .output("verdict", "In words", "")
            .formula("bugs × 100 ÷ plants; V1–V6 treat from 13, V14–VT from 18, R1–R4 from 52")
            .source("[stinkbug-nc]", VERIFIED)
            .validity("North Carolina. From V7 to V13 nothing is published: the answer is unknown, never clear.")
            .caution("In between, look at more plants. Field edges hold more than the middle.")
            .example("bugs=6 plants=100 stage=v1-v6", "per_100=6 verdict=do not treat", "[stinkbug-nc]", VERIFIED)
            .example("bugs=7 plants=100 stage=v1-v6", "verdict=look at more plants", "[stinkbug-nc]", VERIFIED)
            .example("bugs=13 plants=100 stage=v1-v6", "verdict=treat", "[stinkbug-nc]", VERIFIED)
            .example("bugs=18 plants=100 stage=v14-vt", "verdict=treat", "[stinkbug-nc]", VERIFIED)
            .example("bugs=51 plants=100 stage=r1-r4", "verdict=look at more plants", "[stinkbug-nc]", VERIFIED)
            .example("bugs=52 plants=100 stage=r1-r4", "verdict=treat", "[stinkbug-nc]", VERIFIED)
            .example("bugs=90 plants=100 stage=v7-v13", "verdict=no published threshold", "[stinkbug-nc]", VERIFIED)
            .model(StinkBug::solveCorn);

    private StinkBug() {}

    private static Outputs solveSoybean(Given given, Working working) {
        double bugs = given.number("bugs");
        double sweeps = given.number("sweeps");
        Rule rule = rule(given.word("rule"));
        double threshold =
                working.line("threshold", rule.bugs / rule.sweeps, "bugs/sweep", "{} ÷ {}", rule.bugs, rule.sweeps);
        double found = working.line("bugs a sweep", bugs / sweeps, "bugs/sweep", "{} ÷ {}", bugs, sweeps);
        return new Outputs()
                .put("per_sweep", found)
                .put("threshold", threshold)
                .put("verdict", found >= threshold ? "treat" : "below the threshold");
    }

    private static Outputs solveCorn(Given given, Working working) {
        double bugs = given.number("bugs");
        double plants = given.number("plants");
        double found = working.line(
                "bugs on 100 plants", bugs * CORN_PLANTS / plants, "bugs", "{} × {} ÷ {}", bugs, CORN_PLANTS, plants);
        return new Outputs().put("per_100", found).put("verdict", cornVerdict(given.word("stage"), found));
    }

    private static String cornVerdict(String word, double found) {
        for (CornStages stages : CornStages.values()) {
            if (stages.word.equals(word)) {
                if (Double.isNaN(stages.treat)) {
                    return "no published threshold";
                }
                if (found >= stages.treat) {
                    return "treat";
                }
                return found <= stages.nothing ? "do not treat" : "look at more plants";
            }
        }
        throw new FigureInputException("stage", "stage is '" + word + "', which the table does not know");
    }

    private static Rule rule(String word) {
        for (Rule rule : Rule.values()) {
            if (rule.word.equals(word)) {
                return rule;
            }
        }
        throw new FigureInputException("rule", "rule is '" + word + "', which is not listed");
    }
}
