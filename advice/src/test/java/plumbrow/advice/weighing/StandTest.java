package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.stand.StandCount;

@DisplayName(
        "A seeding rate acts on the yield by the plants that live, and a poor stand is kept or replanted by what that brings")
class StandTest {
    private static final LocalDate COUNTED = LocalDate.of(2026, 5, 12);

    /** Everything about the stand without doubt, as on a page of worked checks. */
    private static final Map<String, Distribution> SETTLED = Map.of(
            "emergence", new Distribution.Fixed(100),
            "stand sharpness", new Distribution.Fixed(1));

    @Test
    @DisplayName("15,000 seeds of corn save $68 of seed and lose plainly; twice the usual rate loses too")
    void aRateIsNotFreeInEitherDirection() {
        FieldAdvice advice = corn().program("usual", true, drilled(33_000))
                .program("thin", false, drilled(15_000))
                .program("thick", false, drilled(66_000))
                .weigh(2_000);
        WeighedProgram thin = program(advice, "thin");
        assertThat(thin.chanceBeatsBaseline()).isLessThan(0.1);
        assertThat(thin.meanGainUsdPerAcre()).isLessThan(-50);
        assertThat(program(advice, "thick").chanceBeatsBaseline()).isLessThan(0.01);
        assertThat(advice.advised()).isEqualTo("usual");
    }

    @ParameterizedTest
    @DisplayName("without doubt the rate of the highest margin is the closed form's")
    @CsvSource({"3.75, 95, 4.50, 200, 28.94", "4.50, 90, 4.00, 150, 27.71"})
    void bestRate(double usdPerThousand, double germination, double price, double yield, double expected) {
        double best = Double.NaN;
        double most = Double.NEGATIVE_INFINITY;
        for (double seeds = expected - 1; seeds <= expected + 1; seeds += 0.01) {
            double margin = margin(usdPerThousand, germination, price, yield, seeds * 1000);
            if (margin > most) {
                most = margin;
                best = seeds;
            }
        }
        assertThat(best).isCloseTo(expected, within(0.015));
    }

    private static double margin(double usdPerThousand, double germination, double price, double yield, double seeds) {
        // Germination of the seeds builder is 95: emergence makes up what the check gives as one share.
        Map<String, Distribution> settled = Map.of(
                "emergence",
                new Distribution.Fixed(100 * germination / 95),
                "stand sharpness",
                new Distribution.Fixed(1));
        FieldAdvice advice = new OneField()
                .realStands()
                .assumptions(price, yield)
                .assumptions(AssumptionQuantity.BEST_STAND, new Distribution.Fixed(30_330))
                .seed("Hybrid", usdPerThousand * 32, 0, OneField.NONE)
                .program("one", true, drilled(seeds))
                .weigh(WeighingOptions.DEFAULT.withDraws(100).withChanged(settled));
        return program(advice, "one").meanMarginUsdPerAcre();
    }

    @Test
    @DisplayName("the yield of a rate is attainable yield × the response to its plants, by hand")
    void byHand() {
        FieldAdvice advice = corn().assumptions(AssumptionQuantity.BEST_STAND, new Distribution.Fixed(33_000))
                .program("usual", true, drilled(24_000))
                .weigh(WeighingOptions.DEFAULT.withDraws(100).withChanged(SETTLED));
        double plants = 24.0 * 0.95;
        double off = 30.33 * (plants - 33) / 33;
        assertThat(program(advice, "usual").meanYieldBuPerAcre())
                .isCloseTo(200 * (100 - 0.07737 * off * off) / 100, within(1e-9));
    }

    @Test
    @DisplayName(
            "poor emergence is drawn, and its mean counts: a concave response brings less than at the mean emergence")
    void emergenceIsDrawn() {
        Distribution doubted = new Distribution.Pert(50, 80, 100);
        double drawn = meanYield(doubted);
        double atTheMean = meanYield(new Distribution.Fixed(78.333333333333));
        assertThat(drawn).isLessThan(atTheMean - 0.5);
    }

