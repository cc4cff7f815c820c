package plumbrow.advice.gates;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.program.Pass;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;

/**
 * Whether saved seed may be planted again. Not legal advice.
 *
 * <p>Protects the law. The questions, in the order of asking: does an agreement or bag tag forbid it; is any patent on
 * the variety, a trait or a method in force; is the variety protected, and then, was it harvested on this grower's own
 * farm; is it the grain of a hybrid. A yes to the first, second or last bars it, and so does protected seed from
 * elsewhere. Any answer nobody has given makes it unknown. What remains is conditional, never plain clear: own acres
 * only, or state seed law on any sale. Hybrid grain is barred because it does not breed true and its yield here would be
 * a guess.
 *
 * <p>Source: 35 U.S.C. 154(a)(2) and 271; 569 U.S. 278 (2013); 7 U.S.C. 2543; University of Maryland FS-1000 (2015) on
 * agreements and on traits whose patent ended while the variety's own stands. Needs: the seed's rights. Bought seed has
 * nothing to answer here.
 */
final class RightToSave extends Question {
    RightToSave() {
        super("right-to-save", Protects.LAW, "May this saved seed be planted again?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.passes().stream()
                .flatMap(pass -> saved(at.season(), pass).stream())
                .distinct()
                .map(this::judge)
                .toList();
    }

    private static Optional<Seed> saved(Season season, Pass pass) {
        return Optional.ofNullable(pass.product()).flatMap(season.shelf()::seed).filter(seed -> seed.saved() != null);
    }

    private Finding judge(Seed seed) {
        return barred(seed).or(() -> unknown(seed)).orElseGet(() -> conditional(seed));
    }

    private Optional<Finding> barred(Seed seed) {
        SeedRights rights = seed.rights();
        if (rights.contractForbids() == Ask.YES) {
            return barred(seed, "The purchase agreement or bag tag forbids replanting.", "the agreement or bag tag");
        }
        if (rights.patentInForce() == Ask.YES) {
            return barred(
                    seed,
                    "A patent on the variety, a trait or a method is in force; buying the grain elsewhere does not "
                            + "free it.",
                    "35 U.S.C. 271; 569 U.S. 278 (2013)");
        }
        if (rights.varietyProtected() == Ask.YES && rights.ownHarvest() == Ask.NO) {
            return barred(
                    seed,
                    "The variety is protected, and this seed was not harvested on the grower's own farm.",
                    "7 U.S.C. 2543");
        }
        return rights.hybrid() == Ask.YES
                ? barred(
                        seed,
                        "It is the grain of a hybrid: it does not breed true, and is usually patented.",
                        "value from memory")
                : Optional.empty();
    }

    private Optional<Finding> barred(Seed seed, String says, String source) {
        return Optional.of(Finding.of(this, Standing.BARRED, seed.product(), says)
                .standingIn(source)
                .clearedBy("Buy seed."));
    }

    private Optional<Finding> unknown(Seed seed) {
        List<String> open = open(seed.rights());
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.of(
                                this,
                                Standing.UNKNOWN,
                                seed.product(),
                                "Not known " + open.get(0) + ": do not plant this saved seed yet.")
                        .clearedBy("Ask the seller and read the bag: " + String.join("; ", open) + "."));
    }

    private static List<String> open(SeedRights rights) {
        return Stream.of(
                        open(rights.contractForbids(), "whether an agreement or the bag tag forbids replanting"),
                        open(
                                rights.patentInForce(),
                                "whether any patent on the variety, a trait or a method is in force"),
                        open(rights.varietyProtected(), "whether the variety is protected"),
                        rights.varietyProtected() == Ask.NO
                                ? Optional.<String>empty()
                                : open(rights.ownHarvest(), "whether it was harvested on this grower's own farm"),
                        open(rights.hybrid(), "whether it is the grain of a hybrid"))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<String> open(Ask answer, String question) {
        return answer == Ask.UNKNOWN ? Optional.of(question) : Optional.empty();
    }

    private Finding conditional(Seed seed) {
        return seed.rights().varietyProtected() == Ask.YES
                ? Finding.of(
                                this,
                                Standing.CONDITIONAL,
                                seed.product(),
                                "The variety is protected; a grower may plant what he saved on his own farm.")
                        .standingIn("7 U.S.C. 2543")
                        .clearedBy("Own acres only: none of it to a neighbour.")
                : Finding.of(
                                this,
                                Standing.CONDITIONAL,
                                seed.product(),
                                "No agreement, patent or variety protection stands in the way, by the answers given.")
                        .standingIn("the answers on the seeds sheet")
                        .clearedBy("Own acres only: any sale or swap as seed falls under state seed law.");
    }
}
