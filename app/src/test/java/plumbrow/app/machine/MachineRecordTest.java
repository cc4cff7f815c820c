package plumbrow.app.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.ratemap.Metering;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.records.RecordEntry;
import plumbrow.documents.machine.log.MachineWork;
import plumbrow.documents.machine.log.MachineWork.Moment;
import plumbrow.documents.machine.log.MachineWork.Spot;
import plumbrow.documents.machine.log.MachineWork.Total;

/** What a machine wrote down as an application record: the one door of records takes it. */
class MachineRecordTest {
    private static final Season DEMO = DemoBook.season();
    private static final Field VINE = DEMO.field("Vine Bottom").orElseThrow();
    private static final LocalDate DAY = LocalDate.of(2026, 5, 30);

    private static MachineWork work(double acres, List<Total> totals, List<Spot> spots) {
        return new MachineWork(
                "t",
                "",
                "",
                new Moment(DAY, 8 * 3600 + 59),
                new Moment(DAY, 12 * 3600),
                acres,
                "x",
                totals,
                spots,
                List.of());
    }

    private static SprayTrip trip() {
        Program program = DEMO.programs("Vine Bottom").stream()
                .filter(one -> one.name().equals("Before and after"))
                .findFirst()
                .orElseThrow();
        return SprayTrip.of(DEMO, VINE, program).stream()
                .filter(one -> one.number() == 4)
                .findFirst()
                .orElseThrow();
    }

    private static ApplicationRecord kept(Map<String, String> boxes) {
        RecordEntry entry = RecordEntry.read(DEMO, boxes, List.of(), Instant.parse("2026-07-01T00:00:00Z"));
        assertThat(entry.faults()).isEmpty();
        return Objects.requireNonNull(entry.record());
    }

    /** 1,110 gal of a mix planned at 15 gal/ac is what 74 ac need: 40 fl oz and 0.9 qt an acre. */
    @Test
    void sprayIsPartedIntoItsProducts() {
        MachineRecord record = MachineRecord.of(
                DEMO, VINE, trip(), work(74, List.of(new Total("mix", Metering.VOLUME, 1110, "x")), List.of()));
        ApplicationRecord kept = kept(record.boxes());
        assertThat(kept.acres()).isEqualTo(74);
        assertThat(kept.products()).hasSize(2);
        assertThat(kept.products().get(0).product()).isEqualTo("Stillmeadow K");
        assertThat(kept.products().get(0).rate().in(FarmUnit.FL_OZ).value()).isCloseTo(40, within(1e-3));
        assertThat(kept.products().get(0).total().in(FarmUnit.FL_OZ).value()).isCloseTo(2960, within(0.1));
        assertThat(kept.products().get(1).rate().in(FarmUnit.QT).value()).isCloseTo(0.9, within(1e-4));
        assertThat(record.boxes()).containsEntry("start", "08:00").containsEntry("end", "12:00");
        assertThat(record.notes()).anyMatch(note -> note.contains("parted into the products as planned"));
    }

    /** What the card says stays where the machine says nothing; a product keeps its place, another takes the next. */
    @Test
    void theMachineGoesOverTheCard() {
        MachineRecord record = MachineRecord.of(
                DEMO,
                VINE,
                null,
                work(
                        70,
                        List.of(
                                new Total("Ironweir 4L", Metering.VOLUME, 15, "x"),
                                new Total("Twinfold", Metering.VOLUME, 35, "x")),
                        List.of()));
        Map<String, String> both = record.over(Map.of(
                "acres",
                "74",
                "applicator",
                "M. Tarrant",
                "product_1",
                "Stillmeadow K",
                "product_2",
                "Ironweir 4L",
                "registration_2",
                "demo 22",
                "rate_2",
                "0.9",
                "rate_unit_2",
                "qt/ac"));
        assertThat(both)
                .containsEntry("acres", "70")
                .containsEntry("applicator", "M. Tarrant")
                .containsEntry("product_2", "Ironweir 4L")
                .containsEntry("registration_2", "demo 22")
                .containsEntry("rate_2", "0.21429")
                .containsEntry("rate_unit_2", "gal/ac")
                .containsEntry("total_unit_2", "gal")
                .containsEntry("product_3", "Twinfold")
                .containsEntry("total_3", "35");
    }

    @Test
    void aProductOfTheShelfIsItself() {
        MachineRecord record = MachineRecord.of(
                DEMO,
                VINE,
                null,
                work(74, List.of(new Total("Stillmeadow K", Metering.VOLUME, 23.125, "x")), List.of()));
        assertThat(kept(record.boxes()).products())
                .singleElement()
                .satisfies(product ->
                        assertThat(product.rate().in(FarmUnit.FL_OZ).value()).isCloseTo(40, within(1e-3)));
    }

    /** What is not known is in no box, and never a zero. */
    @Test
    void whatIsNotKnownIsLeftOut() {
        MachineRecord record = MachineRecord.of(
                DEMO, VINE, null, work(74, List.of(new Total("", Metering.VOLUME, 1110, "x")), List.of()));
        assertThat(record.boxes()).doesNotContainKeys("product_1", "total_1");
        assertThat(record.notes()).anyMatch(note -> note.contains("is not known"));
        MachineWork nothing = new MachineWork("t", "", "", null, null, null, "", List.of(), List.of(), List.of());
        assertThat(MachineRecord.of(DEMO, VINE, null, nothing).boxes()).containsOnlyKeys("field");
    }

    @Test
    void workElsewhereIsTold() {
        Field levee = DEMO.field("Levee").orElseThrow();
        List<Point> ring =
                Objects.requireNonNull(levee.boundary()).polygons().get(0).shell();
        double west = ring.stream().mapToDouble(Point::longitude).average().orElseThrow();
        double south = ring.stream().mapToDouble(Point::latitude).average().orElseThrow();
        Spot inside = new Spot(west, south, 300);
        Spot outside = new Spot(west + 1, south, 700);
        MachineRecord record = MachineRecord.of(DEMO, levee, null, work(1, List.of(), List.of(inside, outside)));
        assertThat(record.insidePct()).isCloseTo(30, within(1e-9));
        assertThat(record.notes()).anyMatch(note -> note.contains("Only 30 % of the ground worked lies inside"));
        assertThat(MachineRecord.of(DEMO, levee, null, work(1, List.of(), List.of(inside)))
                        .notes())
                .isEmpty();
    }
}
