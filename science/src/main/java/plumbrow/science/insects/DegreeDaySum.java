package plumbrow.science.insects;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Degree days summed over days in a row, as a figure. The rule of each day is in {@link DegreeDays}. */
public final class DegreeDaySum {
    private static final Range AIR_F = Range.closed(-100, 150);

    public static final Figure FIGURE = Figure.declare("degree-day-sum", Subject.INSECTS)
            .question("How much heat above the base did these days bring together?")
            .input(word("method", "Method", List.of("average", "modified", "triangle", "sine"), "modified"))
            .input(list("tmins_f", "Lowest temperature of each day", "°F", AIR_F, "38,41,45"))
            .input(list("tmaxs_f", "Highest temperature of each day", "°F", AIR_F, "55,62,70"))
            .input(number("lower_f", "Base, below which nothing grows", "°F", AIR_F, "50"))
            .input(number("upper_f", "Cutoff, above which heat adds nothing", "°F", AIR_F, "86")
                    .optional())
            .output("degree_days", "Degree days of all days", "DD °F")
            .output("running", "Running total", "DD °F")
            .formula("sum of the degree days of each day")
            .source(
                    "[baskerville-emin-1969] (sine), as in the tests of [trenchr]; corn growing degree days 86/50 (modified), [iowa-borer-growth]",
                    VERIFIED)
            .validity(
                    "Both lists of one length, lowest never above highest, no day missing: else refused. At most 400 days.")
            .caution(
                    "Use the method, the base and the start date of the table you compare with. Methods are not exchangeable.")
            .example(
                    "method=average tmins_f=38,41,45,52,60,66 tmaxs_f=55,62,70,78,88,95 lower_f=50",
                    "running=0.0,1.5,9.0,24.0,48.0,78.5",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "method=modified tmins_f=38,41,45,52,60,66 tmaxs_f=55,62,70,78,88,95 lower_f=50 upper_f=86",
                    "running=2.5,8.5,18.5,33.5,56.5,82.5",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "method=triangle tmins_f=38,41,45,52,60,66 tmaxs_f=55,62,70,78,88,95 lower_f=50 upper_f=86",
                    "degree_days=80.2",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "method=sine tmins_f=38,41,45,52,60,66 tmaxs_f=55,62,70,78,88,95 lower_f=50 upper_f=86",
                    "degree_days=80.9",
                    "independent arithmetic",
                    COMPUTED)
            .model(DegreeDaySum::solve);

    private static final int MOST_DAYS = 400;

    private DegreeDaySum() {}

    private static Outputs solve(Given given, Working working) {
        double[] mins = given.list("tmins_f");
        double[] maxs = given.list("tmaxs_f");
        double lower = given.number("lower_f");
        double upper = given.numberOr("upper_f", Double.POSITIVE_INFINITY);
        if (mins.length > MOST_DAYS) {
            throw given.refuse("tmins_f", "at most " + MOST_DAYS + " days");
        }
        if (maxs.length != mins.length) {
            throw given.refuse("tmaxs_f", "as many numbers as tmins_f has (" + mins.length + ")");
        }
        if (upper <= lower) {
            throw given.refuse("upper_f", "a number above lower_f (" + Numbers.plain(lower) + ")");
        }
        double[] running = new double[mins.length];
        double sum = 0;
        for (int i = 0; i < mins.length; i++) {
            if (mins[i] > maxs[i]) {
                throw given.refuse(
                        "tmins_f",
                        "no lowest above its highest (day " + (i + 1) + ": " + Numbers.plain(mins[i]) + " above "
                                + Numbers.plain(maxs[i]) + ")");
            }
            double day = DegreeDays.of(given.word("method"), mins[i], maxs[i], lower, upper);
            sum = working.line(
                    "total to day " + (i + 1), sum + day, "DD °F", "{} + {} ({} to {} °F)", sum, day, mins[i], maxs[i]);
            running[i] = sum;
        }
        return new Outputs().put("degree_days", sum).put("running", running);
    }
}
