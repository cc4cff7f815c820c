package plumbrow.app.lookback;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.lookback.AssumptionBias;
import plumbrow.advice.lookback.Decided;
import plumbrow.advice.lookback.Expectation;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.lookback.Honesty;
import plumbrow.advice.lookback.LookBack;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.ProgramDraws;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.demo.DemoBook;

/**
 * Seasons made by the model itself, with another seed than the advice: what was stated must come as often as it was stated, and
 * assumptions that are made too rosy must be found.
 */
class SimulatedSeasonsTest {
    private static final int SEASONS = 1000;
    private static final long OTHER_SEED = 77;

    private static final Season DEMO = DemoBook.season();

    private static Season inYear(int year) {
        return new Season(
                year,
                DEMO.asOf(),
                DEMO.adviser(),
                DEMO.farms(),
                DEMO.fields(),
                DEMO.history(),
                DEMO.shelf(),
                DEMO.pests(),
                DEMO.programs(),
                DEMO.assumptions(),
                DEMO.ground(),
                DEMO.work());
    }

    /** On each field the program of the highest mean that is not the baseline grows, and a strip of the baseline beside it. */
    @Test
    void what_is_stated_comes_as_often_as_stated() {
        DrawSource truth = new DrawSource(SEASONS, OTHER_SEED);
        List<Decided> decided = new ArrayList<>();
        List<Harvest> harvests = new ArrayList<>();
        for (String name : List.of("Church Quarter", "Schoolhouse", "Levee")) {
            Field field = DEMO.field(name).orElseThrow();
            FieldAdvice advice = Adviser.adviseField(DEMO, field, WeighingOptions.DEFAULT);
            String chosen = advice.programs().stream()
                    .filter(one -> !one.baseline())
                    .map(WeighedProgram::name)
                    .findFirst()
                    .orElseThrow();
            List<Expectation> expected = Expectation.of(DEMO, advice, chosen);
            ProgramDraws draws = new ProgramDraws(DEMO, field, truth);
            double[] price = truth.column(
                            "price of " + field.crop().word(),
                            DEMO.assumptions(field, AssumptionQuantity.PRICE)
                                    .orElseThrow()
                                    .distribution())
                    .values();
            double[] own = draws.weigh(program(field, chosen)).yields();
            double[] baseline = draws.weigh(program(field, advice.baseline())).yields();
            for (int i = 0; i < SEASONS; i++) {
                int year = 2026 + i;
                decided.add(new Decided(year, name, chosen, "x", null, null, expected));
                harvests.add(harvest(year, name, chosen, false, own[i], price[i]));
                harvests.add(harvest(year, name, advice.baseline(), true, baseline[i], price[i]));
            }
        }
        List<Season> seasons = new ArrayList<>();
        for (int i = 0; i < SEASONS; i++) {
            seasons.add(inYear(2026 + i));
        }
        Honesty honesty = LookBack.of(seasons, decided, harvests).honesty();
        assertThat(honesty.fields()).isEqualTo(3 * SEASONS);
        assertThat(honesty.seasons()).isEqualTo(SEASONS);
        assertThat(honesty.odds().cases()).isEqualTo(3 * SEASONS);
        assertThat(honesty.odds().meanGap()).isLessThan(0.02);
        assertThat(Math.sqrt(Objects.requireNonNull(honesty.odds().parts()).reliability()))
                .isLessThan(0.02);
        assertThat(honesty.levels().meanGap()).isLessThan(0.02);
        assertThat(honesty.coverage())
                .hasSize(3)
                .allSatisfy(
                        one -> assertThat((double) one.inside() / one.cases()).isBetween(0.78, 0.82));
    }

    private static Program program(Field field, String name) {
        return DEMO.programs(field.name()).stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Harvest harvest(int year, String field, String program, boolean strip, double yield, double price) {
        return new Harvest(year, field, program, strip, yield, null, price, null, "x", Instant.EPOCH, "simulated");
    }

    /**
     * How often assumptions times a factor are found, of 300 times some seasons of ten fields of corn.
     *
     * @param together whether the fields of a season share its weather, as in the weighing; else each has a season of its own
     */
    private static int found(double rosy, int seasons, boolean together) {
        int runs = 300;
        DrawSource truth = new DrawSource(seasons * runs, OTHER_SEED);
        List<Field> fields = DEMO.fields().stream()
                .filter(field -> field.crop() == Crop.CORN)
                .limit(10)
                .toList();
        List<double[]> over = new ArrayList<>();
        for (Field field : fields) {
            ProgramDraws.Weighed weighed = new ProgramDraws(DEMO, field, truth)
                    .weigh(DEMO.programs(field.name()).get(0));
            List<Double> yields = new ArrayList<>();
            Arrays.stream(weighed.yields()).forEach(yields::add);
            if (!together) {
                Collections.shuffle(yields, new Random(field.name().hashCode()));
            }
            over.add(yields.stream()
                    .mapToDouble(yield -> yield / (weighed.meanYieldBuPerAcre() * rosy) - 1)
                    .toArray());
        }
        int found = 0;
        for (int run = 0; run < runs; run++) {
            List<AssumptionBias.Case> cases = new ArrayList<>();
            for (int season = 0; season < seasons; season++) {
                for (double[] field : over) {
                    cases.add(new AssumptionBias.Case(2026 + season, field[seasons * run + season]));
                }
            }
            AssumptionBias bias = AssumptionBias.of(Crop.CORN, AssumptionBias.Of.YIELD, cases);
            found += bias.found() && (rosy == 1 || bias.mean() < 0) ? 1 : 0;
        }
        return found;
    }

    /**
     * With fields whose seasons have nothing in common ten fields of three seasons are thirty; where they share the weather, three
     * seasons are little more than three, and honest assumptions are taken for rosy or poor in the 20 of 100 that an 80 % interval
     * leaves.
     */
    @Test
    void assumptions_made_a_tenth_too_rosy_are_found() {
        int apart = found(1.1, 3, false);
        int honestApart = found(1, 3, false);
        int three = found(1.1, 3, true);
        int six = found(1.1, 6, true);
        int honest = found(1, 3, true);
        assertThat(apart).as("of 300, fields apart").isGreaterThan(250);
        assertThat(three).as("of 300, fields together").isGreaterThan(190);
        assertThat(six).as("of 300, six seasons together").isGreaterThan(270);
        assertThat(List.of(honest, honestApart)).as("of 300, honest").allMatch(none -> none < 75);
    }
}
