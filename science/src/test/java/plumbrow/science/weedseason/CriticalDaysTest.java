package plumbrow.science.weedseason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When a crop must be free of weeds, held against the walk through the days. */
class CriticalDaysTest {
    private static final double[] NORMALS_C = {-7, -4, 3, 10, 16, 22, 24, 22, 18, 11, 3, -4};
    private static final Days DAYS = Days.ofMonths(NORMALS_C, 1, 273, Surface.MOIST);
    private static final Crop CROP = new Crop(134, 175);
    private static final double[][] NONE = new double[0][];

    @Test
    void weeds_that_never_cost_so_much_have_no_critical_days() {
        assertThat(days(0, 5)).isEmpty();
        assertThat(days(.5, 5)).isEmpty();
        assertThat(days(40, 5)).isPresent();
    }

    @Test
    void the_limit_is_the_loss_of_the_season_in_which_nothing_is_done() {
        double loss = SeasonTrace.of(season(40, List.of()), NONE, 0).lossPct();
        assertThat(days(40, loss + 1e-9)).isEmpty();
        assertThat(days(40, loss - 1e-3)).isPresent();
    }

    @Test
    void more_weeds_make_it_begin_sooner_and_end_later_and_so_does_less_patience() {
        CriticalDays few = days(15, 5).orElseThrow();
        CriticalDays many = days(60, 5).orElseThrow();
        assertThat(many.begin()).isLessThanOrEqualTo(few.begin());
        assertThat(many.end()).isGreaterThan(few.end());
        CriticalDays strict = days(15, 2).orElseThrow();
        assertThat(strict.begin()).isLessThanOrEqualTo(few.begin());
        assertThat(strict.end()).isGreaterThan(few.end());
    }

    /** A spray that kills all, every day up to the last one of the period, leaves what comes up after it: 5 % at most. */
    @Test
    void a_field_kept_clean_to_the_end_loses_no_more_than_accepted_and_one_day_less_is_too_short() {
        int end = days(40, 5).orElseThrow().end();
        assertThat(lossAfterCleanUntil(end)).isLessThanOrEqualTo(5);
        assertThat(lossAfterCleanUntil(end - 1)).isGreaterThan(5);
    }

    @Test
    void plants_left_by_the_day_they_came_up_are_those_that_stand_at_the_end() {
        SeasonTrace trace = SeasonTrace.of(season(40, List.of(clean(150), clean(180))), NONE, 0);
        SeasonTrace.OfSpecies weed = trace.species().get(0);
        assertThat(Arrays.stream(weed.left()).sum()).isCloseTo(weed.standing()[272], within(1e-9));
        for (int i = 0; i < 180; i++) {
            assertThat(weed.left()[i]).isZero();
        }
    }

    private static double lossAfterCleanUntil(int end) {
        List<Pass> passes = java.util.stream.IntStream.rangeClosed(100, end)
                .<Pass>mapToObj(CriticalDaysTest::clean)
                .toList();
        return SeasonTrace.of(season(40, passes), NONE, 0).lossPct();
    }

    private static Post clean(int day) {
        return new Post(
                "clean",
                day,
                Uncertain.known(0),
                0,
                1,
                0,
                List.of(new LeafResponse(1e-9, 30, 10, 0, Uncertain.known(1))));
    }

    private static Optional<CriticalDays> days(double density, double accepted) {
        return CriticalDays.of(season(density, List.of()), NONE, 0, accepted);
    }

    private static WeedSeason season(double density, List<Pass> passes) {
        return new WeedSeason(
                DAYS, CROP, List.of(KnownWeeds.burcucumber().withDensity(Uncertain.known(density))), passes);
    }
}
