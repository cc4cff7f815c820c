package plumbrow.documents.confirm;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelDifference;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Shelf;
import plumbrow.documents.SampleSeason;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.reading.LabelReader;
import plumbrow.documents.shelf.FiledPaper;

/** Plant-back rows that name several crops, on their way to what the plant-back check goes by. The product is invented. */
class CombinedCropsTest {
    private static final String NAME = "Quarrywick 4L";
    private static final String TEXT = """
            ACTIVE INGREDIENT:
            Atrazine ............................. 42.6%

            AGRICULTURAL USE REQUIREMENTS
            The restricted-entry interval (REI) is 12 hours.

            CORN
            Apply 1.5 to 2 qt/A preemergence.

            ROTATIONAL CROPS
            Crop                                    Plant-back interval
            Soybeans, dry beans, alfalfa            155 days
            Small grains (wheat, barley, oats)      10 months
            """;
    private static final LabelPaper LABEL = LabelReader.read(TEXT.getBytes(StandardCharsets.UTF_8), "label.txt");
    private static final LabelFile FILE = new LabelFile(
            new FiledPaper(2, FiledPaper.Kind.LABEL, "label.pdf", NAME, "", LocalDate.of(2026, 3, 1), 3, false),
            "a".repeat(64));
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    private final List<LabelDecision> made = new ArrayList<>();

    private static Season season(PlantBack... workbook) {
        Product product =
                new Product(NAME, ProductKind.HERBICIDE, 19, FarmUnit.GAL, null, null, null, null, null, "workbook");
        LabelBook labels = new LabelBook(
                List.of(),
                List.of(),
                List.of(),
                List.of(workbook),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return SampleSeason.season()
                .withShelf(new Shelf(
                        List.of(product), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), labels));
    }

    private static PlantBack row(String crop, @Nullable Integer days) {
        return new PlantBack(NAME, crop, days, null, null, "", "workbook");
    }

    private Season counting(Season written) {
        return ConfirmedSeason.over(written, List.of(FILE), made, ReadOnLabel.of(FILE.sha256(), LABEL));
    }

    private LabelValues values(Season written) {
        return LabelValues.of(
                FILE, LABEL, List.of(), written.shelf(), counting(written).shelf(), Optional.of(NAME), List.of(), made);
    }

    private LabelValue value(Season written, String id) {
        return values(written).value(id).orElseThrow(() -> new AssertionError(id));
    }

    private static int asked(Season season, String crop) {
        return PlantBack.speakingFor(crop, season.shelf().labels().plantBacks()).stream()
                .mapToInt(one -> one.days() == null ? -1 : one.days())
                .max()
                .orElse(-1);
    }

    @Test
    void everyCropOfTheLineEntersByItself() {
        Season written = season();
        RowName soybeans = value(written, "plant-backs.soybeans.days").value().row();
        made.addAll(values(written).confirmRow(soybeans, "R. Voss", NOON));
        assertThat(made).hasSize(3);
        Season counting = counting(written);
        assertThat(asked(counting, "alfalfa")).isEqualTo(155);
        assertThat(asked(counting, "dry bean")).isEqualTo(155);
        assertThat(asked(counting, "soybean")).isEqualTo(155);
        assertThat(asked(counting, "winter wheat")).as("not confirmed").isEqualTo(-1);
        made.addAll(values(written)
                .confirmRow(value(written, "plant-backs.wheat.days").value().row(), "R. Voss", NOON));
        assertThat(asked(counting(written), "winter wheat")).isEqualTo(310);
    }

    /** The page said that the gates saw 155 days for the line while the plant-back check went by the workbook's 120. */
    @Test
    void whatTheCheckSeesIsWhatTheCheckGoesBy() {
        Season written = season(row("Alfalfa", 120));
        LabelValue alfalfa = value(written, "plant-backs.alfalfa.days");
        assertThat(alfalfa.standing()).isEqualTo(LabelValue.Standing.DIFFERS);
        assertThat(alfalfa.workbook()).isEqualTo("120");
        made.addAll(values(written)
                .confirmRow(value(written, "plant-backs.soybeans.days").value().row(), "R. Voss", NOON));
        assertThat(value(written, "plant-backs.alfalfa.days").inForce()).isEqualTo("120");
        assertThat(asked(counting(written), "alfalfa")).isEqualTo(120);
        made.addAll(values(written)
                .decide(value(written, "plant-backs.alfalfa.days"), Verdict.CONFIRMED, "", "R. Voss", NOON));
        assertThat(value(written, "plant-backs.alfalfa.days").inForce()).isEqualTo("155");
        assertThat(asked(counting(written), "alfalfa")).isEqualTo(155);
    }

