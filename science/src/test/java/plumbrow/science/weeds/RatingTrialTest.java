package plumbrow.science.weeds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks computed apart from this code: curve L is scale 35, shape 1.8; curve F scale 20, shape 1.5. */
@DisplayName("Ratings of a residual are cumulative")
class RatingTrialTest {
    private static final double HALF_A_HUNDREDTH = .0051;
    private static final int[] DAYS = {14, 28, 42, 56, 84};

    @ParameterizedTest
    @DisplayName("daily control and rating at 14, 28, 42, 56 and 84 days (4a to 4e)")
    @CsvSource({
        "20, 3, 7, 98.77 94.91 81.32 50.38 5.24, 99.23 97.96 95.11 90.70 85.23, 99.30 98.48 97.30 96.27 95.72",
        "15, 2.5, 6, 94.59 77.64 40.79 12.03 .54, 96.75 90.95 80.62 71.44 65.51, 97.06 93.32 88.87 86.51 85.79",
        "30, 3, 5, 97.93 94.72 87.18 72.04 27.01, 98.51 97.25 95.31 92.93 89.70, 98.60 97.77 96.92 96.35 96.03",
        "25, 2, 8, 96.72 93.13 86.18 74.15 37.78, 97.48 95.96 93.96 91.83 89.20, 97.61 96.58 95.69 95.16 94.90",
        "12, 4, 10, 99.75 93.94 37.90 2.35 0, 99.90 98.77 90.05 77.56 70.63, 99.92 99.25 95.96 92.94 92.11"
    })
    void dailyAndCumulative(double dt50, double slope, double ratio, String daily, String late, String early) {
        double perDay = slope * Math.log(2) / dt50;
        double halfAt = dt50 * Math.log(ratio) / Math.log(2);
        String[] today = daily.split(" ", -1);
        String[] onLate = late.split(" ", -1);
        String[] onEarly = early.split(" ", -1);
        for (int i = 0; i < DAYS.length; i++) {
            int day = DAYS[i];
            assertThat(100 * RatingTrial.control(perDay, halfAt, day))
                    .isCloseTo(Double.parseDouble(today[i]), within(HALF_A_HUNDREDTH));
            assertThat(100 * late(84).rating(perDay, halfAt, day))
                    .isCloseTo(Double.parseDouble(onLate[i]), within(HALF_A_HUNDREDTH));
            assertThat(100 * early(84).rating(perDay, halfAt, day))
                    .isCloseTo(Double.parseDouble(onEarly[i]), within(HALF_A_HUNDREDTH));
        }
    }

    @ParameterizedTest
    @DisplayName("one rating, then the ratings it foretells (4f to 4i)")
    @CsvSource({
        "35, 1.8, .90, 28, 20, 3, 39.703, 56, 71.91",
        "35, 1.8, .85, 42, 20, 3, 43.267, 56, 77.07",
        "35, 1.8, .80, 56, 30, 2.5, 54.217, 84, 75.95",
        "20, 1.5, .95, 28, 15, 3, 37.786, 28, 95.00"
    })
    void one(
            double scale,
            double shape,
            double rating,
            int day,
            double dt50,
            double slope,
            double halfAt,
            int later,
            double ahead) {
        RatingTrial trial = RatingTrial.weibull(scale, shape, 84);
        double perDay = slope * Math.log(2) / dt50;

        double found = trial.halfAt(rating, day, perDay).orElseThrow();

        assertThat(found).isCloseTo(halfAt, within(.00051));
        assertThat(trial.rating(perDay, found, day)).isCloseTo(rating, within(1e-9));
        assertThat(100 * trial.rating(perDay, found, later)).isCloseTo(ahead, within(HALF_A_HUNDREDTH));
    }

