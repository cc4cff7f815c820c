package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import plumbrow.advice.weedseason.CourseSeason;

/**
 * Mean difference of two courses' margins with an input of the weed season held at a value.
 *
 *   difference(x) ≈ d_all + d_few(x) − d_few
 *
 *   d_all     on all draws, the input drawn;  d_few(x), d_few  on every so manieth draw, the input held and drawn
 *
 * A season has to be followed again for every value, so five hundred draws must do; what they have in common with all draws is
 * kept by the difference. Other inputs are held on all draws.
 */
final class SeasonTurns {
    private static final int FEW = 500;

    private final List<CourseModel> courses;
    private final double[][] few;
    private final SeasonLoads fewLoads;
    private final Kernel kernel;
    private final double[][] margins;
    private final double correction;

    SeasonTurns(FieldModel model, double[][] columns, SeasonLoads loads, List<CourseModel> courses) {
        this.courses = courses;
        int draws = columns[0].length;
        boolean followed = courses.stream().anyMatch(course -> course.season() != null);
        int step = followed ? Math.max(1, draws / FEW) : draws;
        this.few = Thinned.rows(columns, step);
        this.fewLoads = loads.thinned(step);
        this.margins = new double[2][few[0].length];
        this.kernel = new Kernel(model, fewLoads);
        if (followed) {
            double[][] all = new double[2][draws];
            new Kernel(model, loads).run(courses, columns, new double[2][0], all);
            this.correction = meanDifference(all) - difference();
        } else {
            this.correction = 0;
        }
    }

    /** Whether holding an input asks for the season to be followed again. */
    boolean follows(int place) {
        return courses.stream().anyMatch(course -> {
            CourseSeason season = course.season();
            return season != null && IntStream.range(0, course.weeds().size()).anyMatch(j -> season.reads(j, place));
        });
    }

    /** Mean difference of the first course's margin over the second's [$/ac], an input held. */
    double at(int place, double value) {
        double[] own = few[place];
        few[place] = new double[own.length];
        Arrays.fill(few[place], value);
        kernel.with(fewLoads.with(courses, place, few, own.length));
        double answer = difference() + correction;
        kernel.with(fewLoads);
        few[place] = own;
        return answer;
    }

    private double difference() {
        kernel.run(courses, few, new double[2][0], margins);
        return meanDifference(margins);
    }

    private static double meanDifference(double[][] margins) {
        double sum = 0;
        for (int i = 0; i < margins[0].length; i++) {
            sum += margins[0][i] - margins[1][i];
        }
        return sum / margins[0].length;
    }
}
