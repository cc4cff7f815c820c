package plumbrow.app.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.land.CellGrid;
import plumbrow.advice.land.GroundParts;
import plumbrow.advice.land.Zones;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.ratemap.NoRateMapException;
import plumbrow.advice.ratemap.RateMap;
import plumbrow.advice.ratemap.RateMaps.Asked;
import plumbrow.advice.ratemap.RateMaps.DrawnZone;
import plumbrow.advice.season.Season;
import plumbrow.app.demo.DemoBook;
import plumbrow.documents.workbook.ground.GeoJson;
import plumbrow.documents.workbook.ground.NoBoundary;

/** Rates over the demo's fields, with outlines, things around and rates changed; what must hold of any; and what is refused. */
class RateMapsTest {
    private static final Season DEMO = DemoBook.season();
    private static final double M2_PER_ACRE = 4046.8564224;

    /** Tile inlet and ditch of South Slough drawn, the outline a square of 120 ac with a hole and a second part. */
    private static Season slough(List<Boundary.Polygon> outline) {
        List<Feature> features = new ArrayList<>();
        for (Feature feature : DEMO.ground().features()) {
            features.add(
                    !feature.field().equals("South Slough")
                            ? feature
                            : new Feature(
                                    feature.field(),
                                    feature.kind(),
                                    feature.name(),
                                    feature.kind() == FeatureKind.DITCH
                                            ? new Feature.Line(List.of(new Point(-94, 43.6), new Point(-94, 43.61)))
                                            : new Feature.Spot(new Point(-93.997, 43.603)),
                                    null,
                                    feature.source()));
        }
        return outlined(DEMO.withGround(DEMO.ground().withFeatures(features)), "South Slough", outline);
    }

    private static Season outlined(Season season, String name, List<Boundary.Polygon> outline) {
        return season.withFields(season.fields().stream()
                .map(old -> old.name().equals(name)
                        ? new Field(
                                old.name(),
                                old.farm(),
                                old.acres(),
                                new Boundary(outline),
                                old.state(),
                                old.county(),
                                old.crop(),
                                old.texture(),
                                old.organicMatterPct(),
                                old.ph(),
                                old.slopePct())
                        : old)
                .toList());
    }

    private static Season changed(Season season, String field, String program, int pass, double rate, double share) {
        return season.withPrograms(season.programs().stream()
                .map(one -> one.field().equals(field) && one.name().equals(program)
                        ? new Program(
                                field,
                                program,
                                one.baseline(),
                                one.refuge(),
                                one.note(),
                                one.passes().stream()
                                        .map(old -> old.number() == pass ? at(old, rate, share) : old)
                                        .toList())
                        : one)
                .toList());
    }

    private static Pass at(Pass old, double rate, double share) {
        return new Pass(
                old.number(),
                old.kind(),
                old.date(),
                old.product(),
                new Amount(rate, Objects.requireNonNull(old.rate()).unit()),
                share,
                old.chargeUsdPerAcre(),
                old.injuryPct(),
                old.delayDays());
    }

    private static Boundary.Polygon box(double west, double south, double wide, double high, double... hole) {
        List<Point> shell = ring(west, south, wide, high);
        return new Boundary.Polygon(
                shell, hole.length == 0 ? List.of() : List.of(ring(hole[0], hole[1], hole[2], hole[3])));
    }

    private static List<Point> ring(double west, double south, double wide, double high) {
        return List.of(
                new Point(west, south),
                new Point(west + wide, south),
                new Point(west + wide, south + high),
                new Point(west, south + high),
                new Point(west, south));
    }

    private static final List<Boundary.Polygon> SQUARE = List.of(box(-94, 43.6, 0.006, 0.006));

    private static RateMap slough(Asked asked) {
        return TaskDataTest.map(slough(SQUARE), "South Slough", "Before emergence only", 2, asked);
    }

