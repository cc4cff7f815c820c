package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
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
 * Where a pest stands in its calendar of degree days.
 *
 *   rootworm      hatch of half of the eggs at 684–767 soil degree days, base 52 °F, from 1 January
 *   black cutworm cutting from 300, base 50 °F, from a catch of 9 moths in 2 nights; stages to 989, none after
 *
 * Older bulletins give 380–426 for rootworm hatch: superseded, never mixed.
 *
 * Source: Levine et al. 1992 in extension.illinois.edu Hill and Furrow 2016-06-17; agebb.missouri.edu bcwforecast.
 */
public final class InsectCalendars {
    /** Soil degree days base 52 °F at which the hatch window opens and closes. */
    private static final double HATCH_OPENS = 684;

    private static final double HATCH_CLOSES = 767;

    /** Last degree day of each stage of black cutworm, base 50 °F. */
    private static final double[] CUTWORM_ENDS = {90, 311, 364, 430, 640, 989};

    private static final List<String> CUTWORM_STAGES = List.of(
            "eggs",
            "instars 1 to 3: leaf feeding",
            "instar 4: first cutting",
            "instar 5: cutting",
            "instar 6: cutting, slowing",
            "pupae: cutting has stopped");

    public static final Figure ROOTWORM = Figure.declare("rootworm-hatch", Subject.INSECTS)
            .question("Have the rootworm eggs hatched?")
            .input(number(
                    "soil_degree_days",
                    "Soil degree days since 1 January, 4 in deep, base 52 °F",
                    "DD °F",
                    Range.closed(0, 6000),
                    "690"))
            .output("hatch", "Half of the eggs", "")
            .output("to_window", "Degree days until the window opens", "DD °F")
            .formula("before 684, within 684 to 767, past 767")
            .source("[levine-1992]", VERIFIED)
            .validity("Bare soil, 4 in deep, mean of daily highest and lowest. Air temperatures are not a stand-in.")
            .example(
                    "soil_degree_days=630",
                    "hatch=before the window to_window=54.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "soil_degree_days=690", "hatch=within the window to_window=0.0", "independent arithmetic", COMPUTED)
            .example("soil_degree_days=770", "hatch=past the window", "independent arithmetic", COMPUTED)
            .model(InsectCalendars::solveRootworm);

    public static final Figure BLACK_CUTWORM = Figure.declare("black-cutworm-stage", Subject.INSECTS)
            .question("At which stage are the black cutworms?")
            .input(number(
                    "degree_days",
                    "Degree days since the catch of moths, base 50 °F",
                    "DD °F",
                    Range.closed(0, 6000),
                    "312"))
            .output("stage", "Stage", "")
            .output("to_cutting", "Degree days until the first cutting", "DD °F")
            .formula("91–311 leaf feeding, 312–364 first cutting, 365–430, 431–640 cutting, 641–989 pupae")
            .source("[missouri-cutworm]; first cutting at 300: [illinois-cutworm-28]", VERIFIED)
            .validity("From 9 moths or more in 2 nights. The table starts at 91; before it eggs are assumed.")
            .caution("Scout a week before 300. Treat on cut plants and larvae present, never on degree days alone.")
            .example(
                    "degree_days=299", "stage=instars 1 to 3: leaf feeding to_cutting=1.0", "not yet cutting", COMPUTED)
            .example("degree_days=312", "stage=instar 4: first cutting to_cutting=0.0", "[missouri-cutworm]", VERIFIED)
            .example("degree_days=430", "stage=instar 5: cutting", "[missouri-cutworm]", VERIFIED)
            .example("degree_days=640", "stage=instar 6: cutting, slowing", "[missouri-cutworm]", VERIFIED)
            .example("degree_days=650", "stage=pupae: cutting has stopped", "[missouri-cutworm]", VERIFIED)
            .model(InsectCalendars::solveBlackCutworm);

    private static final double FIRST_CUTTING = 300;

    private InsectCalendars() {}

    /** The window in which half of the rootworm eggs have hatched. */
    static List<HeatCalendar.Event> hatch() {
        return List.of(
                new HeatCalendar.Event("window opens in which half of the eggs have hatched", HATCH_OPENS),
                new HeatCalendar.Event("that window closes", HATCH_CLOSES));
    }

    private static Outputs solveRootworm(Given given, Working working) {
        double sum = given.number("soil_degree_days");
        double left = working.line(
                "until the window opens",
                Math.max(HATCH_OPENS - sum, 0),
                "DD °F",
                "{} − {}, not below 0",
                HATCH_OPENS,
                sum);
        String hatch =
                sum < HATCH_OPENS ? "before the window" : sum <= HATCH_CLOSES ? "within the window" : "past the window";
        return new Outputs().put("hatch", hatch).put("to_window", left);
    }

    private static Outputs solveBlackCutworm(Given given, Working working) {
        double sum = given.number("degree_days");
        double left = working.line(
                "until the first cutting",
                Math.max(FIRST_CUTTING - sum, 0),
                "DD °F",
                "{} − {}, not below 0",
                FIRST_CUTTING,
                sum);
        String stage = "past the pupae: no cutting";
        for (int i = CUTWORM_ENDS.length - 1; i >= 0; i--) {
            // A stage ends with its whole degree day: 311.4 is still 311.
            if (sum < CUTWORM_ENDS[i] + 1) {
                stage = CUTWORM_STAGES.get(i);
            }
        }
        return new Outputs().put("stage", stage).put("to_cutting", left);
    }
}
