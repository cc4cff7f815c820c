package plumbrow.advice.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.NextInput;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.science.reference.TypicalValue;

/** Questions are real seasons of one field: the same checks, the same weighing, and every typical value says that it is one. */
class AskingTest {
    private static final LocalDate MARCH = LocalDate.of(2026, 3, 2);
    private static final int FEW = 600;

    private static Question question(String id) {
        return Questions.find(id).orElseThrow();
    }

    private static AskAnswer ask(String id, String... typed) {
        Map<String, String> boxes = new LinkedHashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            boxes.put(typed[i], typed[i + 1]);
        }
        return Asking.answer(question(id), boxes, MARCH, FEW);
    }

    private static double gain(AskAnswer answer, String program) {
        return answer.advice().program(program).orElseThrow().meanGainUsdPerAcre();
    }

    private static Season season(String id, Map<String, String> typed) {
        Question question = question(id);
        return question.season(question.read(typed, MARCH), MARCH).season();
    }

    /** With nothing told but the place, or not even that, and in a state of which nothing is kept. */
    @Test
    void everyQuestionHasAnAnswerAtOnce() {
        SoftAssertions softly = new SoftAssertions();
        for (Question question : Questions.all()) {
            for (String state : List.of("", "IA", "KS", "MI", "TX")) {
                AskAnswer answer = Asking.answer(question, Map.of("state", state), MARCH, 200);
                softly.assertThat(answer.sentence())
                        .as(question.id() + " in " + state)
                        .startsWith("By the money, ");
                softly.assertThat(answer.advice().programs())
                        .as(question.id() + " in " + state)
                        .hasSizeGreaterThan(1);
                softly.assertThat(answer.onTypical()).contains(TypicalValue.MARK);
            }
        }
        softly.assertAll();
    }

    /** Each word of each choice, in a state with values of its own and in one without. */
    @Test
    void everyChoiceHasAnAnswer() {
        SoftAssertions softly = new SoftAssertions();
        for (Question question : Questions.all()) {
            for (Box box : question.boxes()) {
                for (Box.Option option : box.options()) {
                    Map<String, String> typed = new LinkedHashMap<>(Map.of("state", "TX"));
                    typed.put(box.id(), option.word());
                    softly.assertThatCode(() -> Asking.means(question, typed, MARCH))
                            .as(question.id() + " " + typed)
                            .doesNotThrowAnyException();
                }
            }
        }
        softly.assertAll();
    }

    @Test
    void atMostEightBoxesAreSeenAndEachHasItsOwnName() {
        assertThat(Questions.all()).hasSize(8).allSatisfy(question -> {
            assertThat(question.boxes()).hasSizeLessThanOrEqualTo(Question.MOST_SEEN + 3);
            assertThat(question.boxes().stream().map(Box::id)).doesNotHaveDuplicates();
            assertThat(question.typical(question.read(Map.of("state", "IA"), MARCH), MARCH)
                            .keySet())
                    .as(question.id() + ": every number that is left empty says what stands there")
                    .containsAll(question.boxes().stream()
                            .filter(box -> box.range() != null && !box.id().equals("payment"))
                            .map(Box::id)
                            .toList());
        });
    }

    /** The weighing of an answer is the adviser's of the season that the boxes make, and the findings are the gates'. */
    @Test
    void theSameWeighingAndTheSameChecks() {
        Map<String, String> typed = Map.of("state", "IA", "trait", "none", "history", "third");
        Question question = question("insecticide");
        AskedSeason asked = question.season(question.read(typed, MARCH), MARCH);
        FieldAdvice own = Adviser.adviseField(
                asked.season(),
                asked.field(),
                WeighingOptions.DEFAULT.withDraws(FEW).asIfAllLookedUp());
        AskAnswer answer = Asking.answer(question, typed, MARCH, FEW);
        assertThat(answer.advice()).isEqualTo(own);
        for (WeighedProgram weighed : answer.advice().programs()) {
            Program program = asked.season().programs().stream()
                    .filter(one -> one.name().equals(weighed.name()))
                    .findFirst()
                    .orElseThrow();
            assertThat(weighed.findings()).isEqualTo(Gates.check(asked.season(), asked.field(), program));
        }
    }

    /** What nobody has looked up is unknown, never clear: a product without a label keeps its programs unknown and is said. */
    @Test
    void unknownStaysUnknown() {
        AskAnswer answer = ask("insecticide", "state", "IA", "trait", "none");
        assertThat(answer.advice().program("Full rate").orElseThrow().standing())
                .isEqualTo(Standing.UNKNOWN);
        assertThat(answer.notLookedUp())
                .contains("nothing here is cleared for use", "label or tag of Soil insecticide");
        Season season = season("insecticide", Map.of("state", "IA", "trait", "none"));
        FieldAdvice strict =
                Adviser.adviseField(season, season.fields().get(0), WeighingOptions.DEFAULT.withDraws(FEW));
        assertThat(strict.advised())
                .as("the season's own advice never takes an unknown")
                .isNotIn("Half rate", "Full rate");
    }

    @Test
    void whatALabelForbidsIsBarredAndNeverLeads() {
        AskAnswer answer = ask("rate", "state", "IA", "less", "yes", "post", "150", "density", "0.5");
        assertThat(answer.advice().program("Half rate").orElseThrow().standing())
                .isEqualTo(Standing.BARRED);
        assertThat(answer.advice().advised()).isEqualTo("Full rate");
        AskAnswer forbidden = ask("saved-seed", "state", "IA", "right", "forbidden");
        assertThat(forbidden.advice().program("Saved seed").orElseThrow().standing())
                .isEqualTo(Standing.BARRED);
        assertThat(forbidden.sentence()).contains("Buy seed");
    }

    /** More of the pest, a dearer product, a better price: each moves the answer the way it must. */
    @Test
    void directions() {
        assertThat(gain(ask("insecticide", "trait", "none", "injury", "2"), "Full rate"))
                .isGreaterThan(gain(ask("insecticide", "trait", "none", "injury", "0.2"), "Full rate"));
        assertThat(gain(ask("insecticide", "trait", "none", "injury", "1"), "Full rate"))
                .isGreaterThan(gain(ask("insecticide", "trait", "two", "injury", "1"), "Full rate"));
        assertThat(gain(ask("insecticide", "trait", "one", "injury", "1", "failed", "yes"), "Full rate"))
                .isGreaterThan(gain(ask("insecticide", "trait", "one", "injury", "1", "failed", "no"), "Full rate"));
        assertThat(gain(ask("spray-now", "count", "1500"), "Spray now"))
                .isGreaterThan(gain(ask("spray-now", "count", "50"), "Spray now"));
        assertThat(gain(ask("spray-now", "pest", "borers", "count", "2"), "Spray now"))
                .isGreaterThan(gain(ask("spray-now", "pest", "borers", "count", "0.1"), "Spray now"));
        assertThat(gain(ask("replant", "plants", "9000"), "Replant"))
                .isGreaterThan(gain(ask("replant", "plants", "25000"), "Replant"));
        assertThat(gain(ask("replant", "payment", "60"), "Replant"))
                .isCloseTo(gain(ask("replant", "payment", "0"), "Replant") + 60, within(0.01));
        assertThat(gain(ask("weeds", "density", "80"), "Residual, then post"))
                .isGreaterThan(gain(ask("weeds", "density", "1"), "Residual, then post"));
        assertThat(gain(ask("seed-treatment", "kept", "94"), "Treated seed"))
                .isGreaterThan(gain(ask("seed-treatment", "kept", "100"), "Treated seed"));
        assertThat(gain(ask("trait", "history", "third", "injury", "1.5"), "Two traits, refuge in the bag"))
                .isGreaterThan(gain(ask("trait", "history", "after"), "Two traits, refuge in the bag"));
        assertThat(gain(ask("saved-seed", "behind", "12"), "Saved seed"))
                .isLessThan(gain(ask("saved-seed", "behind", "0"), "Saved seed"));
    }

    /** A dollar more for the full rate is a dollar less for its gain, by the partial budget (half of it for half the rate). */
    @Test
    void aDollarOfPriceIsADollar() {
        AskAnswer cheap = ask("insecticide", "trait", "none", "cost", "20");
        AskAnswer dear = ask("insecticide", "trait", "none", "cost", "21");
        assertThat(gain(dear, "Full rate")).isCloseTo(gain(cheap, "Full rate") - 1, within(1e-9));
        assertThat(gain(dear, "Half rate")).isCloseTo(gain(cheap, "Half rate") - 0.5, within(1e-9));
    }

    @Test
    void whatIsTypicalSaysSoInTheSeasonAndWhatWasToldDoesNot() {
        Season typical = season("insecticide", Map.of("state", "IL"));
        assertThat(typical.assumptions())
                .allSatisfy(line -> assertThat(TypicalValue.marked(line.source()))
                        .as(line.quantity() + ": " + line.source())
                        .isTrue());
        Season told = season("insecticide", Map.of("state", "IL", "price", "$4.10", "yield", "225", "cost", "19"));
        assertThat(source(told, AssumptionQuantity.PRICE)).startsWith("price told");
        assertThat(source(told, AssumptionQuantity.YIELD)).startsWith("level told");
        assertThat(told.shelf().product("Soil insecticide").orElseThrow().source())
                .isEqualTo(Draft.TOLD);
    }

    private static String source(Season season, AssumptionQuantity quantity) {
        return season.assumptions().stream()
                .filter(line -> line.quantity() == quantity)
                .map(AssumptionLine::source)
                .findFirst()
                .orElseThrow();
    }

    /** A book's own assumptions for a crop come before what is typical, a told box before both; what the book knows is not asked. */
    @Test
    void theBooksOwnComesBeforeTheTypical() {
        Question plain = question("replant");
        AssumptionLine own = new AssumptionLine(
                Crop.CORN, null, AssumptionQuantity.PRICE, new Distribution.Fixed(3.33), "the elevator’s board");
        AssumptionLine typical = new AssumptionLine(
                Crop.CORN,
                null,
                AssumptionQuantity.YIELD,
                new Distribution.Fixed(99),
                TypicalValue.MARK + ": kept once");
        Question knowing = plain.knowing(List.of(own, typical));
        Map<String, String> nothing = Map.of("state", "IA");
        Season season = knowing.season(knowing.read(nothing, MARCH), MARCH).season();
        assertThat(source(season, AssumptionQuantity.PRICE)).isEqualTo("your book’s assumptions: the elevator’s board");
        assertThat(source(season, AssumptionQuantity.YIELD))
                .as("a kept typical value is none of the book's own")
                .contains("NASS");
        assertThat(knowing.typical(knowing.read(nothing, MARCH), MARCH)).containsEntry("price", "3.33");
        assertThat(knowing.own(knowing.read(nothing, MARCH))).containsExactly("price");
        Season told = knowing.season(knowing.read(Map.of("state", "IA", "price", "5"), MARCH), MARCH)
                .season();
        assertThat(source(told, AssumptionQuantity.PRICE)).startsWith("price told");
        assertThat(Asking.next(knowing, nothing, MARCH, FEW).inputs().stream().map(NextInput::input))
                .doesNotContain("box: price", "price");
        Map<String, String> soybeans = Map.of("state", "IA", "crop", "soybean");
        assertThat(knowing.own(knowing.read(soybeans, MARCH)))
                .as("corn's price is not soybeans'")
                .isEmpty();
    }

    @Test
    void badInputIsSaidAndATypicalValueStandsMeanwhile() {
        AskAnswer answer = ask("insecticide", "state", "IA", "price", "cheap", "trait", "three", "injury", "7");
        assertThat(answer.faults()).containsOnlyKeys("price", "trait", "injury");
        assertThat(answer.faults().get("price")).contains("found 'cheap'", "expected a number");
        assertThat(answer.faults().get("trait")).contains("none, one, two");
        assertThat(answer.faults().get("injury")).contains("0 to 3 nodes");
        assertThat(answer.advice()).isEqualTo(ask("insecticide", "state", "IA").advice());
        assertThat(ask("replant", "planted", "May the fourth").faults().get("planted"))
                .contains("5/20");
    }

    /** What is worth most comes first, nothing is worth less than asking for it, and what was told is not asked again. */
    @Test
    void whatToTellNext() {
        AskAnswer answer = ask("replant", "state", "IA");
        assertThat(answer.next().inputs()).isNotEmpty();
        assertThat(answer.next().inputs().get(0).input()).isEqualTo("box: plants");
        assertThat(answer.boxes().get("box: plants")).isEqualTo("plants");
        assertThat(answer.next().inputs())
                .isSortedAccordingTo((one, other) -> Double.compare(other.netUsd(), one.netUsd()));
        AskAnswer told = ask("replant", "state", "IA", "seed", "145", "yield", "210", "price", "4.5");
        assertThat(told.next().inputs().stream().map(NextInput::input))
                .doesNotContain(
                        "price: Seed for replanting", "yield", "price", "box: seed", "box: yield", "box: price");
    }

    @Test
    void nothingIsAskedWhereNothingCanChangeTheAnswer() {
        AskAnswer answer = ask("spray-now", "state", "IA", "count", "0", "cost", "12", "trip", "9", "pest", "aphids");
        assertThat(answer.next().inputs()).isEmpty();
        assertThat(answer.next().says()).startsWith("Nothing you could still tell would change this");
    }

    /** A choice that nobody has made yet is asked by what it is worth: the trait decides about the insecticide. */
    @Test
    void choicesAreAskedByWhatTheyAreWorth() {
        AskAnswer answer = ask("insecticide", "state", "IA", "history", "third");
        assertThat(answer.next().inputs().get(0).input()).isEqualTo("box: trait");
        assertThat(answer.next().inputs().get(0).usdPerAcre()).isGreaterThan(1);
        assertThat(ask("insecticide", "state", "IA", "history", "third", "trait", "two").next().inputs().stream()
                        .map(NextInput::input))
                .doesNotContain("box: trait");
    }

    @Test
    void theHarvestThatIsDecidedAbout() {
        assertThat(Asking.year(LocalDate.of(2026, 8, 31))).isEqualTo(2026);
        assertThat(Asking.year(LocalDate.of(2026, 11, 30))).isEqualTo(2027);
        for (Question question : Questions.all()) {
            assertThat(Asking.answer(question, Map.of(), LocalDate.of(2026, 11, 30), 200)
                            .sentence())
                    .startsWith("By the money");
        }
    }

    @Test
    void aKeptFieldIsWeighedAsItWasAsked() {
        Map<String, String> typed = Map.of("state", "IA", "trait", "none", "history", "third", "acres", "80");
        Question question = question("insecticide");
        AskedSeason asked = question.season(question.read(typed, MARCH), MARCH);
        Keeping keeping = new Keeping("Church Eighty", "Oakridge", "L. Brandvold", "Story");
        Season alone = keeping.alone(asked);
        FieldAdvice kept = Adviser.adviseField(
                alone, alone.field("Church Eighty").orElseThrow(), WeighingOptions.DEFAULT.withDraws(FEW));
        FieldAdvice before = Adviser.adviseField(asked.season(), asked.field(), WeighingOptions.DEFAULT.withDraws(FEW));
        assertThat(kept.field().acres()).isEqualTo(80);
        for (WeighedProgram program : kept.programs()) {
            assertThat(program.meanGainUsdPerAcre())
                    .as(program.name() + ", draws of another field")
                    .isCloseTo(before.program(program.name()).orElseThrow().meanGainUsdPerAcre(), within(5.0));
            assertThat(program.findings().stream().map(Finding::gate))
                    .isEqualTo(before.program(program.name()).orElseThrow().findings().stream()
                            .map(Finding::gate)
                            .toList());
        }
    }

    /** A second field is kept beside the first: nothing of the first changes, names that are taken get the field's besides. */
    @Test
    void keptBesideWhatIsThere() {
        Map<String, String> typed = Map.of("state", "IA", "trait", "one");
        Question question = question("insecticide");
        AskedSeason asked = question.season(question.read(typed, MARCH), MARCH);
        Season one = new Keeping("Church Eighty", "Oakridge", "L. Brandvold", "Story").alone(asked);
        Season both = new Keeping("Depot", "Oakridge", "L. Brandvold", "Story").into(one, asked);
        assertThat(both.farms()).hasSize(1);
        assertThat(both.fields()).hasSize(2);
        assertThat(both.shelf().products().stream().map(product -> product.name()))
                .doesNotHaveDuplicates();
        assertThat(both.programs("Church Eighty")).isEqualTo(one.programs("Church Eighty"));
        assertThat(both.shelf().product("Soil insecticide, Depot")).isPresent();
        WeighingOptions few = WeighingOptions.DEFAULT.withDraws(FEW);
        assertThat(Adviser.adviseField(both, both.field("Church Eighty").orElseThrow(), few)
                        .programs())
                .isEqualTo(Adviser.adviseField(one, one.field("Church Eighty").orElseThrow(), few)
                        .programs());
        assertThat(Adviser.adviseField(both, both.field("Depot").orElseThrow(), few)
                        .programs())
                .hasSize(3);
        assertThatThrownBy(() -> new Keeping("Depot", "Oakridge", "x", "Story").into(both, asked))
                .hasMessageContaining("a field called 'Depot'");
    }
}