    @ParameterizedTest
    @DisplayName("two ratings, their bounds and what they come from (4j to 4m)")
    @CsvSource({
        "35, 1.8, .95, 28, .80, 56, .5134, .9730, .11484, 44.608",
        "35, 1.8, .98, 28, .85, 56, .5296, .9892, .14315, 46.779",
        "35, 1.8, .93, 28, .80, 42, .6046, .9545, .15509, 36.188",
        "20, 1.5, .99, 28, .95, 56, .8086, .9918, .16179, 45.757"
    })
    void two(
            double scale,
            double shape,
            double first,
            int firstDay,
            double later,
            int laterDay,
            double least,
            double most,
            double perDay,
            double halfAt) {
        RatingTrial trial = RatingTrial.weibull(scale, shape, laterDay);

        double found = trial.perDay(first, firstDay, later, laterDay).orElseThrow();

        assertThat(trial.bounds(first, firstDay, laterDay)[0]).isCloseTo(least, within(.0001));
        assertThat(trial.bounds(first, firstDay, laterDay)[1]).isCloseTo(most, within(.0001));
        assertThat(found).isCloseTo(perDay, within(.0000051));
        assertThat(trial.halfAt(first, firstDay, found).orElseThrow()).isCloseTo(halfAt, within(.00051));
    }

    @Test
    @DisplayName("two ratings that no fading control gives are not fitted: 95 then 57 % where the weed is early (4.4)")
    void outside() {
        RatingTrial trial = RatingTrial.weibull(25, 1.5, 56);

        assertThat(trial.between(.95, 28, .57, 56)).isCloseTo(-.405, within(.00051));
        assertThat(trial.perDay(.95, 28, .57, 56)).isEmpty();
        assertThat(late(56).perDay(.80, 28, .85, 56)).isEmpty();
    }

    @Test
    @DisplayName("half the rate; ten dry days, after which the rating rises; plants counted by size (4n to 4p)")
    void variants() {
        double perDay = 3 * Math.log(2) / 20;
        double full = 20 * Math.log(7) / Math.log(2);

        assertThat(100 * late(56).rating(perDay, full - 20, 28)).isCloseTo(86.34, within(HALF_A_HUNDREDTH));
        assertThat(100 * late(56).rating(perDay, full - 20, 56)).isCloseTo(66.26, within(HALF_A_HUNDREDTH));
        assertThat(100 * late(56).withoutRainFor(10).rating(perDay, full, 28))
                .isCloseTo(77.67, within(HALF_A_HUNDREDTH));
        assertThat(100 * late(56).withoutRainFor(10).rating(perDay, full, 56))
                .isCloseTo(79.73, within(HALF_A_HUNDREDTH));
        assertThat(100 * early(56).withoutRainFor(10).rating(perDay, full, 28))
                .isCloseTo(61.88, within(HALF_A_HUNDREDTH));
        assertThat(100 * early(56).withoutRainFor(10).rating(perDay, full, 56))
                .isCloseTo(66.38, within(HALF_A_HUNDREDTH));
        assertThat(100 * late(56).rating(perDay, full, 28, 2)).isCloseTo(99.05, within(HALF_A_HUNDREDTH));
        assertThat(100 * late(56).rating(perDay, full, 56, 2)).isCloseTo(97.10, within(HALF_A_HUNDREDTH));
    }

    @Test
    @DisplayName("the rating falls with time, never below the control of the day, and rises with the dose")
    void directions() {
        double perDay = 3 * Math.log(2) / 20;
        double before = 1;
        for (int day = 1; day <= 84; day++) {
            double rating = late(84).rating(perDay, 40, day);
            assertThat(rating).isLessThanOrEqualTo(before);
            assertThat(rating).isGreaterThanOrEqualTo(RatingTrial.control(perDay, 40, day));
            assertThat(late(84).rating(perDay, 45, day)).isGreaterThan(rating);
            assertThat(late(84).withUpBefore(.2).rating(perDay, 40, day)).isLessThan(rating);
            before = rating;
        }
    }

    private static RatingTrial late(int days) {
        return RatingTrial.weibull(35, 1.8, days);
    }

    private static RatingTrial early(int days) {
        return RatingTrial.weibull(20, 1.5, days);
    }
}
