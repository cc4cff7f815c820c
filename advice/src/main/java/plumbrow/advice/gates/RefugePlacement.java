package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.RefugeRule.Form;
import plumbrow.advice.shelf.Seed;
import plumbrow.science.figure.Numbers;

/**
 * Whether a block refuge lies near enough and is wide enough.
 *
 * <p>Protects the usefulness of the chemistry: insects of the refuge must meet those of the trait corn. Distance is
 * edge to edge; 0 ft is in the field or adjacent. Asked only of seed whose rule is a block or strips. Unknown where the
 * tag was not read or the plan does not say.
 *
 * <p>Source: the bag tag or grower agreement. Needs: farthest distance and fewest rows of the rule, distance and rows of
 * the program.
 */
final class RefugePlacement extends Question {
    RefugePlacement() {
        super("refuge-placement", Protects.USEFULNESS, "Does the refuge lie near enough, in rows enough?");
    }

    @Override
    public List<Finding> check(Case at) {
        return SeedLots.of(at.season(), at.program()).withTraits().stream()
                .filter(seed -> seed.rule().form() == Form.BLOCK)
                .flatMap(seed -> Stream.of(
                        distance(seed, at.program().refuge()),
                        rows(seed, at.program().refuge())))
                .toList();
    }

    private Finding distance(Seed seed, RefugePlan plan) {
        RefugeRule rule = seed.rule();
        Double farthest = rule.farthestFt();
        Double planned = plan.distanceFt();
        if (farthest == null) {
            return unread(seed, "How far the refuge may lie has not been read on the tag.", "the distance");
        }
        String allowed = farthest == 0
                ? "the tag wants it in the field or adjacent"
                : "the tag allows " + Numbers.read(farthest) + " ft";
        if (planned == null) {
            return unplanned(seed, "The program does not say how far the refuge lies; " + allowed + ".", "distance");
        }
        String lies = planned == 0 ? "In the field or adjacent" : Numbers.read(planned) + " ft away, edge to edge";
        Finding finding = Rounding.above(planned, farthest)
                ? Finding.of(this, Standing.BARRED, seed.product(), lies + "; " + allowed + ".")
                        .clearedBy("Move the refuge nearer.")
                : Finding.of(this, Standing.CLEAR, seed.product(), lies + "; " + allowed + ".");
        return finding.against(planned, farthest, "ft").standingIn(rule.source());
    }

    private Finding rows(Seed seed, RefugePlan plan) {
        RefugeRule rule = seed.rule();
        Integer fewest = rule.fewestRows();
        Integer planned = plan.rows();
        if (fewest == null) {
            return unread(seed, "How many rows wide the refuge must be has not been read on the tag.", "the rows");
        }
        if (planned == null) {
            return unplanned(
                    seed,
                    "The program does not say how many rows wide the refuge is; the tag asks for " + fewest + ".",
                    "rows");
        }
        String says = planned + " rows wide; the tag asks for " + fewest + " or more.";
        Finding finding = planned < fewest
                ? Finding.of(this, Standing.BARRED, seed.product(), says)
                        .clearedBy("Plant the refuge " + fewest + " rows wide or wider.")
                : Finding.of(this, Standing.CLEAR, seed.product(), says);
        return finding.against(planned, fewest, "rows").standingIn(rule.source());
    }

    private Finding unread(Seed seed, String says, String what) {
        return Finding.of(this, Standing.UNKNOWN, seed.product(), says)
                .standingIn(seed.rule().source())
                .clearedBy("Read " + what + " on the bag tag or in the grower agreement.");
    }

    private Finding unplanned(Seed seed, String says, String what) {
        return Finding.of(this, Standing.UNKNOWN, seed.product(), says)
                .standingIn(seed.rule().source())
                .clearedBy("Enter the refuge " + what + " of this program.");
    }
}
