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
 * Degree days (86/50) from planting at which corn reaches a stage, by maturity.
 *
 * Two tables are kept side by side and never mixed: three classes of maturity of the High Plains Regional Climate Center,
 * and Wisconsin's for hybrids of 95 to 105 days (R6 printed 2400 to 2600, 2400 taken). A stage seen in the field wins.
 *
 * Source: hprcc.unl.edu/archive/data/AWDN/crop_corn.txt; agweather.cals.wisc.edu/thermal-models/corn-dev.
 */
public final class CornCalendar {
    private static final List<String> TABLES = List.of("early", "medium", "late", "wisconsin");
    private static final List<String> PLAINS = List.of(
            "v4",
            "v6",
            "v8",
            "v10",
            "v12",
            "v14",
            "v16",
            "silk",
            "blister",
            "dough",
            "begin-dent",
            "full-dent",
            "black-layer");
    private static final double[][] PLAINS_GDD = {
        {240, 360, 480, 600, 720, 840, 960, 1144, 1327, 1511, 1694, 1878, 2062},
        {240, 360, 480, 600, 720, 840, 960, 1200, 1440, 1680, 1920, 2160, 2400},
        {240, 360, 480, 600, 720, 840, 960, 1272, 1585, 1897, 2210, 2522, 2835}
    };
    private static final List<String> WISCONSIN = List.of("v8", "v13", "vt", "r3", "r4", "r5", "r6");
    private static final double[] WISCONSIN_GDD = {600, 900, 1200, 1550, 1900, 2200, 2400};

    public static final Figure FIGURE = Figure.declare("corn-stage-heat", Subject.INSECTS)
            .question("Which stage has corn reached by the heat since planting, and when does the next come?")
            .input(number("gdd", "Growing degree days since planting, 86/50", "GDD °F", Range.closed(0, 6000), "1250"))
            .input(word("table", "Table: maturity on the High Plains, or Wisconsin 95 to 105 days", TABLES, "medium"))
            .input(number("gdd_day", "Growing degree days of a usual day now", "GDD °F", Range.above(0, 36), "22")
                    .orElse("22"))
            .output("reached", "Stage reached", "")
            .output("next", "Next stage of the table", "")
            .sometimes("to_next_gdd", "Until the next", "GDD °F")
            .sometimes("to_next_days", "Until the next, at that pace", "d")
            .formula(
                    "the last stage of the table at or below the sum; days = degree days to the next ÷ degree days a day")
            .source("[hprcc-corn]; [wisconsin-corn]", VERIFIED)
            .validity(
                    "86/50 rule from planting. Before the first stage of the table 'before' it is said, after the last 'none'.")
            .caution("The tables differ by 500 degree days at black layer: a stage seen in the field always wins.")
            .example(
                    "gdd=1250 table=medium gdd_day=22",
                    "reached=silk next=blister to_next_gdd=190 to_next_days=8.64",
                    "[hprcc-corn]: silk 1200, blister 1440",
                    VERIFIED)
            .example("gdd=1144 table=early", "reached=silk next=blister to_next_gdd=183", "[hprcc-corn]", VERIFIED)
            .example("gdd=2835 table=late", "reached=black-layer next=none", "[hprcc-corn]", VERIFIED)
            .example(
                    "gdd=1250 table=wisconsin",
                    "reached=vt next=r3 to_next_gdd=300",
                    "[wisconsin-corn]: VT 1200, R3 1550",
                    VERIFIED)
            .example("gdd=100 table=wisconsin", "reached=before v8 next=v8 to_next_gdd=500", "Wisconsin", COMPUTED)
            .model(CornCalendar::solve);

    private CornCalendar() {}

    /**
     * Degree days (86/50, °F) from planting to a stage, by the High Plains table for hybrids of medium maturity.
     *
     * @param stage as that table writes it: "v6", "silk"
     */
    public static double plainsMedium(String stage) {
        int place = PLAINS.indexOf(stage);
        if (place < 0) {
            throw new IllegalArgumentException("the table has no stage '" + stage + "'; it has " + PLAINS);
        }
        return PLAINS_GDD[1][place];
    }

    private static Outputs solve(Given given, Working working) {
        int table = TABLES.indexOf(given.word("table"));
        boolean plains = table < PLAINS_GDD.length;
        List<String> stages = plains ? PLAINS : WISCONSIN;
        double[] heat = plains ? PLAINS_GDD[table] : WISCONSIN_GDD;
        double sum = given.number("gdd");
        int reached = 0;
        while (reached < heat.length && heat[reached] <= sum) {
            reached++;
        }
        Outputs outputs =
                new Outputs().put("reached", reached == 0 ? "before " + stages.get(0) : stages.get(reached - 1));
        if (reached == heat.length) {
            working.line("past the last stage", sum - heat[reached - 1], "GDD °F", "{} − {}", sum, heat[reached - 1]);
            return outputs.put("next", "none");
        }
        double rest = working.line(
                "until " + stages.get(reached), heat[reached] - sum, "GDD °F", "{} − {}", heat[reached], sum);
        double day = given.number("gdd_day");
        return outputs.put("next", stages.get(reached))
                .put("to_next_gdd", rest)
                .put("to_next_days", working.line("days", rest / day, "d", "{} ÷ {}", rest, day));
    }
}
