package plumbrow.science.years;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.science.weedseason.Biotype;
import plumbrow.science.weedseason.Crop;
import plumbrow.science.weedseason.Days;
import plumbrow.science.weedseason.KnownWeeds;
import plumbrow.science.weedseason.LeafResponse;
import plumbrow.science.weedseason.Post;
import plumbrow.science.weedseason.SeasonLoss;
import plumbrow.science.weedseason.Species;
import plumbrow.science.weedseason.Surface;
import plumbrow.science.weedseason.Uncertain;
import plumbrow.science.weedseason.WeedSeason;

@DisplayName("The response of a weed, put together from its biotypes, is the weed season itself")
class SeasonResponseTest {
    private static final double[] AIR_C = {-7, -4, 3, 10, 16, 22, 24, 22, 18, 11, 3, -4};
    private static final int DRAWS = 40;

    @ParameterizedTest(name = "{0} seedlings/m²")
    @ValueSource(doubles = {.001, 1, 80, 20_000})
    @DisplayName("Any density, three biotypes, crowding, weeds late and passes late: no error but rounding")
    void exact(double density) {
        SplittableRandom random = new SplittableRandom(5);
        double[][] columns = {
            random.doubles(DRAWS, -12, 12).toArray(),
            random.doubles(DRAWS, 0, 9).toArray()
        };
        List<Biotype> mix =
                List.of(new Biotype(.6, Set.of()), new Biotype(.3, Set.of(9)), new Biotype(.1, Set.of(9, 14)));
        Species foxtail = KnownWeeds.giantFoxtail()
                .withDensity(Uncertain.known(density))
                .withShift(Uncertain.drawn(0))
                .withBiotypes(mix);
        WeedSeason season = new WeedSeason(
                Days.ofMonths(AIR_C, 1, 280, Surface.MOIST),
                new Crop(132, 182),
                List.of(foxtail),
                List.of(post("first", 145, 9), post("second", 160, 14)));

        SeasonLoss whole = SeasonLoss.of(season, columns, DRAWS);
        WeedResponse response = SeasonResponse.of(season, 0, List.of(9, 14), columns, DRAWS, 1);
        double[] seedlings = {.6 * density, .3 * density, 0, .1 * density};
        for (int k = 0; k < DRAWS; k++) {
            int draw = k;
            double plants = sum(seedlings, response.survive(), draw);
            assertThat(plants).isCloseTo(whole.survivorsM2()[0][k], withPercentage(1e-9));
            assertThat(sum(seedlings, response.load(), draw)).isCloseTo(whole.loadPct()[0][k], withPercentage(1e-9));
            assertThat(sum(seedlings, response.seeds(), draw) / (1 + response.crowdingM2() * plants))
                    .isCloseTo(whole.seedsM2()[0][k], withPercentage(1e-9));
        }
    }

    private static Post post(String name, int day, int group) {
        return new Post(
                name, day, Uncertain.drawn(1), group, 840, .02, List.of(LeafResponse.seen(90, 840, 2.5, 10, 1.2)));
    }

    private static double sum(double[] seedlings, double[][] each, int draw) {
        return Arrays.stream(new int[] {0, 1, 2, 3})
                .mapToDouble(b -> seedlings[b] * each[b][draw])
                .sum();
    }
}