    private static double meanYield(Distribution emergence) {
        FieldAdvice advice = corn().assumptions(AssumptionQuantity.BEST_STAND, new Distribution.Fixed(33_000))
                .program("usual", true, drilled(33_000))
                .weigh(WeighingOptions.DEFAULT
                        .withDraws(4_000)
                        .withChanged(Map.of("emergence", emergence, "stand sharpness", new Distribution.Fixed(1))));
        return program(advice, "usual").meanYieldBuPerAcre();
    }

    @ParameterizedTest
    @DisplayName("keep or replant nets what was worked out apart from this code")
    @CsvSource({
        "16, 2026-05-20, 200, 4.50, 60, 0, 6.31",
        "20, 2026-05-20, 200, 4.50, 60, 0, -62.37",
        "18, 2026-05-15, 220, 5.00, 75, 0, -0.25",
        "16, 2026-05-20, 200, 4.50, 60, 25, 31.31"
    })
    void keepOrReplant(
            double plants, LocalDate day, double yield, double price, double cost, double payment, double net) {
        FieldAdvice advice = replanting(plants, day, yield, price, cost, payment, 100)
                .weigh(WeighingOptions.DEFAULT.withDraws(100).withChanged(settledReplant()));
        assertThat(program(advice, "replant").meanGainUsdPerAcre()).isCloseTo(net, within(0.02));
    }

    @Test
    @DisplayName("replanting half the acres nets half of it")
    void half() {
        FieldAdvice advice = replanting(16, LocalDate.of(2026, 5, 20), 200, 4.50, 60, 0, 50)
                .weigh(WeighingOptions.DEFAULT.withDraws(100).withChanged(settledReplant()));
        assertThat(program(advice, "replant").meanGainUsdPerAcre()).isCloseTo(6.31 / 2, within(0.02));
    }

    @Test
    @DisplayName("the insurance payment is the operator's alone, whatever the lease shares")
    void paymentIsTheOperators() {
        OneField field = replanting(16, LocalDate.of(2026, 5, 20), 200, 4.50, 60, 25, 100)
                .shares(0.5, 0.5);
        FieldAdvice advice = field.weigh(WeighingOptions.DEFAULT.withDraws(100).withChanged(settledReplant()));
        assertThat(program(advice, "replant").meanGainUsdPerAcre()).isCloseTo(6.31 / 2 + 25, within(0.02));
    }

    @Test
    @DisplayName("what nobody judged or asked is drawn wide or counted as nothing, and said")
    void unknownIsSaid() {
        OneField field = replanting(16, LocalDate.of(2026, 5, 20), 200, 4.50, 60, 0, 100)
                .counted(new StandCount(
                        OneField.FIELD,
                        LocalDate.of(2026, 4, 25),
                        COUNTED,
                        new Distribution.Pert(14_000, 16_000, 18_000),
                        null,
                        null,
                        "invented"));
        FieldAdvice advice = field.weigh(500);
        assertThat(advice.cautions())
                .anySatisfy(caution -> assertThat(caution).contains("Nobody judged the gaps"))
                .anySatisfy(caution -> assertThat(caution).contains("insurance", "ask the agent"));
        assertThat(advice.inputs()).anySatisfy(input -> {
            assertThat(input.id()).isEqualTo("gaps");
            assertThat(input.band().high()).isGreaterThan(3);
        });
        assertThat(advice.inputs()).extracting(UncertainInput::id).contains("plants counted", "late planting");
    }

    @Test
    @DisplayName("two plantings without a count can't be weighed: what stands is unknown")
    void noCount() {
        OneField field = corn().program("keep", true, drilled(33_000))
                .program("replant", false, drilled(33_000), again(LocalDate.of(2026, 5, 20), 100, 60));
        assertThatThrownBy(() -> field.weigh(100))
                .isInstanceOf(SeasonGapException.class)
                .hasMessageContaining("200 %")
                .hasMessageContaining("stand_counts");
    }