    private static void holds(RateMap map) {
        CellGrid grid = map.cells().grid();
        double sum = 0;
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                sum += grid.cellSquareMetres(row) * map.steps(map.cells().at(row, column));
            }
        }
        double inUnits = map.metering().perAcre(sum / M2_PER_ACRE).value();
        assertThat(map.fileTotal().value()).isCloseTo(inUnits, within(inUnits * 1e-9));
        double job = map.parts().stream()
                .mapToDouble(part -> part.acres()
                        * part.perAcre().in(map.metering().farmUnit()).value())
                .sum();
        assertThat(map.jobTotal().value()).isCloseTo(job, within(job * 1e-9));
        map.parts().forEach(part -> {
            double exact = map.metering().steps(part.perAcre());
            assertThat((double) part.steps()).isCloseTo(exact, within(1.0));
        });
        assertThat(map.steps(CellGrid.OUTSIDE)).isZero();
        assertThat(map.steps(CellGrid.CLEAR)).isZero();
    }

    /** 15 gal/ac on a square beside a ditch and around an inlet, 66 ft kept from both. */
    @Test
    void sprayWithSetbacks() {
        RateMap map = slough(Asked.USUAL);
        holds(map);
        assertThat(map.steps(CellGrid.REST)).isEqualTo(1_403_093);
        assertThat(map.clear()).hasSize(2);
        assertThat(map.clear().stream().mapToDouble(RateMap.Clear::feet)).containsOnly(66.0);
        // 2,187 ft of ditch along the west edge and a circle of 66 ft: by hand in square feet.
        double ditch = 0.006 * 111_117 / 0.3048 * 66 / 43_560;
        double inlet = Math.PI * 66 * 66 / 43_560;
        RateMap.Part kept = map.parts().get(0);
        assertThat(kept.acres()).isCloseTo(ditch + inlet, within(0.01 * (ditch + inlet)));
        assertThat(kept.cellAcres()).isGreaterThan(kept.acres());
        assertThat(map.offPct()).isBetween(-3.0, 0.0);
        assertThat(map.notes()).anyMatch(note -> note.contains("rate zero as a whole"));
    }

    @Test
    void smallerCellsComeNearer() {
        for (double feet : new double[] {60, 30, 10, 4}) {
            RateMap map = slough(new Asked(feet, null, List.of()));
            holds(map);
            assertThat(Math.abs(map.offPct())).isLessThan(0.1 * feet);
        }
    }

    @Test
    void aHoleAndASecondPart() {
        RateMap map = TaskDataTest.map(
                slough(List.of(
                        box(-94, 43.6, 0.004, 0.006, -93.9985, 43.604, 0.001, 0.001),
                        box(-93.995, 43.6, 0.003, 0.006))),
                "South Slough",
                "Before emergence only",
                2,
                Asked.USUAL);
        holds(map);
        assertThat(map.acres()).isCloseTo(41.0 / 36 * slough(Asked.USUAL).acres(), within(0.1));
        CellGrid grid = map.cells().grid();
        int row = (int) ((43.6045 - grid.southDeg()) / grid.highDeg());
        int column = (int) ((-93.998 - grid.westDeg()) / grid.wideDeg());
        assertThat(map.cells().at(row, column)).isEqualTo(CellGrid.OUTSIDE);
        int between = (int) ((-93.9955 - grid.westDeg()) / grid.wideDeg());
        assertThat(map.cells().at(row, between)).isEqualTo(CellGrid.OUTSIDE);
    }

    @Test
    void zonesBearTheirOwnRate() {
        DrawnZone less =
                new DrawnZone("knoll", new Boundary(List.of(box(-93.998, 43.602, 0.002, 0.002))), 14, FarmUnit.GAL);
        RateMap map = slough(new Asked(15, null, List.of(less)));
        holds(map);
        RateMap.Part knoll = map.parts().get(2);
        assertThat(knoll.name()).isEqualTo("knoll");
        assertThat(knoll.steps()).isEqualTo(1_309_554);
        assertThat(map.parts().stream().mapToDouble(RateMap.Part::acres).sum()).isCloseTo(map.acres(), within(0.001));
    }

    /** 2 qt/ac of Twinfold is its planned rate; with half as much spray again it would be 3 qt/ac, over its label. */
    @Test
    void aZoneOverTheLabelIsRefused() {
        DrawnZone more =
                new DrawnZone("knoll", new Boundary(List.of(box(-93.998, 43.602, 0.002, 0.002))), 22.5, FarmUnit.GAL);
        assertThatThrownBy(() -> slough(new Asked(15, null, List.of(more))))
                .isInstanceOf(NoRateMapException.class)
                .hasMessageContaining("Barred at 22.5 gal/ac")
                .hasMessageContaining("Twinfold");
    }

    @Test
    void overlappingZonesAreRefused() {
        DrawnZone one =
                new DrawnZone("one", new Boundary(List.of(box(-93.998, 43.602, 0.002, 0.002))), 14, FarmUnit.GAL);
        DrawnZone two =
                new DrawnZone("two", new Boundary(List.of(box(-93.997, 43.603, 0.002, 0.002))), 13.9, FarmUnit.GAL);
        assertThatThrownBy(() -> slough(new Asked(15, null, List.of(one, two))))
                .hasMessageContaining("Zones one and two share 2.22 ac");
    }

    @Test
    void aUnitThatCannotBeTurnedIntoThePassesIsRefused() {
        DrawnZone dry = new DrawnZone("dry", new Boundary(List.of(box(-93.998, 43.602, 0.002, 0.002))), 5, FarmUnit.LB);
        assertThatThrownBy(() -> slough(new Asked(15, null, List.of(dry))))
                .hasMessageContaining(
                        "Zone dry is given in lb/ac, which is a weight; this pass meters a liquid volume");
    }

    @Test
    void partOfAFieldNeedsItsZone() {
        Season season = changed(slough(SQUARE), "South Slough", "Before emergence only", 2, 2, 40);
        assertThatThrownBy(() -> TaskDataTest.map(season, "South Slough", "Before emergence only", 2, Asked.USUAL))
                .hasMessageContaining("covers 40 % of South Slough, and nobody has said which");
        DrawnZone part = new DrawnZone("west", new Boundary(List.of(box(-94, 43.6, 0.0024, 0.006))), 15, FarmUnit.GAL);
        RateMap map = TaskDataTest.map(
                season, "South Slough", "Before emergence only", 2, new Asked(15, null, List.of(part)));
        holds(map);
        assertThat(map.steps(CellGrid.REST)).isZero();
        assertThat(map.steps(CellGrid.FIRST_ZONE)).isEqualTo(1_403_093);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "South Slough | Before emergence only | 2 | No outline of South Slough is drawn",
                "Levee | Single trait, Undersod full rate | 3 | is harvest and meters nothing",
                "Levee | Single trait, Undersod full rate | 9 | There is no pass 9",
                "Ridge Forty | Single trait, 20 % block treated | 3 | covers 20 % of Ridge Forty"
            })
    void refused(String field, String program, int pass, String says) {
        assertThatThrownBy(() -> TaskDataTest.map(DEMO, field, program, pass, Asked.USUAL))
                .isInstanceOf(NoRateMapException.class)
                .hasMessageContaining(says);
    }

    @Test
    void zeroEverywhereIsRefused() {
        Season season = changed(DEMO, "Levee", "Single trait, Undersod full rate", 1, 0, 100);
        assertThatThrownBy(() -> TaskDataTest.map(season, "Levee", "Single trait, Undersod full rate", 1, Asked.USUAL))
                .hasMessageContaining("The rate is zero everywhere on Levee");
    }

    @Test
    void aRateOverTheLabelIsRefused() {
        Season season = changed(DEMO, "Levee", "Single trait, Undersod full rate", 2, 40, 100);
        assertThatThrownBy(() -> TaskDataTest.map(season, "Levee", "Single trait, Undersod full rate", 2, Asked.USUAL))
                .hasMessageContaining("Barred, so no machine file is made")
                .hasMessageContaining("above the label's");
    }

    @Test
    void acrossThe180thMeridianIsRefused() {
        Season season = slough(List.of(box(179.998, 43.6, 0.002, 0.006), box(-180, 43.6, 0.002, 0.006)));
        assertThatThrownBy(() -> TaskDataTest.map(season, "South Slough", "Before emergence only", 2, Asked.USUAL))
                .hasMessageContaining("reaches across the 180° meridian");
    }

    @ParameterizedTest
    @CsvSource({"2.9", "0", "-5", "NaN", "1e9"})
    void cellsThatCannotBe(double feet) {
        assertThatThrownBy(() -> slough(new Asked(feet, null, List.of())))
                .hasMessageContaining("expected 3 to 5,280 ft");
    }

    @Test
    void tooManyCellsAreRefused() {
        Season season = outlined(DEMO, "Levee", List.of(box(-94.6, 43.6, 0.06, 0.06)));
        assertThatThrownBy(() -> TaskDataTest.map(
                        season, "Levee", "Single trait, Undersod full rate", 1, new Asked(5, null, List.of())))
                .hasMessageContaining("more than the 1,000,000");
    }

    @Test
    void oneCell() {
        Season season = outlined(DEMO, "Levee", List.of(box(-94.6, 43.6, 0.001, 0.001)));
        RateMap map = TaskDataTest.map(
                season, "Levee", "Single trait, Undersod full rate", 1, new Asked(500, null, List.of()));
        assertThat(map.cells().grid().cells()).isOne();
        assertThat(map.cells().at(0)).isEqualTo(CellGrid.REST);
        holds(map);
    }

    /** A ditch that is said to lie nearer than its setback and is not drawn: what is kept clear is unknown, so no file. */
    @Test
    void aSetbackThatIsNotDrawnIsRefused() {
        Season season = outlined(DEMO, "South Slough", SQUARE);
        assertThatThrownBy(() -> TaskDataTest.map(season, "South Slough", "Before emergence only", 2, Asked.USUAL))
                .hasMessageContaining(
                        "Twinfold keeps 66 ft from ditch county ditch 12, and where that lies is not drawn");
    }

    @Test
    void aLabelThatWasNotReadIsRefusedUntilSomebodySaysADistance() {
        List<Feature> features = new ArrayList<>(slough(SQUARE).ground().features());
        features.add(new Feature(
                "South Slough",
                FeatureKind.HABITAT,
                "prairie strip",
                new Feature.Line(List.of(new Point(-93.994, 43.6), new Point(-93.994, 43.606))),
                null,
                "test"));
        Season season = slough(SQUARE);
        Season around = season.withGround(season.ground().withFeatures(features));
        assertThatThrownBy(() -> TaskDataTest.map(around, "South Slough", "Before emergence only", 2, Asked.USUAL))
                .hasMessageContaining("Nobody has read on the label how far to keep Twinfold from protected habitat");
        RateMap map =
                TaskDataTest.map(around, "South Slough", "Before emergence only", 2, new Asked(15, 100.0, List.of()));
        holds(map);
        assertThat(map.clear())
                .anyMatch(clear -> clear.feet() == 100 && clear.from().endsWith("prairie strip"));
        assertThat(map.notes()).anyMatch(note -> note.contains("100 ft are kept, as said"));
    }

    /** A ditch that meets the outline at any angle: no part's outline, as written, crosses or touches itself. */
    @Test
    void writtenOutlinesAreSound() throws NoBoundary {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 60; i++) {
            Boundary field = new Boundary(
                    List.of(box(-94 + random.nextDouble(), 43.6, 0.006, 0.006 + 1e-3 * random.nextDouble())));
            Point corner = field.polygons().get(0).shell().get(0);
            Boundary strip = new Boundary(List.of(box(
                    corner.longitude() - 0.001 + 0.002 * random.nextDouble(),
                    43.6 + 0.006 * random.nextDouble(),
                    0.002 + 0.004 * random.nextDouble(),
                    1e-8 + 1e-4 * random.nextDouble())));
            GroundParts parts = GroundParts.of(field, List.of(strip), List.of());
            for (GroundParts.Part part : List.of(parts.clear(), parts.rest())) {
                Boundary outline = part.outline();
                if (outline != null) {
                    assertThat(GeoJson.read(GeoJson.write(outline)).polygons()).isNotEmpty();
                }
            }
        }
        for (Field field : DEMO.fields()) {
            for (Program program : DEMO.programs(field.name())) {
                for (Zones zones : Gates.of(DEMO).zones(field, program)) {
                    Boundary sprayable = zones.sprayable();
                    if (sprayable != null) {
                        assertThat(GeoJson.read(GeoJson.write(sprayable)).polygons())
                                .as(field.name())
                                .isNotEmpty();
                    }
                }
            }
        }
    }

    /** No rounding leaves the label's range: at its highest rate a granule is never rounded up. */
    @Test
    void roundingStaysWithinTheLabel() {
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < 60; i++) {
            double rate = 2.0 + 2.8 * random.nextDouble();
            RateMap map = made(rate);
            if (map == null) {
                continue;
            }
            double most = DEMO.shelf()
                    .labelUse("Undersod G", DEMO.field("Levee").orElseThrow().crop())
                    .flatMap(use -> java.util.Optional.ofNullable(use.highRate()))
                    .map(high -> high.in(FarmUnit.LB).value())
                    .orElseThrow();
            double inFile = map.metering().perAcre(map.steps(CellGrid.REST)).value();
            assertThat(inFile).isLessThanOrEqualTo(most * (1 + 1e-12));
            assertThat(inFile).isCloseTo(rate, within(0.01));
        }
    }

    private static @Nullable RateMap made(double rate) {
        try {
            return TaskDataTest.map(
                    changed(DEMO, "Levee", "Single trait, Undersod full rate", 2, rate, 100),
                    "Levee",
                    "Single trait, Undersod full rate",
                    2,
                    new Asked(100, null, List.of()));
        } catch (NoRateMapException barred) {
            return null;
        }
    }
}
