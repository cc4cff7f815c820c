package plumbrow.science.weedseason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Random seasons, everything drawn: the kernel against the day-by-day walk, and the balance of every day. */
@DisplayName("The kernel and the walk through the days agree")
class KernelTest {
    private static final int SEASONS = 40;
    private static final int DRAWS = 5;

    @Test
    @DisplayName("loss, load, survivors and seed of every draw are those of the walk, to rounding")
    void sameAsTrace() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < SEASONS; n++) {
            double[][] columns = columns(random);
            WeedSeason season = season(random);
            SeasonLoss loss = SeasonLoss.of(season, columns, DRAWS);
            for (int draw = 0; draw < DRAWS; draw++) {
                SeasonTrace trace = SeasonTrace.of(season, columns, draw);
                assertThat(loss.lossPct()[draw]).isCloseTo(trace.lossPct(), within(1e-9));
                for (int j = 0; j < season.species().size(); j++) {
                    SeasonTrace.OfSpecies weed = trace.species().get(j);
                    double end = weed.standing()[season.days().count() - 1];
                    assertThat(loss.loadPct()[j][draw]).isCloseTo(weed.loadPct(), within(1e-9));
                    assertThat(loss.survivorsM2()[j][draw]).isCloseTo(end, within(1e-9));
                    assertThat(loss.seedsM2()[j][draw]).isCloseTo(weed.seedsM2(), within(1e-6));
                }
            }
        }
    }

    @Test
    @DisplayName("plants balance every day, and what came up by the end is all the seed that was there to come")
    void balance() {
        SplittableRandom random = new SplittableRandom(12);
        for (int n = 0; n < SEASONS; n++) {
            double[][] columns = columns(random);
            WeedSeason season = season(random);
            SeasonTrace trace = SeasonTrace.of(season, columns, 0);
            for (SeasonTrace.OfSpecies weed : trace.species()) {
                double gone = 0;
                double before = 0;
                for (int i = 0; i < season.days().count(); i++) {
                    double stood = before + weed.emerged()[i] - weed.died()[i] - weed.killed()[i];
                    assertThat(weed.standing()[i])
                            .isCloseTo(stood, within(1e-9))
                            .isGreaterThanOrEqualTo(0);
                    gone += weed.stoppedByResidual()[i] + weed.died()[i] + weed.killed()[i];
                    assertThat(gone + weed.standing()[i]).isCloseTo(weed.brokenDormancy()[i], within(1e-9));
                    before = weed.standing()[i];
                }
            }
        }
    }

    @Test
    @DisplayName("draws do not touch each other: one draw alone is the same, to the bit")
    void drawsAreIndependent() {
        SplittableRandom random = new SplittableRandom(13);
        double[][] columns = columns(random);
        WeedSeason season = season(random);
        double[] all = SeasonLoss.of(season, columns, DRAWS).lossPct();
        for (int draw = 0; draw < DRAWS; draw++) {
            double[][] one = new double[columns.length][1];
            for (int c = 0; c < columns.length; c++) {
                one[c][0] = columns[c][draw];
            }
            assertThat(SeasonLoss.of(season, one, 1).lossPct()[0]).isEqualTo(all[draw]);
        }
    }

    @Test
    @DisplayName("cohorts of several days differ by no more than their days differ among themselves")
    void groupedCohorts() {
        SplittableRandom random = new SplittableRandom(14);
        for (int n = 0; n < SEASONS; n++) {
            double[][] columns = columns(random);
            WeedSeason season = season(random);
            season = new WeedSeason(
                    season.days(),
                    season.crop(),
                    season.species().stream()
                            .map(one -> one.withBiotypes(List.of(Biotype.susceptible())))
                            .toList(),
                    season.passes());
            SeasonLoss exact = SeasonLoss.of(season, columns, 1);
            for (int each : new int[] {2, 3, 7}) {
                SeasonLoss grouped = SeasonLoss.of(season, columns, 1, each);
                for (int j = 0; j < season.species().size(); j++) {
                    double[] bound = bound(season, columns, j, each);
                    assertThat(grouped.survivorsM2()[j][0]).isCloseTo(exact.survivorsM2()[j][0], within(bound[0]));
                    assertThat(grouped.loadPct()[j][0]).isCloseTo(exact.loadPct()[j][0], within(bound[1]));
                }
            }
        }
    }

    /** Largest error of survivors [plants/m²] and load [%], as the class of the cohorts states it. */
    private static double[] bound(WeedSeason season, double[][] columns, int j, int each) {
        Species species = season.species().get(j);
        Cohorts daily = new Cohorts(season.days().count(), 1);
        SeasonKernel kernel = new SeasonKernel(season, columns, daily);
        SpeciesKernel one = kernel.reckon(0, j);
        double density = species.densityM2().in(columns, 0);
        double survivors = 1e-9;
        double load = 1e-9;
        Cohorts cohorts = new Cohorts(season.days().count(), each);
        for (int g = 0; g < cohorts.count(); g++) {
            double up = 0;
            double[] left = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
            double[] pressed = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
            for (int i = g * each; i <= cohorts.last(g); i++) {
                up += one.up(i);
                left[0] = Math.min(left[0], one.left(i));
                left[1] = Math.max(left[1], one.left(i));
                pressed[0] = Math.min(pressed[0], one.load(i));
                pressed[1] = Math.max(pressed[1], one.load(i));
            }
            survivors += density * up * (left[1] - left[0]);
            load += density * up * (pressed[1] - pressed[0]);
        }
        return new double[] {survivors, load};
    }

    /** Columns: 0-1 densities, 2-3 shifts, 4 days late, 5 days to rain, 6-7 doubts. */
    private static double[][] columns(SplittableRandom random) {
        double[][] columns = new double[8][DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            columns[0][draw] = random.nextDouble(0, 100);
            columns[1][draw] = random.nextDouble(0, 5);
            columns[2][draw] = random.nextDouble(-15, 15);
            columns[3][draw] = random.nextDouble(-15, 15);
            columns[4][draw] = random.nextDouble(0, 12);
            columns[5][draw] = random.nextDouble(0, 25);
            columns[6][draw] = random.nextDouble(0, 3);
            columns[7][draw] = random.nextDouble(0, 3);
        }
        return columns;
    }

    private static WeedSeason season(SplittableRandom random) {
        List<Biotype> mixed = List.of(new Biotype(.75, Set.of()), new Biotype(.25, Set.of(9)));
        List<Species> species = List.of(
                KnownWeeds.waterhemp()
                        .withDensity(Uncertain.drawn(0))
                        .withShift(Uncertain.drawn(2))
                        .withBiotypes(mixed),
                KnownWeeds.burcucumber().withDensity(Uncertain.drawn(1)).withShift(Uncertain.drawn(3)));
        List<Pass> passes = new ArrayList<>();
        int count = random.nextInt(6);
        for (int i = 0; i < count; i++) {
            passes.add(pass(random));
        }
        return new WeedSeason(weather(random), Iowa.CORN, species, passes);
    }

    private static Pass pass(SplittableRandom random) {
        int day = random.nextInt(105, 200);
        Uncertain late = random.nextBoolean() ? Uncertain.drawn(4) : Uncertain.known(0);
        return switch (random.nextInt(3)) {
            case 0 ->
                new Residual(
                        "residual",
                        day,
                        late,
                        random.nextBoolean() ? 9 : 15,
                        random.nextDouble(100, 2000),
                        new Chemistry(random.nextDouble(5, 60), 200, 344, Math.pow(10, random.nextDouble(-5, 1))),
                        20,
                        random.nextBoolean() ? Optional.of(Uncertain.drawn(5)) : Optional.empty(),
                        random.nextDouble(0, 24),
                        List.of(
                                new SoilResponse(200, 3, Uncertain.drawn(6)),
                                new SoilResponse(500, 2, Uncertain.drawn(7))));
            case 1 -> {
                LeafResponse response = LeafResponse.seen(90, 840, 2.5, 10, 1.2);
                yield new Post(
                        "post",
                        day,
                        late,
                        random.nextBoolean() ? 9 : 27,
                        random.nextDouble(200, 1200),
                        .02,
                        List.of(response, LeafResponse.none()));
            }
            default ->
                new Tillage(
                        "tillage",
                        day,
                        late,
                        random.nextDouble(3, 20),
                        random.nextBoolean(),
                        .95,
                        25,
                        random.nextDouble(.3),
                        random.nextBoolean() ? Uncertain.drawn(6) : Uncertain.known(1));
        };
    }

    private static Days weather(SplittableRandom random) {
        double[] soil = new double[200];
        double[] air = new double[200];
        double[] rain = new double[200];
        for (int i = 0; i < soil.length; i++) {
            air[i] = 12 + 12 * Math.sin(Math.PI * i / 200) + random.nextDouble(-6, 6);
            soil[i] = air[i] + random.nextDouble(-3, 3);
            rain[i] = random.nextInt(4) == 0 ? random.nextDouble(25) : 0;
        }
        return Days.measured(90, soil, air, rain);
    }
}
