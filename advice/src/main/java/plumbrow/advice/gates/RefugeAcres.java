package plumbrow.advice.gates;

import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.RefugeRule.Form;
import plumbrow.advice.shelf.Seed;
import plumbrow.science.figure.Numbers;

/**
 * Whether a program plants the refuge that the bag tag of each trait seed asks for.
 *
 * <p>Protects the usefulness of the chemistry: insects from the refuge keep resistance rare.
 *
 * <pre>  refuge share = refuge ÷ (refuge + trait), of all acres planted</pre>
 *
 * <p>Refuge in the bag counts towards a rule kept in the bag. A rule kept in a block is met by rows of seed without
 * traits only: a blend against rootworm does not settle the block that a borer trait may still ask for. Acres in
 * messages are rounded up to a tenth. Unknown where the tag was not read; the sizes commonly published are then named,
 * not used. A refuge planted on another field is not seen here.
 *
 * <p>Source: the bag tag or grower agreement; share of total as in University of Wisconsin W114. Needs: form and
 * required share of each trait seed.
 */
final class RefugeAcres extends Question {
    RefugeAcres() {
        super("refuge-acres", Protects.USEFULNESS, "Is enough refuge planted?");
    }

    @Override
    public List<Finding> check(Case at) {
        SeedLots lots = SeedLots.of(at.season(), at.program());
        return lots.withTraits().stream()
                .map(seed -> judge(at.season(), at.field(), lots, seed))
                .toList();
    }

    private Finding judge(Season season, Field field, SeedLots lots, Seed seed) {
        RefugeRule rule = seed.rule();
        Double required = rule.requiredPct();
        if (rule.form() == Form.NONE) {
            return Finding.of(this, Standing.CLEAR, seed.product(), "The tag asks for no refuge.")
                    .standingIn(rule.source());
        }
        if (rule.form() == Form.UNKNOWN || required == null) {
            return Finding.of(
                            this,
                            Standing.UNKNOWN,
                            seed.product(),
                            "The refuge that the tag asks for has not been read. "
                                    + PublishedRefuge.sizes(season, seed))
                    .standingIn(rule.source())
                    .clearedBy("Read form and size of the refuge on the bag tag or in the grower agreement.");
        }
        if (rule.form() == Form.BLEND && !Rounding.below(seed.blendRefugePct(), required)) {
            return measured(
                    seed,
                    Standing.CLEAR,
                    seed.blendRefugePct(),
                    required,
                    Numbers.read(seed.blendRefugePct()) + " % refuge is in the bag; the tag asks for "
                            + Numbers.read(required) + " %.");
        }
        return acres(field, lots, seed, required);
    }

    private Finding acres(Field field, SeedLots lots, Seed seed, double required) {
        double planted = seed.rule().form() == Form.BLEND ? lots.refugePct() : lots.blockPct();
        double acres = field.acres() * lots.plantedPct() / 100;
        double needed = Rounding.upToTenth(acres * required / 100);
        String asked = "the tag asks for " + Numbers.read(required) + " % of " + Numbers.read(acres) + " ac, "
                + Numbers.read(needed) + " ac";
        String has = "This program has " + Numbers.read(planted) + " % refuge, "
                + Numbers.fixed(acres * planted / 100, 1) + " ac; " + asked + ".";
        return Rounding.below(planted, required)
                ? measured(seed, Standing.BARRED, planted, required, has)
                        .clearedBy("Plant " + Numbers.read(needed) + " ac or more of seed without the trait.")
                : measured(seed, Standing.CLEAR, planted, required, has);
    }

    private Finding measured(Seed seed, Standing standing, double planted, double required, String says) {
        return Finding.of(this, standing, seed.product(), says)
                .against(planted, required, "% of acres")
                .standingIn(seed.rule().source());
    }
}
