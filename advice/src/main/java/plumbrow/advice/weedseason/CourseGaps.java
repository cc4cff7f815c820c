package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Pass;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.science.figure.Numbers;

/** What a course lacks for its weeds to be followed day by day. */
final class CourseGaps {
    private static final double WHOLE = 99.99;
    private static final int MOST_TILLAGE = 5;

    private CourseGaps() {}

    static List<String> of(Season season, Field field, Course course, Optional<FieldClimate> climate) {
        List<String> gaps = new ArrayList<>();
        for (Pass pass : course.passes()) {
            boolean weedWork = herbicide(season, pass) || pass.kind() == PassKind.TILLAGE;
            if (!weedWork && pass.kind() != PassKind.SEED) {
                continue;
            }
            if (pass.date() == null) {
                gaps.add("a date for pass " + pass.number() + " of course '" + course.name() + "'");
            }
            if (weedWork && pass.sharePct() < WHOLE) {
                gaps.add("pass " + pass.number() + " of course '" + course.name() + "' over the whole field (it covers "
                        + Numbers.plain(pass.sharePct()) + " %)");
            }
        }
        if (course.passes().stream()
                        .filter(pass -> pass.kind() == PassKind.TILLAGE)
                        .count()
                > MOST_TILLAGE) {
            gaps.add("no more than " + MOST_TILLAGE + " tillage passes in course '" + course.name() + "'");
        }
        if (gaps.isEmpty()
                && climate.isPresent()
                && climate.get().seasons().stream()
                        .anyMatch(days -> CropDays.of(days, field, typed(season, field), Planting.of(season, course))
                                .isEmpty())) {
            gaps.add("when the crop of course '" + course.name() + "' is up and closed (sheet crop_days)");
        }
        return gaps;
    }

    static Optional<CropTiming> typed(Season season, Field field) {
        return season.pests().weedBook().crops().stream()
                .filter(crop -> crop.field().equals(field.name()))
                .findFirst();
    }

    static boolean herbicide(Season season, Pass pass) {
        return (pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE)
                && pass.product() != null
                && pass.rate() != null
                && season.shelf()
                        .product(pass.product())
                        .map(Product::kind)
                        .filter(kind -> kind == ProductKind.HERBICIDE)
                        .isPresent();
    }
}
