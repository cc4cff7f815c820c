package plumbrow.documents.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.Shelf;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.reading.LabelReader;
import plumbrow.documents.shelf.FiledPaper;

/** From the label to the shelf, by the word of a person. The product is invented. */
class LabelValuesTest {
    private static final String NAME = "Quarrywick 4L";
    private static final String TEXT = """
            RESTRICTED USE PESTICIDE
            ACTIVE INGREDIENT:
            Atrazine ............................. 42.6%
            OTHER INGREDIENTS: ................... 57.4%
            TOTAL: ............................... 100.0%
            Contains 4 pounds of atrazine per gallon.

            ENVIRONMENTAL HAZARDS
            Do not apply within 66 feet of streams. Do not apply within 66 feet of rivers.

            AGRICULTURAL USE REQUIREMENTS
            The restricted-entry interval (REI) is 12 hours.

            CORN
            Apply 1.5 to 2 qt/A preemergence in at least 10 gallons of water per acre by ground.
            Do not apply within 60 days of harvest.

            SOYBEANS
            Apply 1 qt/A preemergence.
            Apply 2 qt/A postemergence.
            """;
    private static final LabelPaper LABEL = LabelReader.read(TEXT.getBytes(StandardCharsets.UTF_8), "label.txt");
    private static final LabelFile FILE = new LabelFile(
            new FiledPaper(2, FiledPaper.Kind.LABEL, "label.pdf", NAME, "", LocalDate.of(2026, 3, 1), 3, false),
            "a".repeat(64));
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    private static final String WHO = "R. Voss";

    private final List<LabelDecision> made = new ArrayList<>();
    private Shelf written = shelf(List.of());

    private static Shelf shelf(List<LabelUse> uses) {
        Product product =
                new Product(NAME, ProductKind.HERBICIDE, 19, FarmUnit.GAL, null, null, null, null, null, "workbook");
        return new Shelf(
                List.of(product), List.of(), List.of(), List.of(), uses, List.of(), List.of(), LabelBook.UNREAD);
    }

    private static LabelUse workbookSays(@Nullable Double highQt) {
        return new LabelUse(
                NAME,
                Crop.CORN,
                null,
                highQt == null ? null : new Amount(highQt, FarmUnit.QT),
                Ask.UNKNOWN,
                null,
                null,
                null,
                "workbook");
    }

    private LabelValues values() {
        return LabelValues.of(FILE, LABEL, List.of(), written, shelf(), Optional.of(NAME), List.of(), made);
    }

    private LabelValue value(String id) {
        return values().value(id).orElseThrow(() -> new AssertionError(id));
    }

    private void decide(String id, Verdict verdict, String typed) {
        made.addAll(values().decide(value(id), verdict, typed, WHO, NOON));
    }

    private Shelf shelf() {
        return ConfirmedShelf.over(
                written,
                NAME,
                ConfirmedSeason.last(made)
                        .getOrDefault(FILE.sha256(), java.util.Map.of())
                        .values(),
                FILE.words());
    }

    private Optional<LabelUse> corn() {
        return shelf().labelUse(NAME, Crop.CORN);
    }

    @Test
    void untilSomebodyConfirmsTheShelfKnowsNothing() {
        assertThat(values().count(LabelValue::waits)).isGreaterThan(5);
        assertThat(shelf()).isEqualTo(written);
    }

    @Test
    void aConfirmedValueEntersWithItsSource() {
        decide("label-uses.corn.high-rate", Verdict.CONFIRMED, "");
        LabelUse use = corn().orElseThrow();
        assertThat(use.highRate()).isEqualTo(new Amount(2, FarmUnit.QT));
        assertThat(use.lowRate()).isNull();
        assertThat(use.preHarvestDays()).isNull();
        assertThat(use.source()).isEqualTo("label of 2026-03-01, page 1, confirmed by R. Voss on 2026-11-25");
        assertThat(value("label-uses.corn.high-rate").standing()).isEqualTo(LabelValue.Standing.DECIDED);
    }

    @Test
    void allClearValuesOfARowAtOnceAndTheOthersStayOpen() {
        RowName corn = value("label-uses.corn.high-rate").value().row();
        made.addAll(values().confirmRow(corn, WHO, NOON));
        LabelUse use = corn().orElseThrow();
        assertThat(use.lowRate()).isEqualTo(new Amount(1.5, FarmUnit.QT));
        assertThat(use.preHarvestDays()).isEqualTo(60);
        assertThat(use.seasonMax()).isNull();
        assertThatThrownBy(() -> values().confirmRow(corn, WHO, NOON)).isInstanceOf(NotSoException.class);
    }

    /** Two rates for soybeans contradict each other: nothing to confirm, but a person may say which one is meant. */
    @Test
    void aContradictionIsCorrectedAndNeverConfirmed() {
        assertThatThrownBy(() -> decide("label-uses.soybean.high-rate", Verdict.CONFIRMED, ""))
                .isInstanceOf(NotSoException.class)
                .hasMessageContaining("no clear value");
        decide("label-uses.soybean.high-rate", Verdict.CORRECTED, "2 qt/ac");
        assertThat(shelf().labelUse(NAME, Crop.SOYBEAN).orElseThrow().highRate())
                .isEqualTo(new Amount(2, FarmUnit.QT));
    }

