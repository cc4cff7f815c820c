package plumbrow.science.fate;

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
 * EPTC lost from a soil surface before it is worked in, as measured.
 *
 *   time    15 min  1 d  6 d
 *   dry       20     23   44 %
 *   moist     27     49   68 %
 *   wet       44     69   90 %
 *
 * Between the three times linear in log10(time) (common practice); outside them refused.
 *
 * Source: Gray & Weierich 1965, Weeds 13:141 (discovery.researcher.life).
 */
public final class ThiocarbamateLoss {
    private static final double[] HOURS = {0.25, 24, 144};
    private static final List<String> MOISTURE = List.of("dry", "moist", "wet");
    private static final double[][] LOST_PCT = {{20, 23, 44}, {27, 49, 68}, {44, 69, 90}};

    public static final Figure FIGURE = Figure.declare("thiocarbamate-loss", Subject.FATE)
            .question("How much of a thiocarbamate is lost before it is worked in?")
            .input(word("moisture", "Soil surface", MOISTURE, "moist"))
            .input(number("hours", "Hours on the surface", "h", Range.closed(0.25, 144), "4"))
            .output("lost_pct", "Lost to the air", "%")
            .formula("between the measured times linear in log10(time)")
            .source("EPTC of [gray-weierich-1965]", VERIFIED)
            .validity(
                    "15 minutes to 6 days, EPTC sprayed on the surface at 60 °F. Others differ; granules on dry soil lose little.")
            .caution("The label's hours and depth of incorporation are the law.")
            .example("moisture=moist hours=24", "lost_pct=49", "[gray-weierich-1965]", VERIFIED)
            .example("moisture=dry hours=.25", "lost_pct=20", "[gray-weierich-1965]", VERIFIED)
            .example("moisture=wet hours=144", "lost_pct=90", "[gray-weierich-1965]", VERIFIED)
            .example("moisture=moist hours=4", "lost_pct=40.364", "independent arithmetic", COMPUTED)
            .example("moisture=wet hours=12", "lost_pct=65.203", "independent arithmetic", COMPUTED)
            .example("moisture=dry hours=72", "lost_pct=35.876", "independent arithmetic", COMPUTED)
            .example("moisture=moist hours=48", "lost_pct=56.350", "independent arithmetic", COMPUTED)
            .model(ThiocarbamateLoss::solve);

    private ThiocarbamateLoss() {}

    private static Outputs solve(Given given, Working working) {
        double hours = given.number("hours");
        double[] lost = LOST_PCT[MOISTURE.indexOf(given.word("moisture"))];
        int from = hours < HOURS[1] ? 0 : 1;
        double way = working.line(
                "way between the times",
                Math.log10(hours / HOURS[from]) / Math.log10(HOURS[from + 1] / HOURS[from]),
                "",
                "log10({} ÷ {}) ÷ log10({} ÷ {})",
                hours,
                HOURS[from],
                HOURS[from + 1],
                HOURS[from]);
        return new Outputs()
                .put(
                        "lost_pct",
                        working.line(
                                "lost",
                                lost[from] + way * (lost[from + 1] - lost[from]),
                                "%",
                                "{} + {} × ({} − {})",
                                lost[from],
                                way,
                                lost[from + 1],
                                lost[from]));
    }
}
