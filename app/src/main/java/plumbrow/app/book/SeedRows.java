package plumbrow.app.book;

import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.SavedSeed;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.SeedTag;

/** What is particular to seed: traits, refuge, genetics, and what saved seed costs and may do. */
final class SeedRows {
    /** Seeds; their traits come with {@link #SEED_TRAIT}. */
    static final RowKind<Seed> SEED = new RowKind<>(
            "seed",
            "product crop seeds_per_unit seeds_per_lb germination_pct emergence_pct blend_refuge_pct "
                    + "refuge_form refuge_required_pct refuge_farthest_ft refuge_fewest_rows refuge_source "
                    + "gain_bu_ac stand_pct years_behind bin_price_usd_bu cleaning_usd_bu treatment_usd_bu cleanout_pct "
                    + "tests_usd lot_acres contract_forbids patent_in_force variety_protected own_harvest hybrid "
                    + "herbicide_traits treatments refuge_checked_by",
            season -> season.shelf().seeds(),
            SeedRows::write,
            SeedRows::read);

    static final RowKind<Carried> SEED_TRAIT = new RowKind<>(
            "seed_trait",
            "seed trait",
            season -> season.shelf().seeds().stream()
                    .flatMap(seed -> seed.traits().stream().map(trait -> new Carried(seed.product(), trait)))
                    .toList(),
            (carried, cells) -> cells.text(carried.seed()).text(carried.trait()),
            row -> new Carried(row.text(), row.text()));

    /** A trait that a seed carries. */
    record Carried(String seed, String trait) {}

    private SeedRows() {}

    /** The seeds with their traits. */
    static List<Seed> withTraits(List<Seed> seeds, List<Carried> carried) {
        Map<String, List<Carried>> bySeed = Grouped.by(Carried::seed, carried);
        return seeds.stream()
                .map(seed -> new Seed(
                        seed.product(),
                        seed.crop(),
                        seed.seedsPerUnit(),
                        seed.seedsPerPound(),
                        seed.germinationPct(),
                        seed.emergencePct(),
                        bySeed.getOrDefault(seed.product(), List.of()).stream()
                                .map(Carried::trait)
                                .toList(),
                        seed.blendRefugePct(),
                        seed.rule(),
                        seed.gainBuPerAcre(),
                        seed.standPct(),
                        seed.saved(),
                        seed.rights(),
                        seed.tag()))
                .toList();
    }

    private static void write(Seed seed, Cells cells) {
        cells.text(seed.product())
                .word(seed.crop())
                .real(seed.seedsPerUnit())
                .real(seed.seedsPerPound())
                .real(seed.germinationPct())
                .maybeDistribution(seed.emergencePct())
                .real(seed.blendRefugePct())
                .word(seed.rule().form())
                .real(seed.rule().requiredPct())
                .real(seed.rule().farthestFt())
                .whole(seed.rule().fewestRows())
                .text(seed.rule().source())
                .distribution(seed.gainBuPerAcre())
                .distribution(seed.standPct());
        SavedSeed saved = seed.saved();
        cells.real(saved == null ? null : saved.yearsBehind())
                .real(saved == null ? null : saved.binPriceUsdPerBu())
                .real(saved == null ? null : saved.cleaningUsdPerBu())
                .real(saved == null ? null : saved.treatmentUsdPerBu())
                .real(saved == null ? null : saved.cleanoutPct())
                .real(saved == null ? null : saved.testsUsd())
                .real(saved == null ? null : saved.lotAcres());
        cells.word(seed.rights().contractForbids())
                .word(seed.rights().patentInForce())
                .word(seed.rights().varietyProtected())
                .word(seed.rights().ownHarvest())
                .word(seed.rights().hybrid());
        cells.names(seed.tag().herbicideTraits())
                .names(seed.tag().treatments())
                .text(seed.tag().refugeCheckedBy());
    }

    private static Seed read(Row row) throws SQLException {
        return new Seed(
                row.text(),
                row.word(Crop.class),
                row.maybeReal(),
                row.maybeReal(),
                row.real(),
                row.maybeDistribution(),
                List.of(),
                row.real(),
                new RefugeRule(
                        row.word(RefugeRule.Form.class),
                        row.maybeReal(),
                        row.maybeReal(),
                        row.maybeWhole(),
                        row.text()),
                row.distribution(),
                row.distribution(),
                saved(
                        row.maybeReal(),
                        row.maybeReal(),
                        row.maybeReal(),
                        row.maybeReal(),
                        row.maybeReal(),
                        row.maybeReal(),
                        row.maybeReal()),
                new SeedRights(
                        row.word(Ask.class),
                        row.word(Ask.class),
                        row.word(Ask.class),
                        row.word(Ask.class),
                        row.word(Ask.class)),
                new SeedTag(row.maybeNames(), row.maybeNames(), row.maybeText()));
    }

    private static @Nullable SavedSeed saved(
            @Nullable Double yearsBehind,
            @Nullable Double binPrice,
            @Nullable Double cleaning,
            @Nullable Double treatment,
            @Nullable Double cleanoutPct,
            @Nullable Double tests,
            @Nullable Double lotAcres) {
        if (yearsBehind == null
                || binPrice == null
                || cleaning == null
                || treatment == null
                || cleanoutPct == null
                || tests == null
                || lotAcres == null) {
            return null;
        }
        return new SavedSeed(yearsBehind, binPrice, cleaning, treatment, cleanoutPct, tests, lotAcres);
    }
}
