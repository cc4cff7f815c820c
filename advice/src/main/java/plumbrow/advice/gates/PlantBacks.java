package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.CropName;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.field.NextCrop.Use;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.Pass;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.science.figure.Numbers;

/**
 * Whether the plant-back interval of each label is over when this crop, the next one, a cover crop or the crop of last resort
 * is planted.
 *
 * <p>Protects the crop. What went on before this crop, by the log of all seasons in the book and by passes before planting, is
 * held against this crop; where its label lists the crop, only a row that names the crop tells the days. The label's row for that crop counts, else its row for any other; of rows split by pH those that
 * fit the field's, and the longest. Days run from the application to the planting; exactly the interval is enough. Within
 * the interval the next crop is barred, and so is a cover crop that is grazed or fed; a cover crop that is not is
 * conditional, at the grower's own risk; a crop of last resort is conditional: it can't follow before the day. What else
 * the row asks for is conditional. The log counts. Unknown where no crop is planned to follow, the label was not read for
 * it, or pH, a day, or whether a cover is fed is missing and would decide.
 *
 * <p>Source: the labels. Needs: plant-back rows of each product, next crops with their day, and pH of the field.
 */
final class PlantBacks extends Question {
    /** No plant-back interval is longer (value from memory); what was never read is not asked about beyond it. */
    private static final int LONGEST_MONTHS = 48;

    PlantBacks() {
        super(
                "plant-back",
                Protects.NEXT_CROP,
                "Is the plant-back interval over when this crop and the next are planted?");
    }

    @Override
    public List<Finding> check(Case at) {
        if (at.planned().isEmpty()) {
            return thisCrop(at).toList();
        }
        Stream<Finding> noNext = at.nextCrops().stream().anyMatch(next -> next.use() == Use.NEXT)
                ? Stream.of()
                : Stream.of(unknown(
                        at.field().name(),
                        "What grows here next is not planned.",
                        "Enter the next crop and the day it is to be planted."));
        Stream<Finding> judged = at.all().stream()
                .flatMap(application -> at.nextCrops().stream().map(next -> judge(at, application, next)));
        return Stream.of(thisCrop(at), noNext, judged).flatMap(each -> each).toList();
    }

    /** What went on before the crop of this season is planted, this season and in those before, held against that crop. */
    private Stream<Finding> thisCrop(Case at) {
        return Planting.of(at.season(), at.program()).lots().stream()
                .map(Planting.Lot::pass)
                .flatMap(seed -> Stream.concat(
                                at.before().stream(),
                                at.all().stream().filter(application -> beforePlanting(application, seed)))
                        .flatMap(application -> thisCrop(at, application, seed.date())))
                .distinct();
    }

    /** A pass without a day is taken in the order of its number. */
    private static boolean beforePlanting(Application application, Pass seed) {
        LocalDate applied = application.date();
        LocalDate planted = seed.date();
        Pass pass = application.pass();
        if (!application.outdoors() && pass != null) {
            return false;
        }
        return (applied != null && planted != null)
                ? applied.isBefore(planted)
                : pass == null || pass.number() < seed.number();
    }

    private Stream<Finding> thisCrop(Case at, Application application, @Nullable LocalDate planted) {
        String crop = at.field().crop().word();
        LocalDate applied = application.date();
        if (applied != null && planted != null && !applied.isBefore(planted)) {
            return Stream.of();
        }
        List<PlantBack> all = at.index().plantBacks(application.product());
        String subject = application.subject() + ", this crop " + crop;
        if (all.isEmpty()
                && applied != null
                && planted != null
                && applied.plusMonths(LONGEST_MONTHS).isBefore(planted)) {
            return Stream.of();
        }
        List<PlantBack> rows = PlantBack.speakingFor(crop, all);
        boolean named = rows.stream().anyMatch(row -> !CropName.same(row.nextCrop(), PlantBack.ANY_OTHER));
        boolean free = !rows.isEmpty() && rows.stream().allMatch(row -> row.days() != null && row.days() == 0);
        if (!named && !free && at.use(application.product()).isPresent()) {
            return Stream.of(unknown(
                    subject,
                    "The label lists " + crop + ", and how long before planting it may go on has not been read.",
                    "Look up the days between " + application.product() + " and planting " + crop
                            + " on its label; 0 for none."));
        }
        NextCrop asNext = new NextCrop(at.field().name(), crop, planted, Use.NEXT, false);
        return Stream.of(judge(at, subject, application, rows, asNext));
    }

    private Finding judge(Case at, Application application, NextCrop next) {
        String subject = application.subject() + ", " + next.use().word() + " " + next.crop();
        List<PlantBack> rows = PlantBack.speakingFor(next.crop(), at.index().plantBacks(application.product()));
        return judge(at, subject, application, rows, next);
    }

    private Finding judge(Case at, String subject, Application application, List<PlantBack> rows, NextCrop next) {
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
