package plumbrow.advice.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.SprayPlan;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.TillageWork;

/** Puts a course and the rows that hang on it into a season, or takes them out. */
final class SeasonParts {
    private SeasonParts() {}

    /** The course in the place of the kept one; its rows where those of the kept one stood. */
    static Season replaced(Season season, Course kept, ChangedCourse changed) {
        List<Course> courses = season.courses().stream()
                .map(course -> course.equals(kept) ? changed.course() : course)
                .toList();
        return with(
                season,
                courses,
                inPlace(season.work().sprayPlans(), changed.plans(), plan -> of(plan.field(), plan.course(), kept)),
                inPlace(
                        season.pests().weedBook().tillage(),
                        changed.tillage(),
                        work -> of(work.field(), work.course(), kept)));
    }

    /** The course after all others. */
    static Season added(Season season, ChangedCourse changed) {
        return with(
                season,
                and(season.courses(), List.of(changed.course())),
                and(season.work().sprayPlans(), changed.plans()),
                and(season.pests().weedBook().tillage(), changed.tillage()));
    }

    /** The season without a course and all that hangs on it. */
    static Season without(Season season, Course course) {
        return with(
                season,
                season.courses().stream().filter(one -> !one.equals(course)).toList(),
                season.work().sprayPlans().stream()
                        .filter(plan -> !of(plan.field(), plan.course(), course))
                        .toList(),
                season.pests().weedBook().tillage().stream()
                        .filter(work -> !of(work.field(), work.course(), course))
                        .toList());
    }

    /** All that gates look at for courses of one field: the same findings, sooner. */
    static Season alone(Season season, Field field, List<ChangedCourse> changed) {
        List<SprayPlan> plans =
                changed.stream().flatMap(one -> one.plans().stream()).toList();
        return season.withFields(List.of(field))
                .withCourses(
                        changed.stream().map(ChangedCourse::course).toList(),
                        season.work().withSprayPlans(plans));
    }

    private static boolean of(String field, String course, Course kept) {
        return field.equals(kept.field()) && course.equals(kept.name());
    }

    /** The new rows one by one where old ones stood, in the order of the old. */
    private static <T> List<T> inPlace(List<T> rows, List<T> changed, Function<T, Boolean> old) {
        List<T> all = new ArrayList<>();
        int next = 0;
        for (T row : rows) {
            all.add(old.apply(row) ? changed.get(next++) : row);
        }
        return all;
    }

    private static <T> List<T> and(List<T> some, List<T> more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    private static Season with(Season season, List<Course> courses, List<SprayPlan> plans, List<TillageWork> tillage) {
        return season.withCourses(courses, season.work().withSprayPlans(plans))
                .withPests(season.pests().withTillage(tillage));
    }
}
