package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weighing.OneField.NONE;
import static plumbrow.advice.weighing.OneField.harvest;
import static plumbrow.advice.weighing.OneField.plant;
import static plumbrow.advice.weighing.OneField.spray;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.calendar.PassChange;
import plumbrow.advice.calendar.ProgramChanges;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.names.UnknownNames;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.search.Search;
import plumbrow.advice.search.SearchOptions;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.science.chance.StandardNormal;

/**
 * Scouting as an option against closed forms: one insect, pressure normal, everything else known.
 *
 * <p>A spray for C $/ac that keeps the share k of a loss of b a unit of pressure P on a crop worth W $/ac gains X = W·b·k·P − C, which
 * is normal with mean m and spread s where P is. Made where X is above 0 it is worth E[max(0, X)] = m·Φ(m/s) + s·φ(m/s), the standard
 * result for a normal. A count that errs by e with reliability ρ² = σ²/(σ² + e²) leaves of s the part s·ρ that the count tells
 * (preposterior analysis: Raiffa &amp; Schlaifer 1961, value from memory).
 */
class ScoutingTest {
    private static final int DRAWS = 10_000;
    private static final String APHID = "soybean aphid";
    private static final double PRICE = 5;
    private static final double YIELD = 200;
    private static final double LOSS_PCT = 1;
    private static final double CONTROL = 0.9;
    private static final double USD_PER_FL_OZ = 5;
    private static final double COST = 4 * USD_PER_FL_OZ;
    private static final double MEAN = 3;
    private static final double SD = 0.8;

    private static Pass scouted(double threshold, double scouting) {
        return spray(2, "Guard", 4).waitingFor(new ScoutingTrigger(APHID, threshold, scouting));
    }

    /** Worth $1,000/ac, 1 % lost per insect, 90 % kept: a spray gains 9·P − 20, so it pays from 2.22 insects on. */
    private static OneField field(double mean, @Nullable ScoutingSample sample, Pass scouted) {
        return new OneField()
                .assumptions(PRICE, YIELD)
                .seed("Plain", 100, 0, NONE)
                .insecticide("Guard", USD_PER_FL_OZ)
                .control("Guard", APHID, 4, new Distribution.Fixed(CONTROL))
                .insect(APHID, new Distribution.Normal(mean, SD / mean), new Distribution.Fixed(LOSS_PCT), sample)
                .program("never", true, plant("Plain"), harvest(3))
                .program("always", false, plant("Plain"), spray(2, "Guard", 4), harvest(3))
                .program("scout", false, plant("Plain"), scouted, harvest(3));
    }

    private static double breakEven() {
        return COST / (PRICE * YIELD * LOSS_PCT / 100 * CONTROL);
    }

    private static double option(double m, double s) {
        return m * StandardNormal.below(m / s) + s * StandardNormal.density(m / s);
    }

    @ParameterizedTest(name = "pressure {0}")
    @CsvSource({"2.6", "3", "3.5"})
    @DisplayName("an exact count at the break-even is worth m·Φ(m/s) + s·φ(m/s), less scouting")
    void exact(double mean) {
        double scouting = 1.5;
        WeighedProgram scout = field(mean, null, scouted(breakEven(), scouting))
                .weigh(DRAWS)
                .program("scout")
                .orElseThrow();
        double perInsect = PRICE * YIELD * LOSS_PCT / 100 * CONTROL;
        double m = perInsect * mean - COST;
        double s = perInsect * SD;
        assertThat(scout.meanGainUsdPerAcre()).isCloseTo(option(m, s) - scouting, within(0.02));
        double chance = StandardNormal.below(m / s);
        ScoutedPass pass = scout.scouted().get(0);
        assertThat(pass.chanceMade()).isCloseTo(chance, within(0.001));
        assertThat(scout.costUsdPerAcre()).isCloseTo(100 + scouting + chance * COST, within(0.02));
        assertThat(scout.costs().stream().mapToDouble(CostLine::usdPerAcre).sum())
                .isCloseTo(scout.costUsdPerAcre(), within(1e-9));
        assertThat(pass.bestUsdPerAcre()).isLessThan(0.01);
        assertThat(pass.neverUsdPerAcre()).isCloseTo(-option(m, s), within(0.02));
        assertThat(pass.alwaysUsdPerAcre()).isCloseTo(m - option(m, s), within(0.02));
    }

