package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plumbrow.advice.calendar.PassChange;
import plumbrow.advice.calendar.ProgramChangeException;
import plumbrow.advice.calendar.SeasonCalendar;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.calendar.Window;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Pass;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.documents.picture.SeasonPicture;

/** The season picture says what the weighing and its walk through the days say. */
class CalendarNumbersTest {
    private static final Season SEASON = VineSeason.season();
    private static final Field FIELD = SEASON.field(VineSeason.FIELD).orElseThrow();
    private static final WeighingOptions FEW = WeighingOptions.DEFAULT.withDraws(1_000);
    private static final int POST = 4;
    private static final int WITH_IT = 5;
    private static final LocalDate LATER = LocalDate.of(2026, 6, 12);

    private final SeasonTrials trials = new SeasonTrials(SEASON, FEW);

    @Test
    void the_kept_program_has_the_numbers_of_the_weighing_to_the_bit() {
        WeighedProgram weighed = weighed(SEASON, VineSeason.PROGRAM);
        SeasonTrial trial = trials.tried(FIELD, VineSeason.PROGRAM, List.of());
        assertThat(trial.changed()).isFalse();
        assertThat(trial.now().meanMarginUsdPerAcre()).isEqualTo(weighed.meanMarginUsdPerAcre());
        assertThat(trial.now().margin()).isEqualTo(weighed.margin());
        assertThat(trial.now().meanYieldBuPerAcre()).isEqualTo(weighed.meanYieldBuPerAcre());
        assertThat(trial.now().costUsdPerAcre()).isEqualTo(weighed.costUsdPerAcre());
        assertThat(trial.now().standardErrorUsdPerAcre()).isEqualTo(weighed.standardErrorUsdPerAcre());
        assertThat(trial.overBaseline().meanGainUsdPerAcre()).isEqualTo(weighed.meanGainUsdPerAcre());
        assertThat(trial.overBaseline().gain()).isEqualTo(weighed.gain());
        assertThat(trial.overBaseline().chanceBetter()).isEqualTo(weighed.chanceBeatsBaseline());
        assertThat(trial.findings()).isEqualTo(weighed.findings());
    }

    @Test
    void a_changed_program_has_them_too_once_it_is_kept() {
        List<PassChange> changes = List.of(new PassChange(POST, LATER, 30.0), new PassChange(3, null, 1.2));
        SeasonTrial trial = trials.tried(FIELD, VineSeason.PROGRAM, changes);
        Season changed = trials.keptChanged(FIELD, VineSeason.PROGRAM, changes);
        Season added = trials.keptAdded(FIELD, VineSeason.PROGRAM, changes, "later and thinner");
        for (WeighedProgram weighed :
                List.of(weighed(changed, VineSeason.PROGRAM), weighed(added, "later and thinner"))) {
            assertThat(trial.now().meanMarginUsdPerAcre()).isEqualTo(weighed.meanMarginUsdPerAcre());
            assertThat(trial.now().margin()).isEqualTo(weighed.margin());
            assertThat(trial.findings()).isEqualTo(weighed.findings());
        }
        assertThat(added.programs()).containsAll(SEASON.programs());
        assertThat(trials.keptChanged(FIELD, VineSeason.PROGRAM, List.of())).isEqualTo(SEASON);
    }

    @Test
    void what_shares_a_tank_moves_together_and_passes_stay_in_the_order_of_their_days() {
        Season moved = trials.keptChanged(
                FIELD, VineSeason.PROGRAM, List.of(new PassChange(POST, LocalDate.of(2026, 4, 20), null)));
        List<Pass> passes = moved.programs(FIELD.name()).stream()
                .filter(program -> program.name().equals(VineSeason.PROGRAM))
                .findFirst()
                .orElseThrow()
                .passes();
        assertThat(passes).isSortedAccordingTo(java.util.Comparator.comparing(Pass::date));
        assertThat(passes).extracting(Pass::number).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(passes.get(0).product()).isEqualTo("Stillmeadow K");
        assertThat(passes.get(1).date()).isEqualTo(passes.get(0).date());
        assertThat(moved.pests().weedBook().tillage()).anySatisfy(work -> {
            assertThat(work.program()).isEqualTo(VineSeason.PROGRAM);
            assertThat(work.pass()).isEqualTo(3);
        });
        assertThat(moved.work().sprayPlans()).hasSameSizeAs(SEASON.work().sprayPlans());
    }

