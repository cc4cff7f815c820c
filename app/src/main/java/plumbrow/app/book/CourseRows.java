package plumbrow.app.book;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Pass;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.course.RefugePlan;
import plumbrow.advice.field.Crop;
import plumbrow.advice.outlook.OutlookLine;
import plumbrow.advice.outlook.OutlookQuantity;
import plumbrow.advice.season.Season;

/** The candidate answers with their passes, and the outlook on which they are weighed. */
final class CourseRows {
    /** Courses; their passes come with {@link #PASS}. */
    static final RowKind<Course> COURSE = new RowKind<>(
            "course",
            "field name baseline refuge_distance_ft refuge_rows note",
            Season::courses,
            (course, cells) -> cells.text(course.field())
                    .text(course.name())
                    .yes(course.baseline())
                    .real(course.refuge().distanceFt())
                    .whole(course.refuge().rows())
                    .text(course.note()),
            row -> new Course(
                    row.text(),
                    row.text(),
                    row.yes(),
                    new RefugePlan(row.maybeReal(), row.maybeWhole()),
                    row.text(),
                    List.of()));

    static final RowKind<Trip> PASS = new RowKind<>(
            "pass",
            "field course number kind date product rate rate_unit share_pct charge_usd_ac injury_pct delay_days",
            season -> season.courses().stream()
                    .flatMap(course -> course.passes().stream()
                            .map(pass -> new Trip(new Place(course.field(), course.name()), pass)))
                    .toList(),
            (trip, cells) -> cells.text(trip.place().field())
                    .text(trip.place().course())
                    .whole(trip.pass().number())
                    .word(trip.pass().kind())
                    .date(trip.pass().date())
                    .text(trip.pass().product())
                    .amount(trip.pass().rate())
                    .real(trip.pass().sharePct())
                    .real(trip.pass().chargeUsdPerAcre())
                    .law(trip.pass().injuryPct())
                    .real(trip.pass().delayDays()),
            row -> new Trip(
                    new Place(row.text(), row.text()),
                    new Pass(
                            row.whole(),
                            row.word(PassKind.class),
                            row.maybeDate(),
                            row.maybeText(),
                            row.maybeAmount(),
                            row.real(),
                            row.real(),
                            row.law(),
                            row.real())));

    static final RowKind<OutlookLine> OUTLOOK = new RowKind<>(
            "outlook",
            "crop field quantity law source",
            Season::outlook,
            (line, cells) -> cells.word(line.crop())
                    .text(line.field())
                    .word(line.quantity())
                    .law(line.law())
                    .text(line.source()),
            row -> new OutlookLine(
                    row.maybeWord(Crop.class),
                    row.maybeText(),
                    row.word(OutlookQuantity.class),
                    row.law(),
                    row.text()));

    /** The course of a field to which a pass belongs. */
    record Place(String field, String course) {}

    /** A pass and where it belongs. */
    record Trip(Place place, Pass pass) {}

    private CourseRows() {}

    /** The courses with their passes. */
    static List<Course> withPasses(List<Course> courses, List<Trip> trips) {
        Map<Place, List<Trip>> byCourse = Grouped.by(Trip::place, trips);
        return courses.stream()
                .map(course -> withPasses(course, byCourse.get(new Place(course.field(), course.name()))))
                .toList();
    }

    private static Course withPasses(Course course, @Nullable List<Trip> trips) {
        List<Pass> passes =
                trips == null ? List.of() : trips.stream().map(Trip::pass).toList();
        return new Course(course.field(), course.name(), course.baseline(), course.refuge(), course.note(), passes);
    }
}