    @Test
    void aRejectedOrTakenBackValueIsUnknownAgain() {
        decide("label-uses.corn.high-rate", Verdict.CONFIRMED, "");
        decide("label-uses.corn.high-rate", Verdict.REJECTED, "");
        assertThat(corn()).isEmpty();
        decide("label-uses.corn.high-rate", Verdict.TAKEN_BACK, "");
        assertThat(value("label-uses.corn.high-rate").standing()).isEqualTo(LabelValue.Standing.OPEN);
    }

    @Test
    void whereTheWorkbookDiffersItStaysUntilAPersonChooses() {
        written = shelf(List.of(workbookSays(1.75)));
        assertThat(value("label-uses.corn.high-rate").standing()).isEqualTo(LabelValue.Standing.DIFFERS);
        made.addAll(
                values().confirmRow(value("label-uses.corn.high-rate").value().row(), WHO, NOON));
        assertThat(corn().orElseThrow().highRate()).isEqualTo(new Amount(1.75, FarmUnit.QT));
        assertThat(corn().orElseThrow().lowRate()).isEqualTo(new Amount(1.5, FarmUnit.QT));
        decide("label-uses.corn.high-rate", Verdict.CONFIRMED, "");
        assertThat(corn().orElseThrow().highRate()).isEqualTo(new Amount(2, FarmUnit.QT));
        assertThat(corn().orElseThrow().source()).startsWith("workbook; label of 2026-03-01");
    }

    @Test
    void aWorkbookThatChangesAfterwardsIsAskedAboutAgain() {
        written = shelf(List.of(workbookSays(1.75)));
        decide("label-uses.corn.high-rate", Verdict.CONFIRMED, "");
        written = shelf(List.of(workbookSays(2.5)));
        assertThat(value("label-uses.corn.high-rate").standing()).isEqualTo(LabelValue.Standing.DIFFERS_AGAIN);
        assertThat(corn().orElseThrow().highRate())
                .as("the stricter of both until somebody settles it")
                .isEqualTo(new Amount(2, FarmUnit.QT));
        written = shelf(List.of(workbookSays(1.6)));
        assertThat(value("label-uses.corn.high-rate").standing()).isEqualTo(LabelValue.Standing.DIFFERS_AGAIN);
        assertThat(corn().orElseThrow().highRate()).isEqualTo(new Amount(1.6, FarmUnit.QT));
        decide("label-uses.corn.high-rate", Verdict.WORKBOOK, "");
        assertThat(value("label-uses.corn.high-rate").waits()).isFalse();
        written = shelf(List.of(workbookSays(null)));
        assertThat(value("label-uses.corn.high-rate").standing()).isEqualTo(LabelValue.Standing.DIFFERS_AGAIN);
    }

