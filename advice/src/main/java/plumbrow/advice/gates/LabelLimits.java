package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.tank.Nozzle;
import plumbrow.science.figure.Numbers;

/**
 * Whether what else a label asks is kept: days of the year, days after planting, counties, pests, nozzles and its other
 * duties; and whether it may still be used where its registration is cancelled or a supplemental label ends.
 *
 * <p>Protects the law. Every row holds. Outside the days, too early or too late after planting, in another county, over ground
 * water that stands too high, after the last day of its stocks or of a supplemental label, or where nothing works it in in
 * time, it is barred; the first and last day are within it. Unknown where a day, the depth to ground water, or every pest that
 * the label lists is missing. Nozzles, hours of day, inversions, what early entry wears and other duties are conditions to
 * keep.
 *
 * <p>Source: the label; 7 U.S.C. 136d for existing stocks (from memory). Needs: rows of label limits, days of the pass, of planting and of
 * tillage, the pests of the field, its depth to ground water.
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
            case NOZZLES -> Stream.of(nozzles(at, application, row));
            case GROUND_WATER_FT -> Stream.of(groundWater(at, application, row));
            case CANCELLED -> Stream.of(cancelled(application, row));
            case SUPPLEMENTAL -> Stream.of(supplemental(application, row));
            case WORKED_IN_H -> workedIn(at, application, row);
            case EARLY_ENTRY_WEAR -> Stream.of(earlyEntry(at, application, row));
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
            case CHEMIGATION, AIR_GAL_AC, NO_MAXIMUM, SIGNS_AND_WORD -> Stream.of();
        };
    }

    private Finding keep(Application application, String says, String duty) {
        return conditional(application.subject(), says, duty);
    }

    /** Nozzles of the farm that the label names, and those of them that give the droplets planned. */
    private Finding nozzles(Case at, Application application, LabelLimit row) {
        String says = "The label names the nozzles it may go through: " + row.value() + ".";
        List<Nozzle> ours = at.season().work().means().tank().nozzles().stream()
                .filter(nozzle -> nozzle.farm().equals(at.field().farm()))
                .toList();
        SprayPlan plan = application.plan();
        Droplets droplets = plan == null ? null : plan.droplets();
        List<String> fitting = ours.stream()
                .filter(nozzle -> row.names().stream().anyMatch(one -> same(one, nozzle.nozzle())))
                .filter(nozzle -> droplets == null || nozzle.droplets() == droplets)
                .map(nozzle -> nozzle.nozzle() + " at " + Numbers.read(nozzle.lowPsi()) + " to "
                        + Numbers.read(nozzle.highPsi()) + " psi")
                .distinct()
                .toList();
        String which = droplets == null ? "" : " that gives " + droplets.word() + " droplets";
        return keep(
                application,
                says,
                !fitting.isEmpty()
                        ? "Fit " + String.join(" or ", fitting) + ", within the pressure the label gives."
                        : ours.isEmpty()
                                ? "Fit one of them" + which + ", at the pressure the label gives."
                                : "No nozzle of " + at.field().farm() + " in the book is one of them" + which
                                        + ": get one, and keep the pressure the label gives.");
    }

    private static boolean same(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }

    private Finding groundWater(Case at, Application application, LabelLimit row) {
        double least = LabelLimit.number(row.value()).orElse(Double.NaN);
        Double depth =
                at.index().land(at.field().name()).map(FieldLand::groundWaterFt).orElse(null);
        String asked = "the label asks for " + row.value() + " ft or more down to it.";
        if (depth == null || Double.isNaN(least)) {
            return unknown(
                    application.subject(),
                    "How deep the ground water stands under " + at.field().name() + " is not known; " + asked,
                    "Look up the depth to ground water under " + at.field().name()
                            + " on the soil map or the state's well records, and enter it on the sheet land.");
        }
        String says = "Ground water stands " + Numbers.read(depth) + " ft down; " + asked;
        Finding finding = Rounding.below(depth, least)
                ? barred(application.subject(), says, "Choose a product that may be used over water that high.")
                : clear(application.subject(), says);
        return finding.against(depth, least, "ft");
    }

    /** A product whose registration is cancelled: stocks bought before may be used until a day, or not at all. */
    private Finding cancelled(Application application, LabelLimit row) {
        LocalDate date = application.date();
        if (same(row.value(), LabelLimit.NONE)) {
            return barred(
                    application.subject(),
                    "Its registration is cancelled, and no stocks of it may be used.",
                    "Take another product, and ask the state how to hand in what is left.");
        }
        LocalDate last = LabelLimit.date(row.value()).orElse(null);
        String says = "Its registration is cancelled; stocks bought before may be used until " + row.value();
        if (date == null || last == null) {
            return unknown(
                    application.subject(), says + ", and the pass has no planned day.", "Plan a day for the pass.");
        }
        Finding finding = date.isAfter(last)
                ? barred(application.subject(), says + "; the pass is on " + date + ".", "Take another product.")
                : conditional(
                        application.subject(),
                        says + "; the pass is on " + date + ".",
                        "Use only what was bought before the registration was cancelled, by the label it came with.");
        return finding.against((double) (date.toEpochDay() - last.toEpochDay()), 0, "days past the last");
    }

    private Finding supplemental(Application application, LabelLimit row) {
        LocalDate date = application.date();
        LocalDate last = LabelLimit.date(row.value()).orElse(null);
        String says = "The use stands on a supplemental label that ends on " + row.value();
        if (date == null || last == null) {
            return unknown(
                    application.subject(), says + ", and the pass has no planned day.", "Plan a day for the pass.");
        }
        Finding finding = date.isAfter(last)
                ? barred(
                        application.subject(),
                        says + "; the pass is on " + date + ".",
                        "Look whether the maker has a newer one, or whether the main label has the use by now; else take "
                                + "another product.")
                : conditional(
                        application.subject(),
                        says + "; the pass is on " + date + ".",
                        "Have the supplemental label in hand while you spray.");
        return finding.against((double) (date.toEpochDay() - last.toEpochDay()), 0, "days past the last");
    }

    /** Whether a tillage pass follows in time: plans know days, so an hour limit is kept, may be kept, or is missed. */
    private Stream<Finding> workedIn(Case at, Application application, LabelLimit row) {
        if (!application.outdoors()) {
            return Stream.of();
        }
        double hours = LabelLimit.number(row.value()).orElse(0);
        String asked = "the label asks that it be worked in within " + row.value() + " h";
        LocalDate date = application.date();
        List<Pass> tillage = at.passes().stream()
                .filter(pass -> pass.kind() == PassKind.TILLAGE)
                .toList();
        if (date == null || tillage.stream().anyMatch(pass -> pass.date() == null)) {
            return Stream.of(unknown(
                    application.subject(),
                    "A day is not planned; " + asked + ".",
                    "Plan the days of this pass and of the tillage that works it in."));
        }
        Optional<Pass> next = tillage.stream()
                .filter(pass -> pass.date() != null && !pass.date().isBefore(date))
                .min(Comparator.comparing((Pass pass) -> Objects.requireNonNull(pass.date()))
                        .thenComparing(Pass::number));
        long days = next.map(pass -> ChronoUnit.DAYS.between(date, Objects.requireNonNull(pass.date())))
                .orElse(Long.MAX_VALUE);
        if (next.isEmpty() || WorkedIn.least(days) >= hours) {
            return Stream.of(barred(
                    application.subject(),
                    (next.isEmpty()
                                    ? "No tillage follows it"
                                    : "The next tillage comes on " + next.get().date()) + "; " + asked + ".",
                    "Plan a tillage pass on the same day, or take a product that need not be worked in."));
        }
        return Stream.of(conditional(
                application.subject(),
                "The tillage of pass " + next.get().number() + " on "
                        + next.get().date() + " works it in; " + asked + ".",
                "Work it in within " + row.value() + " h of the application."));
    }

    private Finding earlyEntry(Case at, Application application, LabelLimit row) {
        Set<String> gear = at.season().work().crew().gear();
        List<String> missing = row.names().stream()
                .filter(thing -> gear == null || gear.stream().noneMatch(one -> WearAtHand.same(one, thing)))
                .toList();
        String wear = String.join(", ", row.names());
        return keep(
                application,
                "Whoever goes in before the restricted-entry interval is over wears " + wear + ".",
                "Keep everybody out until the interval is over; for a short task that the rule allows, have " + wear
                        + (missing.isEmpty()
                                ? " on."
                                : " on, of which is not at hand: " + String.join(", ", missing) + "."));
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
