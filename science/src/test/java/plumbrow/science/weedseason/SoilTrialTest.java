package plumbrow.science.weedseason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The response that a rating of a soil herbicide is fitted to")
class SoilTrialTest {
    private static final Chemistry SLOW_TO_LEAVE = new Chemistry(20, 200, 500, 1e-9);
    private static final int LAID = 125;
    private static final Uncertain SURE = Uncertain.known(1);

    @ParameterizedTest
    @ValueSource(doubles = {.3, .72, .92, .99})
    @DisplayName("gives the rating back when the season itself is run over the days of the trial")
    void givesItBack(double rating) {
        for (Species weed : KnownWeeds.all()) {
            SoilTrial trial = SoilTrial.on(Iowa.NORMAL, weed.emergence(), 28);

            SoilResponse response = trial.response(rating, 1400, 3, SLOW_TO_LEAVE, SURE);

            assertThat(seenInTheSeason(weed, response, 28)).isCloseTo(rating, within(1e-6));
            assertThat(trial.rating(response, 1400, SLOW_TO_LEAVE)).isCloseTo(rating, within(1e-9));
        }
    }

    @Test
    @DisplayName("lets through more than a rating read as the control of its day: 92 % at four weeks")
    void moreEscapes() {
        Species weed = KnownWeeds.burcucumber();
        SoilResponse fitted =
                SoilTrial.on(Iowa.NORMAL, weed.emergence(), 28).response(.92, 1400, 3, SLOW_TO_LEAVE, SURE);
        double read = 1400 * Math.pow(2, -28 / 20.0) * Math.pow(.08 / .92, 1 / 3.0);

        double escapes = 1 - seenInTheSeason(weed, fitted, 56);
        double escapesRead = 1 - seenInTheSeason(weed, new SoilResponse(read, 3, SURE), 56);

        assertThat(escapes).isGreaterThan(1.3 * escapesRead);
    }

    @Test
    @DisplayName("a drawn rating moves the odds to where the trial gives that rating")
    void odds() {
        for (Species weed : KnownWeeds.all()) {
            SoilTrial trial = SoilTrial.usual(weed.emergence(), 28);
            SoilResponse likely = trial.response(.9, 1400, 3, SLOW_TO_LEAVE, SURE);
            RatingOdds odds = trial.odds(.9, 3, SLOW_TO_LEAVE);
            assertThat(odds.times(.9)).isCloseTo(1, within(1e-9));
            assertThat(odds.times(0)).isZero();
            for (double drawn : new double[] {.05, .4, .8, .97, .995}) {
                double half = likely.ed50() / Math.pow(odds.times(drawn), 1.0 / 3);
                assertThat(trial.rating(new SoilResponse(half, 3, SURE), 1400, SLOW_TO_LEAVE))
                        .isCloseTo(drawn, within(1e-4));
            }
        }
    }

    /** Of what came up from the day after application, the share that the residual stopped, by the walk through the days. */
    private static double seenInTheSeason(Species weed, SoilResponse response, int seen) {
        Residual laid = new Residual(
                "residual",
                LAID,
                Uncertain.known(0),
                5,
                1400,
                SLOW_TO_LEAVE,
                0,
                Optional.empty(),
                2,
                List.of(response));
        SeasonTrace.OfSpecies walk = SeasonTrace.of(
                        new WeedSeason(
                                Iowa.NORMAL, Iowa.CORN, List.of(weed.withDensity(Uncertain.known(1))), List.of(laid)),
                        new double[0][],
                        0)
                .species()
                .get(0);
        double stopped = 0;
        double passed = 0;
        for (int day = LAID + 1; day <= LAID + seen; day++) {
            int index = day - Iowa.NORMAL.first();
            stopped += walk.stoppedByResidual()[index];
            passed += walk.emerged()[index];
        }
        return stopped / (stopped + passed);
    }
}
