package plumbrow.advice.weighing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.weedseason.CourseSeason;

/**
 * Competitive load of each weed for one plant/m² of it, as a factor on its loss per plant, draw by draw and course by course, as
 * far as courses are followed by the season of weeds. Neither density nor loss per plant is in it: a change of those asks for no new
 * season.
 */
final class SeasonLoads {
    static final SeasonLoads NONE = new SeasonLoads(Map.of());

    private final Map<String, double[][]> byCourse;

    private SeasonLoads(Map<String, double[][]> byCourse) {
        this.byCourse = byCourse;
    }

    /** @param columns the draws of each input, by its place */
    static SeasonLoads of(List<CourseModel> courses, double[][] columns, int draws) {
        Map<String, double[][]> byCourse = new HashMap<>();
        for (CourseModel course : courses) {
            CourseSeason season = course.season();
            if (season != null) {
                double[][] loads = new double[course.weeds().size()][];
                for (int j = 0; j < loads.length; j++) {
                    loads[j] = season.unitLoad(j, columns, draws);
                }
                byCourse.put(course.course().name(), loads);
            }
        }
        return byCourse.isEmpty() ? NONE : new SeasonLoads(byCourse);
    }

    /** Loads of a course by weed and draw; empty where it is not followed by the season. */
    double[][] of(CourseModel course) {
        return byCourse.getOrDefault(course.course().name(), new double[0][]);
    }

    /** Every so manieth draw. */
    SeasonLoads thinned(int step) {
        Map<String, double[][]> fewer = new HashMap<>();
        byCourse.forEach((course, loads) -> fewer.put(course, Thinned.rows(loads, step)));
        return new SeasonLoads(fewer);
    }

    /** The loads after the draws of one input became others: only weeds that hang on it are followed again. */
    SeasonLoads with(List<CourseModel> courses, int place, double[][] columns, int draws) {
        Map<String, double[][]> changed = new HashMap<>(byCourse);
        for (CourseModel course : courses) {
            CourseSeason season = course.season();
            if (season != null) {
                double[][] loads = of(course).clone();
                for (int j = 0; j < loads.length; j++) {
                    if (season.reads(j, place)) {
                        loads[j] = season.unitLoad(j, columns, draws);
                    }
                }
                changed.put(course.course().name(), loads);
            }
        }
        return new SeasonLoads(changed);
    }
}
