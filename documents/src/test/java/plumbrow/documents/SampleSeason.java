package plumbrow.documents;

import java.time.LocalDate;
import java.util.List;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Shelf;

/** An invented season of two farms, for the tests of what is drawn and printed. */
public final class SampleSeason {
    public static final LocalDate AS_OF = LocalDate.of(2026, 3, 14);

    private SampleSeason() {}

    public static Season season() {
        return new Season(
                2026,
                AS_OF,
                "Tilda Marsh",
                List.of(new Farm("Orchard Hill", "Wes Aldane", 1, 1), new Farm("Lower Fork", "June Pell", 0.5, 0.5)),
                List.of(
                        field("Home 80", "Orchard Hill", 78.4),
                        field("North quarter beyond the old creamery road", "Lower Fork", 151.2),
                        field("Creek bottom", "Lower Fork", 33)),
                List.of(),
                shelf(),
                new Pests(List.of(), List.of(), List.of()),
                List.of(),
                List.of(
                        new AssumptionLine(
                                Crop.CORN,
                                null,
                                AssumptionQuantity.PRICE,
                                new Distribution.Lognormal(4.2, 0.22, 0.6),
                                "elevator bid of March 13"),
                        new AssumptionLine(
                                Crop.CORN,
                                null,
                                AssumptionQuantity.YIELD,
                                new Distribution.Weibull(192, 0.14),
                                "ten yields of this county")));
    }

    public static Field field(String name, String farm, double acres) {
        return new Field(name, farm, acres, null, "IA", "Adams", Crop.CORN, null, 3.1, 6.4, null);
    }

    private static Shelf shelf() {
        return new Shelf(
                List.of(
                        product("Furrowguard 15 G", ProductKind.INSECTICIDE, "label page 4, read 2026-02-11"),
                        product("Hollowbrook 108 RW", ProductKind.SEED, "bag tag")),
                List.of(),
                List.of(),
                List.of(),
                List.of(new LabelUse(
                        "Furrowguard 15 G",
                        Crop.CORN,
                        null,
                        null,
                        Ask.UNKNOWN,
                        null,
                        1,
                        null,
                        "label page 7, corn table")),
                List.of(),
                List.of());
    }

    private static Product product(String name, ProductKind kind, String source) {
        return new Product(name, kind, 3.4, FarmUnit.LB, null, null, List.of("IA"), List.of(), AS_OF, source);
    }
}