    @ParameterizedTest(name = "{0} plants that differ by {1}")
    @CsvSource({"4, 1.6", "25, 1.6", "9, 6"})
    @DisplayName("a count that errs is worth the option on what it tells; the best threshold is where that pays")
    void withError(int size, double spread) {
        double error = spread / Math.sqrt(size);
        double reliability = SD * SD / (SD * SD + error * error);
        double best = MEAN + (breakEven() - MEAN) / reliability; // E[P | count] = mean + ρ²·(count − mean)
        FieldAdvice advice = field(MEAN, new ScoutingSample(size, spread, 200), scouted(Math.max(0.01, best), 0))
                .weigh(DRAWS);
        WeighedProgram scout = advice.program("scout").orElseThrow();
        double perInsect = PRICE * YIELD * LOSS_PCT / 100 * CONTROL;
        double told = option(perInsect * MEAN - COST, perInsect * SD * Math.sqrt(reliability));
        if (best > 0.01) {
            assertThat(scout.meanGainUsdPerAcre()).isCloseTo(told, within(0.06));
        }
        assertThat(scout.scouted().get(0).bestUsdPerAcre())
                .isBetween(0.0, 0.25); // the best of many on the same draws is a little too good
        assertThat(scout.meanGainUsdPerAcre() + scout.scouted().get(0).bestUsdPerAcre())
                .isCloseTo(told, within(0.12));
        assertThat(advice.whatMatters()).noneMatch(input -> input.input().contains("scouting"));
        assertThat(advice.inputs()).noneMatch(input -> input.id().contains("scouting"));
    }

    @Test
    @DisplayName(
            "what comes of a count within so many times: the mean gain of a lognormal growth by numerical integration")
    void growth() {
        double times = 2;
        double logSd = Math.log(times) / 1.2815515655446004;
        ScoutingTrigger trigger = new ScoutingTrigger(APHID, 60, "aphids/plant", 25, times, 0.0);
        WeighedProgram scout = field(MEAN, null, spray(2, "Guard", 4).waitingFor(trigger))
                .weigh(DRAWS)
                .program("scout")
                .orElseThrow();
        double gain = 0;
        double chance = 0;
        int steps = 4_000;
        for (int i = 0; i < steps; i++) { // made where 25·P·e^(−s·Z) ≥ 60: of one P in Φ(ln(25·P/60)/s)
            double pressure = MEAN + SD * StandardNormal.quantile((i + 0.5) / steps);
            double made = pressure <= 0 ? 0 : StandardNormal.below(Math.log(25 * pressure / 60) / logSd);
            chance += made / steps;
            gain += made * (9 * pressure - COST) / steps;
        }
        assertThat(scout.scouted().get(0).chanceMade()).isCloseTo(chance, within(0.012));
        assertThat(scout.meanGainUsdPerAcre()).isCloseTo(gain, within(0.15));
        assertThat(scout.waits())
                .startsWith("scout for soybean aphid, Guard at 60 aphids/plant or more: made in ")
                .endsWith(" of 100 simulated seasons");
    }

    @Test
    @DisplayName("a threshold never reached is the program without the spray, one always reached the program with it")
    void bounds() {
        FieldAdvice advice = field(MEAN, null, scouted(1_000, 1)).weigh(2_000);
        assertThat(gain(advice, "scout")).isCloseTo(-1, within(1e-9));
        advice = field(MEAN, null, scouted(1e-9, 1)).weigh(2_000);
        assertThat(gain(advice, "scout")).isCloseTo(gain(advice, "always") - 1, within(0.01));
    }

    private static double gain(FieldAdvice advice, String program) {
        return advice.program(program).orElseThrow().meanGainUsdPerAcre();
    }

