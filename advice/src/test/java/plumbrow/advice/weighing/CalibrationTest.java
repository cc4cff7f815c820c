package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.advice.weedseason.WeedField.spray;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weedseason.WeedField;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.chance.StandardNormal;

/**
 * Made fields with a hidden truth: each is weighed as any other, then lived through on a truth that is drawn from the same distributions by
 * another way (plain random numbers, a copula for what is tied, one season walked at a time). What was said is held against what came.
 *
 * <p>The big run, with its table: {@code bench/run calibration}.
 */
@DisplayName("What is said of odds and intervals comes true as often as it is said")
class CalibrationTest {
    private static final int DRAWS = 800;
    private static final String BIG = "plumbrow.calibration";
    private static final int MANY = Integer.getInteger(BIG + ".lives", 40);

    /** Fields that are lived through once: many, since all programs of a field share its one season. */
    private static final int ONCE = Integer.getInteger(BIG + ".once", 4_000);

    /** How the truth of a field hangs together beyond what the model knows. */
    private enum Truth {
        AS_STATED(0),
        /** All that is uncertain goes together: scores of any two inputs correlate by 0.3. */
        TOGETHER(.3);

        private final double correlation;

        Truth(double correlation) {
            this.correlation = correlation;
        }
    }

    @Test
    @DisplayName("over made fields, each lived through many times: odds within 2 points, eight intervals of ten hold")
    void calibrated() {
        Tally tally = run(30, 20, Truth.AS_STATED);
        assertThat(Math.abs(tally.oddsOff()))
                .as("odds against the baseline, points")
                .isLessThan(3);
        assertThat(tally.marginCovered())
                .as("margins within their 80 %% interval")
                .isBetween(77.0, 83.0);
        assertThat(tally.gainCovered()).as("gains within their 80 %% interval").isBetween(77.0, 83.0);
    }

    @Test
    @EnabledIfSystemProperty(named = BIG, matches = ".+")
    @DisplayName("500 made fields: odds and intervals within 2 points of what came")
    void big() throws IOException {
        StringBuilder table = new StringBuilder("""
            | truth | fields | lives each | odds said % | came % | off, points | error | margins in their 80 % | error | gains in their 80 % | error | best, said % | came % |
            |---|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|
            """);
        StringBuilder reliability = new StringBuilder("""

            | odds said | programs | said % | came % |
            |---|--:|--:|--:|
            """);
        List<Tally> tallies = new ArrayList<>();
        for (Truth truth : Truth.values()) {
            for (int lives : new int[] {1, MANY}) {
                Tally tally = run(lives == 1 ? ONCE : 500, lives, truth);
                tallies.add(tally);
                table.append(tally.row(truth == Truth.AS_STATED ? "as stated" : "all inputs together, 0.3", lives));
                if (lives == MANY && truth == Truth.AS_STATED) {
                    reliability.append(tally.reliability());
                }
            }
        }
        Files.writeString(Path.of(System.getProperty(BIG)), table.append(reliability));
        for (Tally stated : tallies.subList(0, 2)) {
            assertThat(Math.abs(stated.oddsOff())).isLessThan(2);
            assertThat(stated.marginCovered()).isBetween(78.0, 82.0);
            assertThat(stated.gainCovered()).isBetween(78.0, 82.0);
        }
    }

    /** What was said and what came, over fields, programs and lives. */
    private static final class Tally {
        private int fields;
        private double said;
        private double came;
        private double pairs;
        private double inMargin;
        private double margins;
        private double inGain;
        private double gains;
        private double bestSaid;
        private double bestCame;
        private double lives;
        private final List<Double> offByField = new ArrayList<>();
        private final List<Double> marginByField = new ArrayList<>();
        private final List<Double> gainByField = new ArrayList<>();
        private final double[][] bins = new double[5][3];

        double oddsOff() {
            return 100 * (said - came) / pairs;
        }

        /** Standard error of that, fields taken as the units [points]. */
        double error() {
            return error(offByField);
        }

        /**
         * Standard error of a mean over fields [points]. Programs of a field share its truth and lives of it what was said, so only
         * fields count as tries.
         */
        private static double error(List<Double> byField) {
            double mean =
                    byField.stream().mapToDouble(Double::doubleValue).average().orElse(0);
            double squares = byField.stream()
                    .mapToDouble(one -> (one - mean) * (one - mean))
                    .sum();
            return 100 * Math.sqrt(squares / (byField.size() - 1) / byField.size());
        }

