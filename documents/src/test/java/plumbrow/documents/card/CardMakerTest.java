package plumbrow.documents.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.documents.paper.Box;
import plumbrow.documents.paper.Mark;
import plumbrow.documents.paper.Quote;

/** Cards of an invented product. Check values worked apart from this code from the limits of UN GHS and 40 CFR 156.62. */
class CardMakerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Amount JUG = new Amount(2.5, FarmUnit.GAL);

    private static ProductCard card(TypedSheet sheet) {
        return CardMaker.make(CardInput.of(sheet.read(), TODAY).holding(JUG));
    }

    private static CardLine line(ProductCard card, CardPart part, String about) {
        return card.lines(part).stream()
                .filter(line -> line.about().startsWith(about))
                .findFirst()
                .orElseThrow(() -> new AssertionError(about + " is not among " + card.lines(part)));
    }

    @Test
    void aBrokenJugOfChlorpyrifosIsTenTimesTheQuantity() { // C1 and Q1
        ProductCard card = card(TypedSheet.furrowgate());
        assertThat(line(card, CardPart.SPILL, "Chlorpyrifos in a container").says())
                .isEqualTo("10.0 lb");
        assertThat(line(card, CardPart.SPILL, "Chlorpyrifos, reportable"))
                .returns("1 lb", CardLine::says)
                .returns(Known.READ, CardLine::known);
        CardLine share = line(card, CardPart.SPILL, "Chlorpyrifos, share");
        assertThat(share.says()).contains("10 times the quantity: REPORT it", "0.25 gal");
        assertThat(Objects.requireNonNull(share.working()).working()).isNotEmpty();
        assertThat(card.section(CardPart.SPILL).cautions()).anyMatch(line -> line.contains("1-800-424-8802"));
    }

    @Test
    void theQuantityOnTheOwnSheetGoesFirstAndADifferenceIsSaid() {
        ProductCard card = card(TypedSheet.furrowgate().change(15, "1 lb", "100 lb"));
        assertThat(line(card, CardPart.SPILL, "Chlorpyrifos, reportable"))
                .returns(Known.DIFFERS, CardLine::known)
                .extracting(CardLine::says)
                .asString()
                .contains("the sheet prints 100 lb", "keep 1 lb");
        assertThat(line(card, CardPart.SPILL, "Chlorpyrifos, share").says()).contains("0.1 of", "10 containers");
    }

    @Test
    void withoutAQuantityOnTheSheetTheKeptOneIsUsedWithItsStatus() {
        ProductCard card = card(TypedSheet.furrowgate().change(15, "Reportable quantity (chlorpyrifos): 1 lb\n", ""));
        CardLine quantity = line(card, CardPart.SPILL, "Chlorpyrifos, reportable");
        assertThat(quantity.known()).isEqualTo(Known.KEPT);
        assertThat(quantity.origins().get(0).words()).contains("40 CFR 302.4", "verified");
    }

    @Test
    void aNameOnNoListIsNoPermission() { // Q9
        ProductCard card = card(TypedSheet.furrowgate()
                .change(3, "Chlorpyrifos    2921-88-2", "Mesotrione    104206-82-8")
                .change(15, "Reportable quantity (chlorpyrifos): 1 lb\n", ""));
        CardLine quantity = line(card, CardPart.SPILL, "Reportable quantity");
        assertThat(quantity.known()).isEqualTo(Known.UNKNOWN);
        assertThat(quantity.says()).contains("no federal reportable quantity found for these names", "104206-82-8");
        assertThat(card.toString()).doesNotContain("no report needed");
        assertThat(line(card, CardPart.SPILL, "Mesotrione in a container").says())
                .isEqualTo("10.0 lb");
    }

    @Test
    void aBagIsCountedByItsWeight() {
        var sheet = TypedSheet.furrowgate()
                .change(3, "42.6", "80")
                .change(15, "1 lb", "100 lb")
                .read();
        ProductCard card = CardMaker.make(CardInput.of(sheet, TODAY).holding(new Amount(25, FarmUnit.LB)));
        assertThat(line(card, CardPart.SPILL, "Chlorpyrifos in a container").says())
                .isEqualTo("20.0 lb");
        assertThat(line(card, CardPart.SPILL, "Chlorpyrifos, share").says())
                .contains("0.2 of", "5 containers", "130 lb");
    }

    @Test
    void withoutDensityTheShelfHelpsAndElseItIsUnknown() {
        TypedSheet light = TypedSheet.furrowgate().change(9, "Specific gravity: 1.1264\n", "");
        assertThat(line(card(light), CardPart.SPILL, "Chlorpyrifos in a container")
                        .known())
                .isEqualTo(Known.UNKNOWN);
        assertThat(line(card(light), CardPart.SPILL, "Chlorpyrifos, how much").says())
                .contains("unknown; look up");
        Product product = new Product(
                "Furrowgate", ProductKind.INSECTICIDE, 40, FarmUnit.GAL, null, "90017-12", null, null, null, "jug");
        ActiveContent four = new ActiveContent("Furrowgate", "chlorpyrifos", 4, FarmUnit.GAL, null);
        ProductCard card = CardMaker.make(
                CardInput.of(light.read(), TODAY).holding(JUG).on(new CardInput.OnShelf(product, List.of(four))));
        CardLine pounds = line(card, CardPart.SPILL, "Chlorpyrifos in a container");
        assertThat(pounds.says()).isEqualTo("10.0 lb");
        assertThat(pounds.origins()).containsExactly(new Origin.Shelf("jug"));
    }

    @Test
    void aHerbicideAtThreeThousandIsAFactorOfFifteenBesideCaffeine() { // L1
        ProductCard card = card(TypedSheet.furrowgate().change(11, "500 mg/kg", "3,000 mg/kg"));
        CardLine caffeine = line(card, CardPart.EVERYDAY, "Beside caffeine");
        assertThat(caffeine.says()).isEqualTo("about 7.5 times the dose");
        assertThat(Objects.requireNonNull(caffeine.working()).number("ratio")).isEqualTo(7.5);
        assertThat(caffeine.origins().get(0).words()).contains("prints 367");
        assertThat(card.section(CardPart.EVERYDAY).cautions()).containsExactly(EverydayScale.CAUTION);
        assertThat(EverydayScale.CAUTION).contains("one dose swallowed", "no safety rating");
    }

    @Test
    void aLimitIsAtLeastSoMuch() { // L3
        ProductCard card = card(TypedSheet.furrowgate().change(11, "500 mg/kg", "> 5,000 mg/kg"));
        assertThat(line(card, CardPart.EVERYDAY, "Beside table salt").says()).isEqualTo("at least 1.2 times the dose");
        assertThat(card.everyday().entries()).anyMatch(each -> each.own() && each.atLeast());
    }

    @Test
    void withoutADoseByMouthNothingIsCompared() {
        ProductCard card = card(TypedSheet.furrowgate().change(11, "Oral LD50 (rat): 500 mg/kg\n", ""));
        assertThat(card.everyday().entries()).isEmpty();
        assertThat(line(card, CardPart.EVERYDAY, "Comparison").known()).isEqualTo(Known.UNKNOWN);
        assertThat(line(card, CardPart.ACUTE, "Swallowed").says()).startsWith("unknown; look up");
    }

    @ParameterizedTest
    @CsvSource({ // G10, T4, T2 and limits of 2.1
        "300 mg/kg,   'category 3, H301, Danger: the sheet prints H302', DIFFERS",
        "300.1 mg/kg, 'category 4, H302, Warning: the sheet agrees', WORKED",
        "> 2000 mg/kg, 'not classified: the sheet prints H302', DIFFERS",
        "> 300 mg/kg, 'category 4, H302, Warning or not classified: the sheet agrees', WORKED",
    })
    void theRuleOfTheSheets(String dose, String says, Known known) {
        ProductCard card = card(TypedSheet.furrowgate().change(11, "500 mg/kg", dose));
        assertThat(line(card, CardPart.ACUTE, "Swallowed, by the sheets"))
                .returns(says, CardLine::says)
                .returns(known, CardLine::known);
    }

    @Test
    void aWordOfTheSheetThatIsTooMildIsSaid() {
        ProductCard card = card(TypedSheet.furrowgate().change(11, "500 mg/kg", "48 mg/kg"));
        assertThat(line(card, CardPart.ACUTE, "Signal word of the sheet"))
                .returns(Known.DIFFERS, CardLine::known)
                .extracting(CardLine::says)
                .asString()
                .startsWith("Warning, but")
                .endsWith("Danger");
        assertThat(card.differing()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "500 mg/kg, WARNING, 'WARNING: the acute values agree', READ", // T4: 500 is inside II
        "48 mg/kg, WARNING, 'WARNING, but the acute values call for DANGER', DIFFERS", // T2
        "3000 mg/kg, WARNING, 'WARNING, stronger than the acute values call for (CAUTION)', READ", // T1
        "> 5000 mg/kg, CAUTION, 'CAUTION: the acute values agree', READ",
    })
    void theRuleOfTheLabels(String dose, String word, String says, Known known) {
        TypedSheet sheet = TypedSheet.furrowgate()
                .change(11, "500 mg/kg", dose)
                .change(15, "Label signal word: WARNING", "Label signal word: DANGER");
        ProductCard card =
                CardMaker.make(CardInput.of(sheet.read(), TODAY).with(label(LabelSaid.Topic.SIGNAL_WORD, "", word)));
        CardLine label = line(card, CardPart.ACUTE, "Signal word of the label");
        assertThat(label.says()).startsWith(says);
        assertThat(label.known()).isEqualTo(known);
        assertThat(label.origins()).anyMatch(origin -> origin.words().equals("label, page 1"));
    }

    @Test
    void neitherWordIsCorrectedFromTheOther() {
        ProductCard card = card(TypedSheet.furrowgate().change(15, "Label signal word: WARNING\n", ""));
        assertThat(line(card, CardPart.ACUTE, "Signal word of the sheet").says())
                .isEqualTo("Warning");
        assertThat(line(card, CardPart.ACUTE, "Signal word of the label").known())
                .isEqualTo(Known.UNKNOWN);
        assertThat(line(card, CardPart.ACUTE, "Signal word that the values call for")
                        .says())
                .startsWith("WARNING");
    }

    @Test
    void vapourWaterAndWildlifeAreTheSheetsFirst() {
        ProductCard card = card(TypedSheet.furrowgate());
        assertThat(line(card, CardPart.VAPOUR, "The product").says()).contains("index 190", "class intermediate");
        assertThat(line(card, CardPart.VAPOUR, "Working it in").says()).contains("work it in lightly");
        assertThat(line(card, CardPart.WATER, "chlorpyrifos, leaching").says()).startsWith("score 0.32, low");
        assertThat(line(card, CardPart.WATER, "chlorpyrifos, runoff").says()).contains("dissolved low");
        assertThat(line(card, CardPart.WILDLIFE, "Fish").says()).contains("0.025 mg/L", "very highly toxic");
        assertThat(line(card, CardPart.WILDLIFE, "Bees").says()).endsWith("highly toxic");
        assertThat(line(card, CardPart.WILDLIFE, "Birds").known()).isEqualTo(Known.KEPT);
    }

    @Test
    void whatIsKeptNowhereIsUnknown() {
        ProductCard card = card(TypedSheet.furrowgate()
                .change(3, "Chlorpyrifos    2921-88-2", "Nonsensium    1234-56-6")
                .set(12, ""));
        for (String about : List.of("Birds", "Fish", "Small water life", "Bees")) {
            assertThat(line(card, CardPart.WILDLIFE, about).says()).startsWith("unknown; look up");
        }
        assertThat(line(card, CardPart.GROUPS, "Groups").known()).isEqualTo(Known.UNKNOWN);
        assertThat(line(card, CardPart.PAPERS, "Sections left out").says()).isEqualTo("12 Ecological information");
    }

    @ParameterizedTest
    @CsvSource({
        "'November 25, 2023', READ",
        "'November 24, 2023', DIFFERS",
        "'November 26, 2026', DIFFERS",
    })
    void aSheetOlderThanThreeYearsWarns(String date, Known known) {
        ProductCard card = card(TypedSheet.furrowgate().change(16, "March 4, 2025", date));
        assertThat(line(card, CardPart.PAPERS, "Age of the sheet").known()).isEqualTo(known);
    }

    @Test
    void aSheetWithoutADateIsOfUnknownAge() {
        ProductCard card = card(TypedSheet.furrowgate().set(16, ""));
        assertThat(line(card, CardPart.PAPERS, "Age of the sheet").known()).isEqualTo(Known.UNKNOWN);
    }

    @Test
    void papersOfTwoProductsAreNoticed() {
        var sheet = TypedSheet.furrowgate().read();
        LabelSaid same = label(LabelSaid.Topic.REGISTRATION, "", "EPA Reg. No. 90017-12");
        LabelSaid other = label(LabelSaid.Topic.REGISTRATION, "", "90017-13");
        assertThat(line(CardMaker.make(CardInput.of(sheet, TODAY).with(same)), CardPart.IDENTITY, "EPA registration")
                        .known())
                .isEqualTo(Known.READ);
        CardLine differs =
                line(CardMaker.make(CardInput.of(sheet, TODAY).with(other)), CardPart.IDENTITY, "EPA registration");
        assertThat(differs.known()).isEqualTo(Known.DIFFERS);
        assertThat(differs.origins()).hasSize(2);
    }

    @Test
    void theLabelsGearStandsBeforeTheSheets() {
        ProductCard card = CardMaker.make(CardInput.of(TypedSheet.furrowgate().read(), TODAY)
                .with(label(LabelSaid.Topic.GEAR, "mixers and loaders", "chemical-resistant apron")));
        assertThat(card.lines(CardPart.WEAR).get(0))
                .returns("mixers and loaders", CardLine::about)
                .returns("chemical-resistant apron", CardLine::says);
    }

    @Test
    void everyValueReadHasItsWordsAndTheNumbersToCallAreThere() {
        ProductCard card = card(TypedSheet.furrowgate());
        card.sections().stream()
                .flatMap(section -> section.lines().stream())
                .filter(line -> line.known() != Known.UNKNOWN && !line.about().equals("Sections"))
                .forEach(line -> assertThat(line.origins()).as(line.about()).isNotEmpty());
        assertThat(card.lines(CardPart.FIRST_AID))
                .extracting(CardLine::says)
                .contains("911", "1-800-222-1222", "1-800-424-8802", "1-800-555-0142");
        assertThat(card.lines(CardPart.FIRST_AID))
                .anyMatch(line -> line.says().contains("Do not make the person vomit"));
    }

    @Test
    void smallNumbersHaveNoTailOfNoughts() {
        ProductCard card = card(TypedSheet.furrowgate().change(9, "1.9 x 10-5", "3.16 x 10-4"));
        assertThat(line(card, CardPart.VAPOUR, "The product").says()).startsWith("3.16E-4 mmHg");
    }

    @Test
    void theCardBeginsWithWhatMattersMost() {
        assertThat(card(TypedSheet.furrowgate()).lead())
                .isEqualTo(
                        "Sheet: Warning. Label, as quoted: WARNING. Chlorpyrifos: one container holds 10 times the quantity: REPORT"
                                + " it. One thing does not agree. 8 values are unknown.");
    }

    @Test
    void anEmptyPaperGivesACardOfUnknowns() {
        var sheet = plumbrow.documents.reading.SheetReader.read(
                "nothing here".getBytes(java.nio.charset.StandardCharsets.UTF_8), "x.txt");
        ProductCard card = CardMaker.make(CardInput.of(sheet, TODAY));
        assertThat(card.product()).isEqualTo("A product without a readable name");
        assertThat(card.unknown()).isGreaterThan(20);
        assertThat(card.differing()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2.5 gal, 2.5", "1 qt, .25", "25 lb, 25", "'2x gal',", "'0 gal',", "'5',", "'3 bu',", "'-1 gal',"})
    void sizesOfContainers(String text, Double inBase) {
        assertThat(ContainerText.read(text).map(Amount::inBase).orElse(null)).isEqualTo(inBase);
    }

    @ParameterizedTest
    @CsvSource({
        "EPA Reg. No. 90017-12, 90017-12",
        "90017 – 12, 90017-12",
        "90017-12-90001, 90017-12-90001",
        "none, none"
    })
    void registrationNumbersInOneSpelling(String text, String plain) {
        assertThat(RegistrationNumber.plain(text)).isEqualTo(plain);
    }

    private static LabelSaid label(LabelSaid.Topic topic, String about, String words) {
        Quote quote = new Quote(words, List.of(new Mark(1, new Box(0, 0, 10, 10))));
        return new LabelSaid(List.of(new LabelSaid.Value(topic, about, words, true, quote)));
    }
}
