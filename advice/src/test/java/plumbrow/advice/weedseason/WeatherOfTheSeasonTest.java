package plumbrow.advice.weedseason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weedseason.WeedField.spray;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Crop;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.Timing;
import plumbrow.science.weedseason.SeasonLoss;

@DisplayName("The weather of the season is drawn, not given")
class WeatherOfTheSeasonTest {
    private static final int DRAWS = 820;

    private static WeedField field() {
        return new WeedField()
                .weed("waterhemp", new Distribution.Fixed(25), 1, 45)
                .herbicide("soil", "S-metolachlor")
                .herbicide("leaf", "glyphosate")
                .rating("soil", "waterhemp", Timing.SOIL, 30, new Distribution.Fixed(.9))
                .rating("leaf", "waterhemp", Timing.LEAF, 30, new Distribution.Fixed(.95))
                .program("nothing")
                .program("pre", spray(5, 1, "soil", 30))
                .program("both", spray(5, 1, "soil", 30), spray(6, 1, "leaf", 30));
    }

    @Test
    @DisplayName(
            "one past year is never the season: other seasons are drawn about it, or about the normals, and that is"
                    + " said")
    void onePastYear() {
        for (WeedField one :
                List.of(field().measured(2024, 0, .4), field().withoutNormals().measured(2024, 0, .4))) {
            WeedField.Followed followed = one.follow("pre");
            assertThat(followed.season().seasons()).isGreaterThan(30);
            assertThat(followed.field().cautions())
                    .anyMatch(caution -> caution.startsWith("One past year of IA: Adams is on file (2024)"));
            double[] losses = followed.season().loss(held(followed), DRAWS).lossPct();
            assertThat(Arrays.stream(losses).distinct().count()).isGreaterThan(20);
        }
    }

    @Test
    @DisplayName("ten past years or more are the seasons, each as likely as the next, the driest spring first")
    void pastYears() {
        WeedField years = field();
        for (int year = 2010; year < 2022; year++) {
            years.measured(year, year % 5 - 2, .1 + .05 * ((year * 7) % 12));
        }
        WeedField.Followed followed = years.follow("pre");
        assertThat(followed.season().seasons()).isEqualTo(12);
        assertThat(followed.field().climateSource()).startsWith("12 past years of IA: Adams, 2010 to 2021");
        double[][] drawn = held(followed);
        double[] losses = followed.season().loss(drawn, DRAWS).lossPct();
        double[] once = followed.season().lossBySeason(at(drawn));
        int weather = followed.place(SeasonWeather.ID);
        int[] counts = new int[12];
        for (int i = 0; i < DRAWS; i++) {
            int season = (int) (drawn[weather][i] / 100 * 12);
            counts[season]++;
            assertThat(losses[i]).isCloseTo(once[season], within(1e-9));
        }
        assertThat(Arrays.stream(counts).min().orElseThrow()).isGreaterThanOrEqualTo(DRAWS / 12);
        assertThat(Arrays.stream(counts).max().orElseThrow()).isLessThanOrEqualTo(DRAWS / 12 + 1);
        SeasonWeather seasons =
                SeasonWeather.of(years.season(), years.season().fields().get(0)).orElseThrow();
        assertThat(seasons.at(0)).isZero();
        assertThat(seasons.at(100)).isEqualTo(11);
        assertThat(seasons.summer(Crop.CORN)).hasSize(12);
        assertThat(seasons.summer(Crop.WHEAT)).isEmpty();
    }

    @Test
    @DisplayName("the season's own year, measured whole, is what it was: nothing is drawn")
    void ownYear() {
        WeedField own = field().measured(2026, 0, .4);
        WeedField.Followed followed = own.follow("pre");
        assertThat(followed.season().seasons()).isEqualTo(1);
        assertThat(followed.inputs().all()).noneMatch(input -> input.id().equals(SeasonWeather.ID));
    }

    @Test
    @DisplayName("a residual fails with the rain of its season: weeds take more where May stays dry")
    void rainDecides() {
        WeedField dry = field();
        WeedField wet = field();
        for (int year = 2010; year < 2022; year++) {
            dry.measured(year, 0, .02);
            wet.measured(year, 0, .3);
        }
        double without = mean(dry.follow("pre").season().lossBySeason(at(held(dry.follow("pre")))));
        double with = mean(wet.follow("pre").season().lossBySeason(at(held(wet.follow("pre")))));
        assertThat(without).isGreaterThan(1.5 * with);
    }

    @Test
    @DisplayName("seasons differ: eight of ten lie far apart, under a program that hangs on rain and timing")
    void between() {
        WeedField.Followed followed = field().follow("both");
        double[] losses = followed.season().lossBySeason(at(held(followed)));
        Arrays.sort(losses);
        assertThat(losses[36]).isGreaterThan(2 * losses[4]);
    }

    @Test
    @DisplayName("all fields have the season of a draw in common, whichever others there are, and it is the year's")
    void shared() {
        WeedField.Followed one = field().follow("pre");
        WeedField.Followed other = field().rain(2, 7)
                .weed("giant foxtail", new Distribution.Fixed(10), .4, 45)
                .follow("both");
        double[] here = one.drawn(DRAWS)[one.place(SeasonWeather.ID)];
        double[] there = other.drawn(DRAWS)[other.place(SeasonWeather.ID)];
        assertThat(here).isEqualTo(there);
        assertThat(one.inputs().all().get(one.place(SeasonWeather.ID)).distribution())
                .isEqualTo(new Distribution.Even(0, 100));
        assertThat(here[0])
                .isNotEqualTo(new DrawSource(DRAWS, 8)
                        .column("weather of the season", new Distribution.Even(0, 100))
                        .values()[0]);
        List<DoubtKind> kinds = new java.util.ArrayList<>();
        SeasonWeather.of(field().season(), field().season().fields().get(0))
                .orElseThrow()
                .place((id, label, unit, distribution, source, stream, doubt) -> {
                    kinds.add(doubt);
                    return 0;
                });
        assertThat(kinds).containsExactly(DoubtKind.YEAR);
    }

    @Test
    @DisplayName("loss of a draw in a season is what the walk through that season's days gives")
    void walk() {
        WeedField.Followed followed = field().follow("both");
        double[][] drawn = followed.drawn(60);
        SeasonLoss loss = followed.season().loss(drawn, 60);
        for (int draw = 0; draw < 60; draw += 7) {
            assertThat(followed.season().trace(drawn, draw).lossPct()).isCloseTo(loss.lossPct()[draw], within(1e-9));
        }
    }

    @Test
    @DisplayName("where nothing is known of the weather it is unknown, and said")
    void unknown() {
        Season season = field().withoutNormals().season();
        SeasonAnswer answer = WeedSeasons.of(season, season.fields().get(0), new OwnInputs());
        assertThat(((SeasonLacks) answer).missing()).anyMatch(missing -> missing.contains("its climate"));
        assertThat(SeasonWeather.of(season, season.fields().get(0))).isEmpty();
    }

    /** Draws with everything but the weather at its mean. */
    private static double[][] held(WeedField.Followed followed) {
        double[][] drawn = followed.drawn(DRAWS);
        int weather = followed.place(SeasonWeather.ID);
        IntStream.range(0, drawn.length)
                .filter(place -> place != weather)
                .forEach(place -> Arrays.fill(drawn[place], mean(drawn[place].clone())));
        return drawn;
    }

    private static double[] at(double[][] drawn) {
        return Arrays.stream(drawn).mapToDouble(WeatherOfTheSeasonTest::mean).toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }
}
