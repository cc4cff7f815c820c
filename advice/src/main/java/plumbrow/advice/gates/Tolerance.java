package plumbrow.advice.gates;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.ToleranceRule;

/**
 * Whether the seed tolerates each herbicide that goes on it, at the stage of the crop on that day.
 *
 * <p>Protects the law: a label that allows a herbicide over the top of tolerant seed only forbids it on any other, and kills
 * it. Each lot of seed of the program needs a row of the label that holds at the stage and asks for no tolerance, or for one
 * that the seed's tag names; so does seed that is planted as refuge. Barred where no row fits a lot. Unknown where the label
 * was not read for it, the tag was not, the seed is not named, or the stage is missing and would decide.
 *
 * <p>Source: the label, and the bag tag. Needs: rows of tolerance of each herbicide, herbicide traits of the seed, the stage.
 */
final class Tolerance extends Question {
    Tolerance() {
        super("tolerance", Protects.LAW, "Does the seed tolerate what goes on it?");
    }

    /** Whether something holds; from no to yes. */
    private enum Holds {
        NO,
        UNKNOWN,
        YES;

        Holds and(Holds other) {
            return compareTo(other) <= 0 ? this : other;
        }

        Holds or(Holds other) {
            return compareTo(other) >= 0 ? this : other;
        }
    }

    @Override
    public List<Finding> check(Case at) {
        List<Planting.Lot> lots = Planting.of(at.season(), at.program()).lots();
        return at.planned().stream()
                .filter(application -> herbicide(at, application))
                .filter(Application::outdoors)
                .flatMap(application -> judge(at, application, lots))
                .toList();
    }

    private static boolean herbicide(Case at, Application application) {
        return at.index()
                .product(application.product())
                .map(Product::kind)
                .filter(kind -> kind == ProductKind.HERBICIDE)
                .isPresent();
    }

    private Stream<Finding> judge(Case at, Application application, List<Planting.Lot> lots) {
        Crop crop = at.field().crop();
        List<ToleranceRule> rows = at.index().tolerances(application.product(), crop);
        if (rows.isEmpty()) {
            return Stream.of(unknown(
                    application.subject(),
                    "In which " + crop.word() + " the label allows it, any or a tolerant one only, has not been read.",
                    "Look up on the label of " + application.product() + " whether it asks for " + crop.word()
                            + " with a trait, and from which stage on."));
        }
        String source = rows.get(0).source();
        if (lots.isEmpty()) {
            return Stream.of(judge(application, crop, rows, null, "the seed, which is not named,")
                    .standingIn(source));
        }
        return lots.stream()
                .map(lot -> lot.pass().product())
                .map(name -> Objects.requireNonNullElse(name, ""))
                .distinct()
                .map(name -> judge(
                                application,
                                crop,
                                rows,
                                at.season().shelf().seed(name).orElse(null),
                                name.isEmpty() ? "the seed, which is not named," : name)
                        .standingIn(source));
    }

    private Finding judge(
            Application application, Crop crop, List<ToleranceRule> rows, @Nullable Seed seed, String name) {
        SprayPlan plan = application.plan();
        String stage = plan == null ? null : plan.cropStage();
        Holds holds = rows.stream()
                .map(row -> at(crop, stage, row).and(tolerates(seed, row.trait())))
                .reduce(Holds.NO, Holds::or);
        List<String> traits = seed == null ? null : seed.tag().herbicideTraits();
        String says = "The label allows it in " + asked(crop, rows) + "; " + name + " "
                + (traits == null
                        ? "may tolerate it or not, nobody has read the tag"
                        : traits.isEmpty() ? "tolerates no herbicide" : "tolerates " + String.join(" and ", traits))
                + (stage == null ? ", and the stage is not planned." : ", and the crop is at " + stage + ".");
        return switch (holds) {
            case YES -> clear(application.subject(), says);
            case UNKNOWN ->
                unknown(
                        application.subject(),
                        says,
                        traits == null
                                ? "Read on the bag tag of " + (seed == null ? "the seed" : seed.product())
                                        + " which herbicides it tolerates."
                                : "Plan the growth stage of the crop on that day.");
            case NO ->
                barred(
                        application.subject(),
                        says,
                        "Take a herbicide that may go on this " + crop.word()
                                + " at this stage, or seed with the trait.");
        };
    }

    private static Holds tolerates(@Nullable Seed seed, @Nullable String trait) {
        if (trait == null) {
            return Holds.YES;
        }
        List<String> traits = seed == null ? null : seed.tag().herbicideTraits();
        if (traits == null) {
            return Holds.UNKNOWN;
        }
        return traits.stream().anyMatch(one -> same(one, trait)) ? Holds.YES : Holds.NO;
    }

    static boolean same(String one, String other) {
        return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }

    private static Holds at(Crop crop, @Nullable String stage, ToleranceRule row) {
        Holds from = compare(crop, row.earliestStage(), stage);
        Holds until = compare(crop, stage, row.latestStage());
        return (row.earliestStage() == null ? Holds.YES : from).and(row.latestStage() == null ? Holds.YES : until);
    }

    /** Whether one stage comes no later than another. */
    private static Holds compare(Crop crop, @Nullable String early, @Nullable String late) {
        if (early == null || late == null) {
            return Holds.UNKNOWN;
        }
        OptionalInt first = GrowthStage.place(crop, early);
        OptionalInt second = GrowthStage.place(crop, late);
        return first.isEmpty() || second.isEmpty()
                ? Holds.UNKNOWN
                : first.getAsInt() <= second.getAsInt() ? Holds.YES : Holds.NO;
    }

    private static String asked(Crop crop, List<ToleranceRule> rows) {
        return rows.stream().map(row -> asked(crop, row)).collect(Collectors.joining(" or "));
    }

    private static String asked(Crop crop, ToleranceRule row) {
        String what = row.trait() == null ? "any " + crop.word() : crop.word() + " with tolerance to " + row.trait();
        String from = row.earliestStage() == null ? "" : " from " + row.earliestStage();
        String until = row.latestStage() == null ? "" : " up to " + row.latestStage();
        return what + from + until;
    }
}
