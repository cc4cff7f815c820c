package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.science.figure.Numbers;

/**
 * Whether what else a label asks is kept: days of the year, days after planting, counties, pests, nozzles and its other
 * duties.
 *
 * <p>Protects the law. Every row holds. Outside the days, too early or too late after planting, in another county, or where
 * nothing that the label lists presses on the field, it is barred; the first and last day are within it. Unknown where a day
 * is missing. Nozzles, depth to ground water, hours of day, inversions and other duties are conditions to keep: the book does
 * not hold what would clear them.
 *
 * <p>Source: the label. Needs: rows of label limits, days of the pass and of planting, the pests of the field.
 */
final class LabelLimits extends Question {
    LabelLimits() {
        super("label-limit", Protects.LAW, "Is what else the label asks kept?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .flatMap(application -> at
                        .index()
                        .limits(application.product(), at.field().crop())
                        .stream()
                        .flatMap(row -> judge(at, application, row).map(finding -> finding.standingIn(row.source()))))
                .toList();
    }

    private Stream<Finding> judge(Case at, Application application, LabelLimit row) {
        return switch (row.kind()) {
            case NOT_BEFORE, NOT_AFTER -> Stream.of(day(application, row));
            case LEAST_DAYS_AFTER_PLANTING, MOST_DAYS_AFTER_PLANTING -> Stream.of(planted(at, application, row));
            case ONLY_COUNTIES -> at.places().stream().map(place -> county(application, row, place));
            case ONLY_PESTS -> Stream.of(pests(at, application, row));
            case NOZZLES ->
                Stream.of(keep(
                        application,
                        "The label names the nozzles it may go through: " + row.value() + ".",
                        "Fit one of them, at the pressure the label gives."));
            case GROUND_WATER_FT ->
                Stream.of(keep(
                        application,
                        "The label asks for " + row.value() + " ft or more down to ground water.",
                        "Look up the depth to water under " + at.field().name()
                                + ", and keep off where it stands higher."));
            case HOURS ->
                Stream.of(keep(
                        application,
                        "The label allows certain hours of the day only: " + row.value() + ".",
                        "Spray within them."));
            case INVERSION ->
                Stream.of(keep(
                        application,
                        "The label speaks of temperature inversions: " + row.value() + ".",
                        "Look on the day, before you begin, that there is none."));
            case DUTY -> Stream.of(keep(application, "The label asks: " + row.value() + ".", "Plan for it."));
            case CHEMIGATION -> Stream.of();
        };
    }

    private Finding keep(Application application, String says, String duty) {
        return conditional(application.subject(), says, duty);
    }

    private Finding day(Application application, LabelLimit row) {
        LocalDate date = application.date();
        MonthDay limit = LabelLimit.dayOfYear(row.value()).orElse(null);
        boolean first = row.kind() == LabelLimit.Kind.NOT_BEFORE;
        String allowed = "the label allows it " + (first ? "from " : "until ") + row.value() + " (month and day)";
        if (date == null || limit == null) {
            return unknown(
                    application.subject(), "The pass has no planned day; " + allowed + ".", "Plan a day for the pass.");
        }
        boolean kept = first
                ? !MonthDay.from(date).isBefore(limit)
                : !MonthDay.from(date).isAfter(limit);
        String says = "Planned for " + date + "; " + allowed + ".";
        Finding finding = kept
                ? clear(application.subject(), says)
                : barred(application.subject(), says, "Go " + (first ? "on that day or later." : "by that day."));
        return finding.against(date.getDayOfYear(), limit.atYear(date.getYear()).getDayOfYear(), "day of the year");
    }

    private Finding planted(Case at, Application application, LabelLimit row) {
        LocalDate date = application.date();
        double days = LabelLimit.number(row.value()).orElse(Double.NaN);
        boolean least = row.kind() == LabelLimit.Kind.LEAST_DAYS_AFTER_PLANTING;
        String allowed =
                "the label asks for " + (least ? "at least " : "at most ") + row.value() + " days after planting";
        Optional<LocalDate> planting = Planting.of(at.season(), at.program()).day();
        if (date == null || planting.isEmpty() || Double.isNaN(days)) {
            return unknown(
                    application.subject(),
                    "The day of " + (date == null ? "the pass" : "planting") + " is not planned; " + allowed + ".",
                    "Plan a day for " + (date == null ? "the pass." : "planting."));
        }
        double after = ChronoUnit.DAYS.between(planting.get(), date);
        String says = "It goes on " + Numbers.read(after) + " days after planting; " + allowed + ".";
        Finding finding = (least ? after < days : after > days)
                ? barred(application.subject(), says, "Go " + (least ? "later." : "earlier."))
                : clear(application.subject(), says);
        return finding.against(after, days, "days");
    }

    private Finding county(Application application, LabelLimit row, Place place) {
        boolean listed = row.names().stream().anyMatch(place::named);
        String says = "The label allows it in " + row.value() + " only; the field lies in " + place.words() + ".";
        return listed
                ? clear(application.subject(), says)
                : barred(application.subject(), says, "Choose a product that may be used in " + place.words() + ".");
    }

    private Finding pests(Case at, Application application, LabelLimit row) {
        @Nullable
        String there = Stream.concat(
                        at.index().weeds(at.field().name()).stream().map(weed -> weed.weed()),
                        at.index().insects(at.field().name()).stream().map(insect -> insect.insect()))
                .filter(pest -> row.names().stream()
                        .anyMatch(one -> one.toLowerCase(Locale.ROOT).equals(pest.toLowerCase(Locale.ROOT))))
                .findFirst()
                .orElse(null);
        return there == null
                ? unknown(
                        application.subject(),
                        "The label allows it against " + row.value()
                                + " only, and none of them is noted on this field.",
                        "Enter which of them presses on " + at.field().name() + ", or take another product.")
                : clear(
                        application.subject(),
                        "The label allows it against " + row.value() + "; " + there + " is here.");
    }
}