    /** The same distance from streams and from rivers is one row of the shelf, since both are streams there. */
    @Test
    void rowsThatAreNoUseOrTermEnterToo() {
        decide("setbacks.stream.feet", Verdict.CONFIRMED, "");
        decide("actives.atrazine.gal.pounds", Verdict.CONFIRMED, "");
        decide("care.restricted-use", Verdict.CONFIRMED, "");
        assertThat(shelf().labels().setbacks())
                .extracting(Setback::kind, Setback::feet)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(FeatureKind.STREAM, 66.0));
        assertThat(shelf().actives(NAME)).extracting(ActiveContent::pounds).containsExactly(4.0);
        assertThat(shelf().labels().care(NAME).orElseThrow().restrictedUse()).isEqualTo(Ask.YES);
    }

    @Test
    void theLabelCountsAsReadWhenTheLastValueIsDecided() {
        while (true) {
            Optional<LabelValue> next =
                    values().values().stream().filter(LabelValue::waits).findFirst();
            if (next.isEmpty()) {
                break;
            }
            assertThat(shelf().labels().care(NAME).map(care -> care.confirmed()))
                    .as("nobody has read the whole label yet")
                    .isEmpty();
            decide(next.get().value().id(), next.get().value().clear() ? Verdict.CONFIRMED : Verdict.REJECTED, "");
        }
        assertThat(shelf().labels().care(NAME).orElseThrow().confirmed()).isEqualTo(LocalDate.of(2026, 11, 25));
        decide("label-uses.corn.high-rate", Verdict.TAKEN_BACK, "");
        assertThat(shelf().labels().care(NAME).orElseThrow().confirmed()).isNull();
    }

    @Test
    void anotherRevisionAsksAgainAndShowsWhatWasSaid() {
        decide("label-uses.corn.high-rate", Verdict.CONFIRMED, "");
        LabelFile newer = new LabelFile(FILE.paper(), "b".repeat(64));
        LabelValue asked = LabelValues.of(
                        newer, LABEL, List.of(), written, written, Optional.of(NAME), List.of(FILE.sha256()), made)
                .value("label-uses.corn.high-rate")
                .orElseThrow();
        assertThat(asked.standing()).isEqualTo(LabelValue.Standing.OPEN);
        assertThat(asked.inForce()).isEmpty();
        assertThat(asked.earlier().orElseThrow().words(true)).isEqualTo("confirmed as 2 qt by R. Voss on 2026-11-25");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "label-uses.corn.high-rate | two quarts | is not an amount for an acre",
                "label-uses.corn.high-rate | 1,5 qt | with a point and not a comma",
                "label-uses.corn.high-rate | 2 bu | is not an amount for an acre",
                "label-uses.corn.high-rate | 1 qt | does not go with the lowest rate 1.5 qt/ac",
                "label-uses.corn.low-rate | 1 lb | in a unit of the same kind",
                "label-uses.corn.pre-harvest-days | -3 | is not a whole number",
                "label-uses.corn.pre-harvest-days | 1.5 | is not a whole number",
                "terms.corn.finest | huge | is not one of: XF, VF",
                "care.restricted-use | perhaps | is not yes or no",
                "setbacks.stream.feet | 1e9 | is not a number",
                "terms.corn.carrier-low-gal-per-acre | '' | Nothing was typed",
            })
    void whatCantBeSoIsSaidAndNothingIsWritten(String id, String typed, String sentence) {
        decide("label-uses.corn.high-rate", Verdict.CONFIRMED, "");
        decide("label-uses.corn.low-rate", Verdict.CONFIRMED, "");
        int before = made.size();
        assertThatThrownBy(() -> decide(id, Verdict.CORRECTED, typed))
                .isInstanceOf(NotSoException.class)
                .hasMessageContaining(sentence);
        assertThat(made).hasSize(before);
    }

    @Test
    void whoLooksMustBeSaid() {
        assertThatThrownBy(() -> values().decide(value("label-uses.corn.high-rate"), Verdict.CONFIRMED, "", "  ", NOON))
                .isInstanceOf(NotSoException.class)
                .hasMessageContaining("Who says so?");
    }

    @Test
    void unitsMayBeTypedOrLeftOut() {
        ProposedValue boom = value("setbacks.stream.distance-ft").value();
        assertThat(List.of(boom.read("66 ft"), boom.read("66"), boom.read("66.0 FT")))
                .containsOnly("66");
        assertThat(value("terms.corn.finest").value().read("very coarse")).isEqualTo("VC");
    }

    /** Every value of every row comes back from its text as itself, and every name of a row from what the book keeps. */
    @Test
    void textAndNamesComeBack() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            double number = Math.round(random.nextDouble() * 1e6) / Math.pow(10, random.nextInt(7));
            comesBack(ShelfTable.TERMS, "carrier_low_gal_ac", number);
            comesBack(
                    ShelfTable.USES,
                    "high_rate",
                    new Amount(number, random.nextBoolean() ? FarmUnit.FL_OZ : FarmUnit.LB));
        }
        // Without a limit by the label; 900 ft is beyond what the column takes, a boom of 1,200 in beyond it by far.
        comesBack(ShelfTable.TERMS, "wind_highest_mph", 999.0);
        comesBack(ShelfTable.TERMS, "boom_highest_in", 1200.0);
        comesBack(ShelfTable.TERMS, "latest_stage", "");
        comesBack(ShelfTable.TERMS, "finest", plumbrow.advice.shelf.Droplets.COARSE);
        comesBack(ShelfTable.TERMS, "feeding_forbidden", plumbrow.advice.shelf.Ask.NO);
        comesBack(
                ShelfTable.CARE,
                "wear",
                List.of("a long word of what handlers wear ".repeat(9).strip(), "goggles"));
        comesBack(
                ShelfTable.TERMS,
                "methods",
                Arrays.asList(plumbrow.advice.shelf.Method.values()).subList(0, 1));
        for (RowName row : values().rows()) {
            assertThat(RowName.of(row.table(), row.keyText(), row.nth())).isEqualTo(row);
        }
        assertThat(values().values().stream().map(each -> each.value().id())).doesNotHaveDuplicates();
    }

    private static void comesBack(ShelfTable table, String key, Object value) {
        assertThat(ValueText.kept(table.attribute(key), ValueText.show(table.attribute(key), value)))
                .as(key)
                .isEqualTo(value);
    }

    /** Links and books of before values had keys of their own call them by the parts of the program's records. */
    @Test
    void formerNamesAreRead() {
        assertThat(value("label-uses.corn.pre-harvest-days").value().property()).isEqualTo("phi_days");
        assertThat(value("setbacks.stream.feet").value().id()).isEqualTo("setbacks.stream.distance-ft");
        assertThat(RowName.of(ShelfTable.PLANT_BACKS, "nextCrop=soybean\nforPhFrom=7.5\ncondition=none", 1))
                .isEqualTo(RowName.of(ShelfTable.PLANT_BACKS, "next_crop=soybean\nph_from=7.5\ncondition=none", 1));
    }
}