    @Test
    @DisplayName("injury and delay of the pass count only where it is made")
    void injury() {
        Pass hurting = OneField.pass(
                        2,
                        PassKind.SPRAY,
                        LocalDate.of(2026, 5, 1),
                        "Guard",
                        Objects.requireNonNull(spray(2, "Guard", 4).rate()),
                        100,
                        new Distribution.Fixed(2),
                        1)
                .waitingFor(new ScoutingTrigger(APHID, 3, 0.0));
        OneField season =
                field(MEAN, null, hurting).assumptions(AssumptionQuantity.DELAY_LOSS, new Distribution.Fixed(0.5));
        WeighedProgram scout = season.weigh(DRAWS).program("scout").orElseThrow();
        // Half of the draws are sprayed: of what insects leave there 2 % and half a percent are lost besides.
        double gain = 0;
        int steps = 4_000;
        for (int i = steps / 2; i < steps; i++) {
            double pressure = MEAN + SD * StandardNormal.quantile((i + 0.5) / steps);
            double sprayed = 1_000 * (1 - 0.01 * pressure * 0.1) * 0.98 * 0.995 - COST;
            gain += (sprayed - 1_000 * (1 - 0.01 * pressure)) / steps;
        }
        assertThat(scout.meanGainUsdPerAcre()).isCloseTo(gain, within(0.03));
    }

    @Test
    @DisplayName("in March the advice is to scout where that leads, with how often it comes to the spray")
    void told() {
        FieldAdvice advice = field(2.4, null, scouted(2.2, 0.5))
                .weigh(WeighingOptions.DEFAULT.withDraws(DRAWS).withEqual(new EqualRule(0.5)));
        assertThat(advice.advised()).isEqualTo("scout");
        assertThat(advice.sentence())
                .contains("scout for soybean aphid, Guard at 2.2 insects/plant or more: made in ")
                .contains(" of 100 simulated seasons");
    }

    @Test
    @DisplayName("the gates take it for a spray that may be made: a pass too near the harvest is barred all the same")
    void gates() {
        Pass late = new Pass(
                        2,
                        PassKind.SPRAY,
                        LocalDate.of(2026, 9, 30),
                        "Guard",
                        Objects.requireNonNull(spray(2, "Guard", 4).rate()),
                        100,
                        0,
                        NONE,
                        0)
                .waitingFor(new ScoutingTrigger(APHID, 2.2, 0.0));
        FieldAdvice advice = field(MEAN, null, late).weigh(500);
        assertThat(advice.program("scout").orElseThrow().standing()).isEqualTo(Standing.BARRED);
    }

    @Test
    @DisplayName(
            "a count of what does not press on the field, and a herbicide that waits for insects, are gaps in words")
    void refused() {
        assertThatThrownBy(() -> field(
                                MEAN, null, spray(2, "Guard", 4).waitingFor(new ScoutingTrigger("thrips", 2, 0.0)))
                        .weigh(100))
                .isInstanceOf(SeasonGapException.class)
                .hasMessageContaining(
                        "waits for a count of thrips, which the insects sheet does not have on Creek 100");
        assertThatThrownBy(() -> field(MEAN, null, scouted(2, 0))
                        .weed("waterhemp", new Distribution.Fixed(1), 1, 50)
                        .control("Guard", "waterhemp", 4, new Distribution.Fixed(0.5))
                        .weigh(100))
                .isInstanceOf(SeasonGapException.class)
                .hasMessageContaining("only passes against insects can wait for a count");
    }

    @Test
    @DisplayName(
            "an insect that does not press on the field is a name that refers to nothing, with the nearest that does")
    void unknownName() {
        Season season = field(
                        MEAN, null, spray(2, "Guard", 4).waitingFor(new ScoutingTrigger("soybean aphids", 2, 0.0)))
                .season();
        assertThat(UnknownNames.of(season)).singleElement().satisfies(unknown -> {
            assertThat(unknown.column()).isEqualTo("scout_insect");
            assertThat(unknown.sentence()).contains("soybean aphids", "did you mean soybean aphid?");
        });
    }