    @Test
    @DisplayName("a date beyond the table is refused, not guessed")
    void beyondTheTable() {
        OneField field = replanting(16, LocalDate.of(2026, 6, 15), 200, 4.50, 60, 0, 100);
        assertThatThrownBy(() -> field.weigh(100))
                .isInstanceOf(SeasonGapException.class)
                .hasMessageContaining("15 June")
                .hasMessageContaining("9 June");
    }

    @Test
    @DisplayName("a typed share of yield kept by the stand still counts as it did, and what it now means is said")
    void typedStandStays() {
        Season plain = corn().program("usual", true, drilled(33_000)).season();
        Seed seed = plain.shelf().seeds().get(0);
        Seed typed = new Seed(
                seed.product(),
                seed.crop(),
                seed.seedsPerUnit(),
                seed.seedsPerPound(),
                seed.germinationPct(),
                seed.traits(),
                seed.blendRefugePct(),
                seed.rule(),
                seed.gainBuPerAcre(),
                new Distribution.Fixed(97),
                seed.saved(),
                seed.rights());
        Shelf shelf = plain.shelf();
        Season with = plain.withShelf(new Shelf(
                shelf.products(),
                List.of(typed),
                shelf.traits(),
                shelf.actives(),
                shelf.labelUses(),
                shelf.activeLimits(),
                shelf.controls(),
                shelf.labels()));
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(500);
        FieldAdvice before = Adviser.adviseField(plain, plain.fields().get(0), options);
        FieldAdvice after = Adviser.adviseField(with, with.fields().get(0), options);
        assertThat(program(after, "usual").meanYieldBuPerAcre())
                .isCloseTo(0.97 * program(before, "usual").meanYieldBuPerAcre(), within(1e-9));
        assertThat(after.cautions())
                .anySatisfy(caution ->
                        assertThat(caution).contains("97 % of the yield", "besides what too few plants cost"));
        assertThat(before.cautions()).noneMatch(caution -> caution.contains("besides what too few plants cost"));
    }

    private static Map<String, Distribution> settledReplant() {
        return Map.of(
                "emergence", new Distribution.Fixed(100),
                "stand sharpness", new Distribution.Fixed(1),
                "late planting", new Distribution.Fixed(1));
    }

    private static OneField replanting(
            double plants, LocalDate day, double yield, double price, double cost, double payment, double share) {
        return new OneField()
                .realStands()
                .assumptions(price, yield)
                // Where the table's own fit peaks, 4.693 ÷ (2 × 0.07737): the 30.33 of its formula is rounded.
                .assumptions(AssumptionQuantity.BEST_STAND, new Distribution.Fixed(30_328.3))
                .seed("Hybrid", 0, 0, OneField.NONE)
                .counted(new StandCount(
                        OneField.FIELD,
                        LocalDate.of(2026, 4, 25),
                        COUNTED,
                        new Distribution.Fixed(1000 * plants),
                        OneField.NONE,
                        payment,
                        "invented"))
                .program("keep", true, first())
                .program("replant", false, first(), again(day, share, cost));
    }

    private static OneField corn() {
        return new OneField().realStands().assumptions(4.50, 200).seed("Hybrid", 120, 0, OneField.NONE);
    }

    private static Pass drilled(double seeds) {
        return OneField.pass(
                1,
                PassKind.SEED,
                LocalDate.of(2026, 4, 25),
                "Hybrid",
                new Amount(seeds, FarmUnit.SEEDS),
                100,
                OneField.NONE,
                0);
    }

    private static Pass first() {
        return drilled(33_000);
    }

    /** 30,000 plants of seed that all comes up: 30,000 ÷ 0.95 seeds; the whole cost stands in the charge. */
    private static Pass again(LocalDate day, double share, double cost) {
        return new Pass(
                2,
                PassKind.SEED,
                day,
                "Hybrid",
                new Amount(30_000 / 0.95, FarmUnit.SEEDS),
                share,
                cost,
                OneField.NONE,
                0);
    }

    private static WeighedProgram program(FieldAdvice advice, String name) {
        return advice.program(name).orElseThrow();
    }
}