    @Test
    void areas_of_the_picture_are_the_plants_of_the_walk() {
        SeasonCalendar calendar =
                trials.tried(FIELD, VineSeason.PROGRAM, List.of()).calendar();
        assertThat(calendar.followed()).isTrue();
        SeasonCalendar.Weed weed = calendar.weeds().get(0);
        assertThat(Arrays.stream(weed.left()).sum()).isCloseTo(weed.atHarvest(), within(.01));
        assertThat(Arrays.stream(weed.sprouted()).sum()).isCloseTo(weed.seedlings(), within(.02 * weed.seedlings()));
        assertThat(weed.standing()[weed.standing().length - 1]).isEqualTo(weed.atHarvest());
        IntStream.range(0, weed.left().length).forEach(i -> {
            assertThat(weed.emerged()[i]).isLessThanOrEqualTo(weed.sprouted()[i] + 1e-12);
            assertThat(weed.left()[i]).isLessThanOrEqualTo(weed.emerged()[i] + 1e-12);
        });
        SeasonCalendar.Residual soil = calendar.residuals().get(0);
        for (int i = 0; i < weed.emerged().length; i++) {
            if (calendar.residuals().get(1).controlPct().get(0)[i] == 0) {
                assertThat(weed.emerged()[i])
                        .isCloseTo(weed.sprouted()[i] * (1 - soil.controlPct().get(0)[i] / 100), within(1e-9));
            }
        }
    }

    @Test
    void a_mark_stands_on_its_day() {
        SeasonCalendar calendar =
                trials.tried(FIELD, VineSeason.PROGRAM, List.of()).calendar();
        for (int width : new int[] {1140, 358}) {
            SeasonPicture picture = SeasonPicture.of(calendar, width);
            double perDay = (picture.right() - picture.left())
                    / (calendar.last().toEpochDay() - calendar.first().toEpochDay());
            assertThat(picture.handles()).hasSize(calendar.passes().size());
            for (SeasonPicture.Handle handle : picture.handles()) {
                LocalDate date = Objects.requireNonNull(
                        calendar.passes().get(handle.pass() - 1).date());
                assertThat(handle.x())
                        .isCloseTo(
                                picture.left()
                                        + perDay
                                                * (date.toEpochDay()
                                                        - calendar.first().toEpochDay()),
                                within(1e-6));
            }
            assertThat(picture.svg())
                    .contains("unknown: no hourly weather on file")
                    .doesNotContain("style=");
            assertThat(picture.says()).contains(calendar.finding(), "Stillmeadow K");
        }
    }

    @Test
    void a_day_is_barred_in_the_picture_exactly_where_moving_there_adds_a_bar() {
        SeasonTrial whole = trials.whole(FIELD, VineSeason.PROGRAM, List.of());
        long kept = barred(SEASON);
        for (LocalDate day = LocalDate.of(2026, 5, 10); day.isBefore(LocalDate.of(2026, 7, 1)); day = day.plusDays(3)) {
            Window window = whole.calendar().window(POST, day).orElseThrow();
            Season moved = trials.keptChanged(FIELD, VineSeason.PROGRAM, List.of(new PassChange(POST, day, null)));
            assertThat(window.standing() == Standing.BARRED)
                    .as(day + " " + window)
                    .isEqualTo(barred(moved) > kept);
        }
        assertThat(whole.calendar()
                        .window(POST, LocalDate.of(2026, 5, 30))
                        .orElseThrow()
                        .standing())
                .isEqualTo(Standing.CLEAR);
    }

    @Test
    void what_cant_be_done_is_said_in_a_sentence() {
        refused(new PassChange(9, LATER, null), "has no pass 9");
        refused(new PassChange(POST, LocalDate.of(2031, 1, 1), null), "expected a day between");
        refused(new PassChange(POST, null, 500.0), "no more than the label's 44 fl oz/ac on corn");
        refused(new PassChange(POST, null, -1.0), "more than 0");
        refused(new PassChange(1, null, 3.0), "puts nothing out");
        assertThatThrownBy(() -> trials.keptAdded(FIELD, VineSeason.PROGRAM, List.of(), "before AND after"))
                .hasMessageContaining("has a program 'before AND after' already");
        assertThatThrownBy(() -> trials.without(FIELD, "Before emergence only")).hasMessageContaining("baseline");
        assertThat(trials.whole(FIELD, VineSeason.PROGRAM, List.of(new PassChange(WITH_IT, LATER, null)))
                        .changed())
                .isTrue();
    }

    private void refused(PassChange change, String words) {
        assertThatThrownBy(() -> trials.tried(FIELD, VineSeason.PROGRAM, List.of(change)))
                .isInstanceOf(ProgramChangeException.class)
                .hasMessageContaining(words);
    }

    private static long barred(Season season) {
        return Gates.check(
                        season,
                        FIELD,
                        season.programs(FIELD.name()).stream()
                                .filter(program -> program.name().equals(VineSeason.PROGRAM))
                                .findFirst()
                                .orElseThrow())
                .stream()
                .filter(finding -> finding.standing() == Standing.BARRED)
                .count();
    }

    private static WeighedProgram weighed(Season season, String program) {
        return Adviser.adviseField(season, FIELD, FEW).program(program).orElseThrow();
    }
}
