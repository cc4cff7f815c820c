package plumbrow.advice.gates;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.shelf.Seed;

/**
 * Whether it is known what is on the seed: treated seed is a use of a pesticide.
 *
 * <p>Protects people, bees and birds. Unknown where nobody has read on the tag what the seed is treated with. Bare seed is
 * clear. Treated seed is conditional: its tag tells what to wear when it is poured, not to use it as food or feed, and to
 * cover what is spilled. The treatments count where insecticide groups, bees and plant-back are asked.
 *
 * <p>Source: the tag of the treated seed (40 CFR 152.25(a): its label words must be on the bag; value from memory). Needs: the
 * treatments of each seed.
 */
final class TreatedSeed extends Question {
    TreatedSeed() {
        super("treated-seed", Protects.PEOPLE, "Is it known what is on the seed?");
    }

    /** The treatments that a program's seed brings onto the field, each on the day of planting. */
    static List<Application> of(Case at) {
        return Planting.of(at.season(), at.program()).lots().stream()
                .flatMap(lot -> at
                        .season()
                        .shelf()
                        .seed(Objects.requireNonNullElse(lot.pass().product(), ""))
                        .map(Seed::tag)
                        .map(tag -> tag.treatments())
                        .stream()
                        .flatMap(List::stream)
                        .map(treatment -> new Application(
                                lot.pass(), treatment, lot.pass().date(), null, null)))
                .distinct()
                .toList();
    }

    @Override
    public List<Finding> check(Case at) {
        return Planting.of(at.season(), at.program()).lots().stream()
                .flatMap(lot -> at
                        .season()
                        .shelf()
                        .seed(Objects.requireNonNullElse(lot.pass().product(), ""))
                        .stream())
                .distinct()
                .flatMap(this::judge)
                .toList();
    }

    private Stream<Finding> judge(Seed seed) {
        List<String> treatments = seed.tag().treatments();
        if (treatments == null) {
            return Stream.of(unknown(
                    seed.product(),
                    "Whether this seed is treated, and with what, has not been read.",
                    "Read the treatments on the bag tag of " + seed.product() + "; bare seed is none."));
        }
        return Stream.of((treatments.isEmpty()
                        ? clear(seed.product(), "No treatment is on this seed.")
                        : conditional(
                                seed.product(),
                                "It is treated with " + String.join(" and ", treatments) + ".",
                                "Wear what the tag asks when you pour it, cover or pick up every spill, and let "
                                        + "none of it go for food, feed or oil."))
                .standingIn("bag tag; 40 CFR 152.25(a)"));
    }
}
