package plumbrow.advice.gates;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.field.Crop;
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
 * not used. Where a program that keeps the tag as typed has less than is published for the seed's modes of action in
 * this county, see {@link PublishedRefuge}, it is unknown until somebody has held it against the tag once more. A refuge planted on another field is not seen here.
 *
 * <p>Source: the bag tag or grower agreement; share of total as in University of Wisconsin W114. Needs: form and
 * required share of each trait seed.
 */
final class RefugeAcres extends Question {
    private static final String SOURCE =
            "University of Kentucky ENTFACT-128 and -147; University of Wisconsin W114; terms of registration of 2010";

    RefugeAcres() {
        super("refuge-acres", Protects.USEFULNESS, "Is enough refuge planted?");
    }

    @Override
    public List<Finding> check(Case at) {
        SeedLots lots = SeedLots.of(at.season(), at.program());
        return lots.withTraits().stream()
                .flatMap(seed -> {
                    Finding typed = judge(at.season(), at.field(), lots, seed);
                    return Stream.concat(Stream.of(typed), published(at, lots, seed, typed).stream());
                })
                .toList();
    }

    /** Whether the rule as typed lacks what is published for the seed's modes of action in this county. */
    private Optional<Finding> published(Case at, SeedLots lots, Seed seed, Finding typed) {
        RefugeRule rule = seed.rule();
        if (typed.standing() != Standing.CLEAR || at.field().crop() != Crop.CORN) {
            return Optional.empty();
        }
        PublishedRefuge published = PublishedRefuge.of(at, seed, rule.form()).orElse(null);
        if (published == null) {
            return Optional.of(unknown(
                    seed.product(),
                    "Not all of its traits are on the traits sheet, so nobody can hold the tag against the published refuge.",
                    "Enter each of its traits with group and insect: " + String.join(", ", seed.traits()) + "."));
        }
        String lacks = published.lacking(rule, lots, at.program().refuge());
        if (lacks == null) {
            return Optional.empty();
        }
        String checked = seed.tag().refugeCheckedBy();
        String says = lacks + " The tag as typed asks for "
                + (rule.form() == Form.NONE || rule.requiredPct() == null
                        ? "none"
                        : Numbers.read(rule.requiredPct()) + " %")
                + ".";
        return Optional.of((checked == null
                        ? unknown(
                                seed.product(),
                                says,
                                "Read the bag tag of " + seed.product()
                                        + " once more; if it does say so, write who checked it "
                                        + "beside the seed as “refuge checked by”.")
                        : conditional(
                                seed.product(),
                                says + " Checked by " + checked + ".",
                                "Keep the tag, and ask the seller where it stands below what is published."))
                .standingIn(SOURCE));
    }

    private Finding judge(Season season, Field field, SeedLots lots, Seed seed) {
        RefugeRule rule = seed.rule();
        Double required = rule.requiredPct();
        if (rule.form() == Form.NONE) {
            return Finding.of(this, Standing.CLEAR, seed.product(), "The tag as typed asks for no refuge.")
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