    @Test
    @DisplayName("without a stated sample the advice says that the count is taken as exact")
    void noSample() {
        assertThat(field(MEAN, null, scouted(2, 0)).weigh(200).cautions())
                .anyMatch(caution -> caution.startsWith("No sample is entered for soybean aphid"));
        assertThat(field(MEAN, new ScoutingSample(20, 1, 50), scouted(2, 0))
                        .weigh(200)
                        .cautions())
                .noneMatch(caution -> caution.startsWith("No sample is entered"));
    }

    @Test
    @DisplayName("a pass that was moved still waits for its count")
    void moved() {
        Season season = field(MEAN, null, scouted(2, 0.7)).season();
        Season moved = new ProgramChanges(season, season.fields().get(0))
                .changed("scout", List.of(new PassChange(2, LocalDate.of(2026, 7, 20), 3.0)));
        Pass pass = moved.programs(OneField.FIELD).stream()
                .filter(program -> program.name().equals("scout"))
                .flatMap(program -> program.passes().stream())
                .filter(one -> one.kind() == PassKind.SPRAY)
                .findFirst()
                .orElseThrow();
        assertThat(pass.date()).isEqualTo(LocalDate.of(2026, 7, 20));
        assertThat(pass.trigger()).isEqualTo(new ScoutingTrigger(APHID, 2, 0.7));
    }

    @Test
    @DisplayName("once it is made it waits for nothing: it is done in every draw, with its scouting")
    void done() {
        Season season = field(MEAN, null, scouted(2, 0.7)).season();
        Done line = new Done(
                OneField.FIELD,
                LocalDate.of(2026, 5, 1),
                "Guard",
                new Amount(4, FarmUnit.FL_OZ),
                100,
                null,
                "log book");
        Program scout = season.programs(OneField.FIELD).get(2);
        Season after = season.withPrograms(
                List.of(season.programs(OneField.FIELD).get(0), scout),
                new Work(season.work().sprayPlans(), season.work().crew(), List.of(line)));
        FieldAdvice advice = Adviser.adviseField(after, after.fields().get(0), WeighingOptions.DEFAULT.withDraws(500));
        assertThat(advice.program("scout").orElseThrow().scouted()).isEmpty();
        assertThat(gain(advice, "scout")).isCloseTo(0, within(1e-9));
        assertThat(advice.program("never").orElseThrow().costUsdPerAcre()).isCloseTo(100 + COST + 0.7, within(1e-9));
    }

    private static FieldAdvice tooFew(Season season, String product, LocalDate day) {
        Done line = new Done(OneField.FIELD, day, product, new Amount(0, FarmUnit.FL_OZ), 100, null, "field notes");
        Season after = season.withPrograms(season.programs(), season.work().withLog(List.of(line)));
        return Adviser.adviseField(
                after,
                after.fields().get(0),
                WeighingOptions.DEFAULT
                        .withDraws(DRAWS)
                        .withChanged(Map.of("stand sharpness", new Distribution.Fixed(1))));
    }

    @Test
    @DisplayName(
            "scouted, too few: the pass is not made, and the rest is decided on the seasons in which so few are counted")
    void tooFew() {
        Season season = field(MEAN, null, scouted(MEAN, 1.5)).season();
        FieldAdvice before =
                Adviser.adviseField(season, season.fields().get(0), WeighingOptions.DEFAULT.withDraws(DRAWS));
        FieldAdvice advice = tooFew(season, "Guard", LocalDate.of(2026, 5, 3));
        // Of a normal below its mean the mean is φ(0)/Φ(0) = 0.798 spreads lower.
        double few = MEAN - SD * 2 * StandardNormal.density(0);
        double perInsect = PRICE * YIELD * LOSS_PCT / 100 * CONTROL;
        assertThat(gain(before, "always")).isCloseTo(perInsect * MEAN - COST, within(0.05));
        assertThat(gain(advice, "always")).isCloseTo(perInsect * few - COST, within(0.05));
        WeighedProgram scout = advice.program("scout").orElseThrow();
        assertThat(scout.meanGainUsdPerAcre()).as("what scouting cost is sunk").isCloseTo(0, within(1e-9));
        assertThat(scout.costUsdPerAcre()).isCloseTo(100, within(1e-9));
        assertThat(scout.scouted()).isEmpty();
        assertThat(advice.sentence()).doesNotContain("scout for");
        assertThat(advice.cautions())
                .anyMatch(caution -> caution.startsWith(
                        "Scouted on 2026-05-03: fewer than 3 of soybean aphid, so Guard is" + " not put on."));
        assertThat(advice.inputs())
                .filteredOn(input -> input.id().startsWith("pressure"))
                .allSatisfy(input -> assertThat(input.mean()).isCloseTo(few, within(0.005)));
    }

