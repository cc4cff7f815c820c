package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.SeedTag;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** What is particular to seed. Refuge and saved seed have their columns in {@link RefugeColumns}, {@link SavedColumns}. */
public final class SeedSheet {
    public static final Column<String> PRODUCT = Column.of(
                    "product", TextKind.NAME, "a seed of the shelf", "Hybrid A 108")
            .need()
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    public static final Column<Crop> CROP =
            Column.of("crop", Words.CROP, "its crop", "corn").need();
    public static final Column<Double> PER_UNIT = Column.of(
                    "seeds_per_unit",
                    NumberKind.above(0).upTo(10_000_000),
                    "seeds in one bag or unit; needed where it is priced or planted by the unit",
                    "80000")
            .in("seeds")
            .blankMeans("not sold by the unit");
    public static final Column<Double> PER_POUND = Column.of(
                    "seeds_per_lb",
                    NumberKind.above(0).upTo(1_000_000),
                    "seeds in a pound; needed where it is priced or planted by weight or bushel",
                    "2800")
            .in("seeds/lb")
            .blankMeans("not sold or drawn by weight");
    static final Column<Double> GERMINATION = Column.of(
                    "germination_pct", NumberKind.above(0).upTo(100), "germination on the tag or of the test", "95")
            .in("%")
            .need();
    static final DistributionColumns EMERGENCE = DistributionColumns.of(
                    "emergence_*_pct",
                    Words.PERCENT,
                    "%",
                    "share of its live seeds that come up and live, at the usual rate of the crop",
                    80,
                    95,
                    99)
            .blankMeans("typical for the crop, wide, and said");
    static final Column<List<String>> TRAITS = Column.of(
                    "traits",
                    new ListKind<>(TextKind.NAME, "names of the traits sheet parted by semicolons, or none"),
                    "trait proteins it carries",
                    "Cry3Bb1; Cry34/35")
            .from(TraitSheet.SHEET, TraitSheet.TRAIT)
            .otherwise(List.of());
    static final DistributionColumns GAIN = DistributionColumns.of(
                    "gain_*_bu_ac",
                    NumberKind.between(-500, 500),
                    "bu/ac",
                    "yield over the field's assumptions that its genetics bring; may be negative",
                    -2,
                    3,
                    8)
            .otherwise(0);
    static final DistributionColumns STAND = DistributionColumns.of(
                    "stand_*_pct",
                    Words.PERCENT,
                    "%",
                    "share of the yield that vigour and evenness keep, besides what too few plants cost",
                    94,
                    97,
                    100)
            .otherwise(100);
    static final Column<Ask> CONTRACT =
            Words.ask("contract_forbids", "whether a purchase agreement or the tag forbids planting it again");
    static final Column<Ask> PATENT =
            Words.ask("patent_in_force", "whether a patent on the variety, a trait or a method is in force");
    static final Column<Ask> PROTECTED =
            Words.ask("variety_protected", "whether a plant variety protection certificate is in force");
    static final Column<Ask> OWN =
            Words.ask("own_harvest", "whether it was harvested on this grower's own farm from seed got with authority");
    static final Column<Ask> HYBRID =
            Words.ask("hybrid", "whether it is the grain of a hybrid, which does not breed true");
    static final Column<List<String>> HERBICIDE_TRAITS = Column.of(
                    "herbicide_traits",
                    new ListKind<>(TextKind.NAME, "herbicides parted by semicolons, or none"),
                    "herbicides it is tolerant of, as the tag and the labels name the trait",
                    "glyphosate; glufosinate")
            .blankMeans("unknown");
    static final Column<List<String>> TREATMENTS = Column.of(
                    "treatments",
                    new ListKind<>(TextKind.NAME, "products of the shelf parted by semicolons, or none for bare seed"),
                    "treatments on the seed; treated seed is a use of a pesticide",
                    "none")
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT)
            .blankMeans("unknown");
    static final Column<String> REFUGE_CHECKED = Column.of(
                    "refuge_checked_by",
                    TextKind.PROSE,
                    "who held a refuge that is less than the published one against the tag once more, and when",
                    "S. Lind, 2026-02-03")
            .blankMeans("nobody has");

    public static final Sheet<Seed> SHEET = Sheet.<Seed>named(
                    "seeds",
                    "One row for each seed of the shelf, bought or saved.",
                    season -> season.shelf().seeds())
            .column(PRODUCT, Seed::product)
            .column(CROP, Seed::crop)
            .column(PER_UNIT, Seed::seedsPerUnit)
            .column(PER_POUND, Seed::seedsPerPound)
            .column(GERMINATION, Seed::germinationPct)
            .distribution(EMERGENCE, Seed::emergencePct)
            .column(TRAITS, seed -> seed.traits().isEmpty() ? null : seed.traits())
            .also(RefugeColumns::addTo)
            .distribution(GAIN, Seed::gainBuPerAcre)
            .distribution(STAND, Seed::standPct)
            .also(SavedColumns::addTo)
            .column(CONTRACT, seed -> seed.rights().contractForbids())
            .column(PATENT, seed -> seed.rights().patentInForce())
            .column(PROTECTED, seed -> seed.rights().varietyProtected())
            .column(OWN, seed -> seed.rights().ownHarvest())
            .column(HYBRID, seed -> seed.rights().hybrid())
            .column(HERBICIDE_TRAITS, seed -> seed.tag().herbicideTraits())
            .column(TREATMENTS, seed -> seed.tag().treatments())
            .column(REFUGE_CHECKED, seed -> seed.tag().refugeCheckedBy())
            .once(PRODUCT)
            .build(SeedSheet::seed);

    private SeedSheet() {}

    private static Seed seed(Row row) {
        return new Seed(
                row.get(PRODUCT),
                row.get(CROP),
                row.find(PER_UNIT),
                row.find(PER_POUND),
                row.get(GERMINATION),
                EMERGENCE.find(row),
                row.get(TRAITS),
                row.get(RefugeColumns.IN_BAG),
                RefugeColumns.rule(row),
                GAIN.read(row),
                STAND.read(row),
                SavedColumns.saved(row),
                new SeedRights(row.get(CONTRACT), row.get(PATENT), row.get(PROTECTED), row.get(OWN), row.get(HYBRID)),
                new SeedTag(row.find(HERBICIDE_TRAITS), row.find(TREATMENTS), row.find(REFUGE_CHECKED)));
    }
}