        double marginCovered() {
            return 100 * inMargin / margins;
        }

        double gainCovered() {
            return 100 * inGain / gains;
        }

        String row(String truth, int each) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %.1f | %.1f | %+.1f | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f |%n",
                    truth,
                    fields,
                    each,
                    100 * said / pairs,
                    100 * came / pairs,
                    oddsOff(),
                    error(),
                    marginCovered(),
                    error(marginByField),
                    gainCovered(),
                    error(gainByField),
                    100 * bestSaid / lives,
                    100 * bestCame / lives);
        }

        String reliability() {
            StringBuilder rows = new StringBuilder();
            for (int b = 0; b < bins.length; b++) {
                if (bins[b][0] > 0) {
                    rows.append(String.format(
                            Locale.ROOT,
                            "| %d to %d %% | %,.0f | %.1f | %.1f |%n",
                            20 * b,
                            20 * b + 20,
                            bins[b][0],
                            100 * bins[b][1] / bins[b][0],
                            100 * bins[b][2] / bins[b][0]));
                }
            }
            return rows.toString();
        }
    }

    private static Tally run(int fields, int lives, Truth truth) {
        Tally tally = new Tally();
        SplittableRandom random = new SplittableRandom(20_261_130);
        for (int n = 0; n < fields; n++) {
            Season season = n % 2 == 0 ? weeds(random) : RandomField.of(random).season();
            live(season, n, lives, truth, random, tally);
            tally.fields++;
        }
        return tally;
    }

    private static void live(Season season, int seed, int lives, Truth truth, SplittableRandom random, Tally tally) {
        FieldModel model = FieldModels.of(season, season.fields().get(0), Map.of());
        DrawSource source = new DrawSource(DRAWS, seed);
        double[][] columns = Arrays.stream(FieldWeighing.drawn(model, source))
                .map(Column::values)
                .toArray(double[][]::new);
        int programs = model.programs().size();
        double[][] said = new double[programs][DRAWS];
        new Kernel(model, SeasonLoads.of(model.programs(), columns, DRAWS))
                .run(model.programs(), columns, new double[programs][DRAWS], said);
        int base = 0;
        while (!model.programs().get(base).program().baseline()) {
            base++;
        }
        Band[] margin = new Band[programs];
        Band[] gain = new Band[programs];
        double[] odds = new double[programs];
        int advised = 0;
        for (int c = 0; c < programs; c++) {
            double[] sorted = said[c].clone();
            Arrays.sort(sorted);
            margin[c] = FieldWeighing.band(sorted);
            double[] gains = FieldWeighing.difference(said[c], said[base]);
            odds[c] = FieldWeighing.chanceAbove(gains);
            Arrays.sort(gains);
            gain[c] = FieldWeighing.band(gains);
            advised = SortedDraws.mean(said[c]) > SortedDraws.mean(said[advised]) ? c : advised;
        }
        double best = 0;
        for (int i = 0; i < DRAWS; i++) {
            best += best(said, i, advised) / DRAWS;
        }
        double offHere = 0;
        double marginHere = 0;
        double gainHere = 0;
        for (int life = 0; life < lives; life++) {
            double[][] truly = truth(model, truth, random);
            double[][] came = new double[programs][1];
            new Kernel(model, SeasonLoads.of(model.programs(), truly, 1))
                    .run(model.programs(), truly, new double[programs][1], came);
            for (int c = 0; c < programs; c++) {
                tally.margins++;
                tally.inMargin += within(came[c][0], margin[c]);
                marginHere += within(came[c][0], margin[c]) / lives / programs;
                if (c == base) {
                    continue;
                }
                double more = came[c][0] - came[base][0];
                double won = more > 0 ? 1 : more == 0 ? .5 : 0;
                tally.gains++;
                tally.inGain += within(more, gain[c]);
                gainHere += within(more, gain[c]) / lives / (programs - 1);
                tally.pairs++;
                tally.said += odds[c];
                tally.came += won;
                offHere += (odds[c] - won) / lives / (programs - 1);
                double[] bin = tally.bins[Math.min(4, (int) (5 * odds[c]))];
                bin[0]++;
                bin[1] += odds[c];
                bin[2] += won;
            }
            tally.lives++;
            tally.bestSaid += best;
            tally.bestCame += best(came, 0, advised);
        }
        tally.offByField.add(offHere);
        tally.marginByField.add(marginHere);
        tally.gainByField.add(gainHere);
    }

    private static double best(double[][] margins, int draw, int program) {
        double most = Arrays.stream(margins).mapToDouble(one -> one[draw]).max().orElseThrow();
        long holders = Arrays.stream(margins).filter(one -> one[draw] == most).count();
        return margins[program][draw] == most ? 1.0 / holders : 0;
    }

    private static double within(double value, Band band) {
        return value >= band.low() && value <= band.high() ? 1 : 0;
    }

    /** One value of every input, the yield tied to price and weather as the model says, all tied besides as the truth says. */
    private static double[][] truth(FieldModel model, Truth truth, SplittableRandom random) {
        double common = normal(random);
        double pull = Math.sqrt(truth.correlation);
        double[] scores = new double[model.variables().size()];
        for (int place = 0; place < scores.length; place++) {
            scores[place] = pull * common + Math.sqrt(1 - truth.correlation) * normal(random);
        }
        WeatherTie weather = model.weather();
        double toPrice = 2 * Math.sin(Math.PI * model.tie() / 6);
        double toWeather = 0;
        double july = 0;
        if (weather != null && weather.ties()) {
            toWeather = 2 * Math.sin(Math.PI * weather.rankCorrelation() / 6);
            int season = weather.seasons().at(100 * StandardNormal.below(scores[weather.place()]));
            double[] summer = weather.summer();
            double less = Arrays.stream(summer)
                    .filter(other -> other < summer[season])
                    .count();
            july = StandardNormal.quantile((less + random.nextDouble()) / summer.length);
        }
        double rest = Math.sqrt(1 - toPrice * toPrice - toWeather * toWeather);
        scores[model.yield()] = toPrice * scores[model.price()] + toWeather * july + rest * scores[model.yield()];
        double[][] truly = new double[scores.length][1];
        for (int place = 0; place < scores.length; place++) {
            Distribution distribution = model.variables().get(place).distribution();
            double chance = StandardNormal.below(scores[place]);
            truly[place][0] = distribution instanceof Distribution.Chance yes
                    ? chance < 1 - yes.chance() ? 0 : 1
                    : Chances.of(distribution).quantile(Math.min(1 - 1e-12, Math.max(1e-12, chance)));
        }
        return truly;
    }

    private static double normal(SplittableRandom random) {
        return StandardNormal.quantile(Math.min(1 - 1e-12, Math.max(1e-12, random.nextDouble())));
    }

    /** A field whose weeds are followed through the seasons that may come. */
    private static Season weeds(SplittableRandom random) {
        double soil = .6 + .3 * random.nextDouble();
        double leaf = .7 + .25 * random.nextDouble();
        return new WeedField()
                .assumptions(
                        AssumptionQuantity.PRICE, new Distribution.Lognormal(3.5 + 2 * random.nextDouble(), .25, .6))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Weibull(160 + 60 * random.nextDouble(), .2))
                .assumptions(AssumptionQuantity.PRICE_YIELD_TIE, new Distribution.Fixed(-.3))
                .weed("waterhemp", pert(1, 60, random), 1, 45)
                .weed("giant foxtail", pert(1, 40, random), .4, 45)
                .herbicide("soil", "S-metolachlor")
                .herbicide("leaf", "glyphosate")
                .rating("soil", "waterhemp", Timing.SOIL, 30, new Distribution.Pert(soil - .25, soil, soil + .08))
                .rating("soil", "giant foxtail", Timing.SOIL, 30, new Distribution.Pert(soil - .2, soil, soil + .08))
                .rating(
                        "leaf",
                        "waterhemp",
                        Timing.LEAF,
                        30,
                        new Distribution.Pert(leaf - .4, leaf, Math.min(.99, leaf + .1)))
                .rating(
                        "leaf",
                        "giant foxtail",
                        Timing.LEAF,
                        30,
                        new Distribution.Pert(leaf - .2, leaf, Math.min(.99, leaf + .1)))
                .program("nothing")
                .program("pre", spray(5, 1 + random.nextInt(4), "soil", 25 + 10 * random.nextDouble()))
                .program("post", spray(5, 20 + random.nextInt(12), "leaf", 20 + 20 * random.nextDouble()))
                .program("both", spray(5, 2, "soil", 30), spray(6, 1 + random.nextInt(8), "leaf", 30))
                .season();
    }

    private static Distribution pert(double low, double high, SplittableRandom random) {
        double likely = low + (high - low) * random.nextDouble();
        return new Distribution.Pert(low, likely, high);
    }
}