    @Test
    @DisplayName("a count that no draw agrees with, and one that no pass waits for, change nothing and are said")
    void tooFewOfNothing() {
        Season season = field(MEAN, null, scouted(0.05, 1.5)).season();
        FieldAdvice never = tooFew(season, "Guard", LocalDate.of(2026, 5, 3));
        assertThat(never.cautions()).anyMatch(caution -> caution.contains("in fewer than 2 of 100 simulated seasons"));
        assertThat(gain(never, "always")).isCloseTo(9 * MEAN - COST, within(0.05));
        FieldAdvice far = tooFew(field(MEAN, null, scouted(MEAN, 1.5)).season(), "Guard", LocalDate.of(2026, 9, 3));
        assertThat(far.cautions()).anyMatch(caution -> caution.contains("COUNTS AS NOTHING"));
        assertThat(far.program("scout").orElseThrow().scouted()).hasSize(1);
        assertThat(gain(far, "always")).isCloseTo(9 * MEAN - COST, within(0.05));
    }

    @Test
    @DisplayName("nothing was put on: no gate and no shed counts the line, and the pass is planned no more")
    void tooFewIsNoApplication() {
        Season season = field(MEAN, null, scouted(MEAN, 1.5)).season();
        Done line = new Done(
                OneField.FIELD, LocalDate.of(2026, 5, 3), "Guard", new Amount(0, FarmUnit.FL_OZ), 100, null, "notes");
        Season after = season.withPrograms(season.programs(), season.work().withLog(List.of(line)));
        assertThat(after.work().log(OneField.FIELD)).isEmpty();
        Program scout = after.programs(OneField.FIELD).get(2);
        DoneWork done = DoneWork.of(after, after.fields().get(0));
        assertThat(scout.passes())
                .filteredOn(pass -> done.isDone(scout, pass))
                .extracting(Pass::product)
                .containsExactly("Guard");
        assertThat(done.donePasses(scout)).isEmpty();
        assertThat(line.words()).isEqualTo("Guard not made: scouting found too few");
    }

    @Test
    @DisplayName("the search says that it tries no pass that waits")
    void search() {
        Season season = field(MEAN, null, scouted(2, 0.7)).season();
        var found = Search.of(season, season.fields().get(0), SearchOptions.DEFAULT.withDraws(200));
        assertThat(found.limits())
                .anyMatch(limit -> limit.startsWith("Not tried: Guard after scouting, as in 'scout'"));
    }

    @Test
    @DisplayName("the working at the mean of every input ends in the kernel's margin, sprayed or not")
    void working() {
        for (double threshold : new double[] {2, 4}) {
            Season season = field(MEAN, new ScoutingSample(20, 1, 50), scouted(threshold, 0.7))
                    .season();
            FieldModel model = FieldModels.of(season, season.fields().get(0), Map.of());
            double[] at = model.variables().stream()
                    .mapToDouble(variable -> Chances.of(variable.distribution()).mean())
                    .toArray();
            double[][] columns =
                    Arrays.stream(at).mapToObj(value -> new double[] {value}).toArray(double[][]::new);
            for (ProgramModel program : model.programs()) {
                double[] margin = new double[1];
                new Kernel(model).run(program, columns, new double[1], margin);
                var steps = LikelyWorking.of(model, program, at);
                assertThat(steps.get(steps.size() - 1).value()).isCloseTo(margin[0], within(1e-9));
            }
        }
    }
}