    /** A word of before, about the whole line, is one about each crop; and of it and the workbook the longer wait counts. */
    @Test
    void aWordAboutTheWholeLineCountsForEachCropAndTheStricterHolds() {
        RowName line = new RowName(
                ShelfTable.PLANT_BACKS, Map.of("next_crop", "soybeans, dry beans, alfalfa", "condition", "none"), 1);
        made.add(new LabelDecision(
                FILE.sha256(), line, "days", Verdict.CONFIRMED, "155", "", 1, "words", "R. Voss", NOON));
        assertThat(asked(counting(season()), "alfalfa")).isEqualTo(155);
        Season shorter = season(row("alfalfa", 120));
        assertThat(asked(counting(shorter), "alfalfa")).isEqualTo(155);
        assertThat(value(shorter, "plant-backs.alfalfa.days").standing()).isEqualTo(LabelValue.Standing.DIFFERS_AGAIN);
        assertThat(value(shorter, "plant-backs.alfalfa.days").inForce()).isEqualTo("155");
        assertThat(asked(counting(season(row("alfalfa", 365))), "alfalfa")).isEqualTo(365);
    }

    @Test
    void whatWaitsAndDiffersIsSaidOfTheSeason() {
        Season written = season(row("alfalfa", 120));
        assertThat(counting(written).shelf().labels().differences())
                .containsExactly(new LabelDifference(
                        NAME,
                        null,
                        "alfalfa",
                        "plant-back interval, alfalfa",
                        "155 days",
                        "120 days",
                        "120 days",
                        true,
                        "label of 2026-03-01, page 1"));
        LabelValue alfalfa = value(written, "plant-backs.alfalfa.days");
        made.addAll(values(written).decide(alfalfa, Verdict.WORKBOOK, "", "R. Voss", NOON));
        assertThat(counting(written).shelf().labels().differences()).isEmpty();
        assertThat(counting(season(row("alfalfa", 155))).shelf().labels().differences())
                .isEmpty();
    }

    /** A row that is worded otherwise but for the same crop is the row that is settled, and no second one beside it. */
    @Test
    void theWorkbooksRowIsFoundThoughItsConditionIsWordedOtherwise() {
        Season written = season(new PlantBack(NAME, "alfalfa", 120, null, null, "field bioassay", "workbook"));
        assertThat(value(written, "plant-backs.alfalfa.days").workbook()).isEqualTo("120");
        made.addAll(values(written)
                .decide(value(written, "plant-backs.alfalfa.days"), Verdict.CONFIRMED, "", "R. Voss", NOON));
        assertThat(counting(written).shelf().labels().plantBacks())
                .singleElement()
                .satisfies(row -> assertThat(row.days()).isEqualTo(155));
    }

    /** The label's crop against the workbook's row for any other: the check goes by that one, and it differs. */
    @Test
    void theWorkbooksRowForAnyOtherDiffersToo() {
        Season written = season(row("any other", 0));
        assertThat(value(written, "plant-backs.alfalfa.days").inForce()).isEqualTo("0");
        assertThat(counting(written).shelf().labels().differences()).anySatisfy(one -> {
            assertThat(one.nextCrop()).isEqualTo("alfalfa");
            assertThat(one.workbook()).isEqualTo("0 days");
            assertThat(one.counts()).isEqualTo("0 days");
        });
    }

    /** The workbook names a crop that the label keeps off by its row for any other, and longer: the longer wait counts. */
    @Test
    void ofTheWorkbooksCropAndTheLabelsAnyOtherTheLongerCounts() {
        RowName other = new RowName(ShelfTable.PLANT_BACKS, Map.of("next_crop", "any other", "condition", "none"), 1);
        made.add(new LabelDecision(
                FILE.sha256(), other, "days", Verdict.CONFIRMED, "540", "", 1, "words", "R. Voss", NOON));
        assertThat(asked(counting(season(row("sunflower", 120))), "sunflower")).isEqualTo(540);
        assertThat(asked(counting(season(row("sunflower", 700))), "sunflower")).isEqualTo(700);
        made.add(new LabelDecision(
                FILE.sha256(),
                new RowName(ShelfTable.PLANT_BACKS, Map.of("next_crop", "sunflower", "condition", "none"), 1),
                "days",
                Verdict.CONFIRMED,
                "120",
                "120",
                1,
                "words",
                "R. Voss",
                NOON));
        assertThat(asked(counting(season(row("sunflower", 120))), "sunflower"))
                .as("the label names it")
                .isEqualTo(120);
    }
}
