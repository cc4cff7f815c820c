package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.field.NextCrop.Use;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.science.figure.Numbers;

/**
 * Whether the plant-back interval of each label is over when the next crop, a cover crop or the crop of last resort is
 * planted.
 *
 * <p>Protects the next crop. The label's row for that crop counts, else its row for any other; of rows split by pH those that
 * fit the field's, and the longest. Days run from the application to the planting; exactly the interval is enough. Within
 * the interval the next crop is barred, and so is a cover crop that is grazed or fed; a cover crop that is not is
 * conditional, at the grower's own risk; a crop of last resort is conditional: it can't follow before the day. What else
 * the row asks for is conditional. The log counts. Unknown where no crop is planned to follow, the label was not read for
 * it, or pH, a day, or whether a cover is fed is missing and would decide.
 *
 * <p>Source: the labels. Needs: plant-back rows of each product, next crops with their day, and pH of the field.
 */
final class PlantBacks extends Question {
    PlantBacks() {
        super("plant-back", Protects.NEXT_CROP, "Is the plant-back interval over when the next crop is planted?");
    }

    @Override
    public List<Finding> check(Case at) {
        if (at.planned().isEmpty()) {
            return List.of();
        }
        Stream<Finding> noNext = at.nextCrops().stream().anyMatch(next -> next.use() == Use.NEXT)
                ? Stream.of()
                : Stream.of(unknown(
                        at.field().name(),
                        "What grows here next is not planned.",
                        "Enter the next crop and the day it is to be planted."));
        Stream<Finding> judged = at.all().stream()
                .flatMap(application -> at.nextCrops().stream().map(next -> judge(at, application, next)));
        return Stream.concat(noNext, judged).toList();
    }

    private Finding judge(Case at, Application application, NextCrop next) {
        String subject = application.subject() + ", " + next.use().word() + " " + next.crop();
        List<PlantBack> rows = PlantBack.speakingFor(
                next.crop(), at.index().plantBacks(application.product()));
        Double ph = at.field().ph();
        List<PlantBack> fitting = rows.stream().filter(row -> fits(row, ph)).toList();
        if (ph == null && rows.stream().anyMatch(PlantBacks::byPh)) {
            return unknown(
                            subject,
                            "The label's interval goes by pH, and the pH of this field is not known.",
                            "Test the soil for pH.")
                    .standingIn(rows.get(0).source());
        }
        if (fitting.isEmpty() || fitting.stream().anyMatch(row -> row.days() == null)) {
            return unknown(
                    subject,
                    "How long the label keeps " + next.crop() + " off the ground has not been read.",
                    "Look up " + next.crop() + " among the rotation crops on the label of " + application.product()
                            + ".");
        }
        PlantBack longest = fitting.stream()
                .max((one, other) -> Integer.compare(days(one), days(other)))
                .orElseThrow();
        Finding finding = held(subject, application.date(), next, days(longest));
        boolean asks = finding.standing() == Standing.CLEAR
                && fitting.stream().anyMatch(row -> !row.condition().isEmpty());
        return (asks ? asked(finding, fitting) : finding).standingIn(longest.source());
    }

    private static boolean byPh(PlantBack row) {
        return row.forPhFrom() != null || row.forPhBelow() != null;
    }

    private static boolean fits(PlantBack row, @Nullable Double ph) {
        Double from = row.forPhFrom();
        Double below = row.forPhBelow();
        return !byPh(row) || (ph != null && (from == null || ph >= from) && (below == null || ph < below));
    }

    private static int days(PlantBack row) {
        Integer days = row.days();
        return days == null ? Integer.MAX_VALUE : days;
    }

    private Finding held(String subject, @Nullable LocalDate applied, NextCrop next, int days) {
        LocalDate planted = next.planted();
        if (days == 0) {
            return clear(subject, "The label keeps " + next.crop() + " off for no days.");
        }
        if (applied == null || planted == null) {
            return unknown(
                    subject,
                    "The label keeps " + next.crop() + " off for " + days + " days, but "
                            + (applied == null ? "the pass" : "its planting") + " has no planned day.",
                    "Plan a day for " + (applied == null ? "the pass." : "planting " + next.crop() + "."));
        }
        long between = ChronoUnit.DAYS.between(applied, planted);
        String says = Numbers.read((double) between) + " days from " + applied + " to planting " + next.crop()
                + "; the label asks for " + days + ".";
        Finding finding = between < days ? early(subject, says, next, applied.plusDays(days)) : clear(subject, says);
        return finding.against((double) between, days, "days");
    }

    private Finding early(String subject, String says, NextCrop next, LocalDate from) {
        String wait = "plant " + next.crop() + " on " + from + " or later";
        return switch (next.use()) {
            case NEXT -> barred(subject, says, "Choose another product or crop, or " + wait + ".");
            case ESCAPE ->
                conditional(
                        subject, says, "If this crop fails, " + next.crop() + " can't replace it before " + from + ".");
            case COVER -> cover(subject, says, next, wait);
        };
    }

    private Finding cover(String subject, String says, NextCrop next, String wait) {
        Boolean fed = next.fed();
        if (fed == null) {
            return unknown(
                    subject,
                    says + " Whether the cover is grazed or fed is not known.",
                    "Say whether the cover crop is grazed or fed.");
        }
        return fed
                ? barred(subject, says + " The cover is grazed or fed.", "Do not feed it, or " + wait + ".")
                : conditional(
                        subject,
                        says,
                        "The cover may be hurt, at the grower's own risk; do not graze, feed or harvest it, or " + wait
                                + ".");
    }

    private Finding asked(Finding clear, List<PlantBack> rows) {
        String conditions = String.join(
                "; ",
                rows.stream()
                        .map(PlantBack::condition)
                        .filter(condition -> !condition.isEmpty())
                        .distinct()
                        .toList());
        Finding finding = conditional(
                clear.subject(), clear.says() + " It asks for more than days.", "Keep to: " + conditions + ".");
        Double measured = clear.measured();
        Double limit = clear.limit();
        return measured == null || limit == null ? finding : finding.against(measured, limit, clear.unit());
    }
}
