package plumbrow.advice.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.advice.weighing.ProgramDraws;

/**
 * The search against weighing every single program of small seasons, each put together from the sheets and into the season as
 * a person would.
 */
class SearchAgainstAllTest {
    private static final int CASES = 200;
    private static final int FOLLOWED = 8;
    private static final SearchOptions OPTIONS = SearchOptions.DEFAULT.withDraws(100);

    private final SplittableRandom random = new SplittableRandom(20_261_125L);
    private int withAnswer;
    private int withBars;
    private int withCuts;
    private int twice;

    /** What weighing everything finds. */
    private static final class All {
        private final List<Double> advisable = new ArrayList<>();
        private double open = Double.NEGATIVE_INFINITY;
        private long programs;
    }

    @Test
    void bestRunnerUpAndAllNearTheBestEqualThoseOfWeighingEveryProgram() {
        for (int i = 0; i < CASES; i++) {
            Season season = RandomShelf.of(random);
            same(season, Search.of(season, season.fields().get(0), OPTIONS), "case " + i);
        }
        assertThat(withAnswer).isGreaterThan(100);
        assertThat(withBars).isGreaterThan(50);
        assertThat(withCuts).isGreaterThan(50);
    }

    @Test
    void soItIsWhereWeedsAreFollowedDayByDay() {
        for (int i = 0; i < FOLLOWED; i++) {
            Season season = RandomShelf.followed(random);
            assertThat(WeedSeasons.lacks(season, season.fields().get(0))).isEmpty();
            same(season, Search.of(season, season.fields().get(0), OPTIONS), "followed case " + i);
        }
        assertThat(withAnswer).isGreaterThan(FOLLOWED / 2);
    }

    /** The mate that rides along stands first, meant for taller weeds than the one that carries the charge. */
    @Test
    void aTripIsNeverFree() {
        for (int i = 0; i < 20; i++) {
            Season season = RandomShelf.of(random);
            SearchRoom room = new SearchRoom(season, season.fields().get(0), 2);
            assertThat(room.windows()).hasSize(2);
            for (Window window : room.windows()) {
                assertThat(window.chargeUsdPerAcre())
                        .isEqualTo(RandomShelf.tripUsdPerAcre(Objects.requireNonNull(window.date())));
            }
        }
    }

    @Test
    void noProgramIsListedTwice() {
        for (int i = 0; i < 6; i++) {
            Season season = twoWays(RandomShelf.of(random));
            SearchAnswer answer = Search.of(season, season.fields().get(0), OPTIONS);
            assertThat(answer.near().stream().map(Found::name)).doesNotHaveDuplicates();
            if (answer.runnerUp() != null) {
                assertThat(answer.runnerUp().name())
                        .isNotEqualTo(Objects.requireNonNull(answer.best()).name());
            }
            twice += answer.near().size() > 1 ? 1 : 0;
        }
        assertThat(twice).isGreaterThan(2);
    }

    /** The same with one program sprayed at another carrier volume on the same days. */
    private static Season twoWays(Season season) {
        return season.withPrograms(
                season.programs(),
                season.work()
                        .withSprayPlans(season.work().sprayPlans().stream()
                                .map(plan -> plan.program().equals("own")
                                        ? plan
                                        : new SprayPlan(
                                                plan.field(),
                                                plan.program(),
                                                plan.pass(),
                                                plan.tank(),
                                                plan.method(),
                                                20.0,
                                                plan.droplets(),
                                                plan.boomIn(),
                                                plan.driftReductionPct(),
                                                plan.cropStage(),
                                                plan.cropHeightIn(),
                                                plan.weedHeightIn(),
                                                plan.bloom(),
                                                plan.applicator()))
                                .toList()));
    }

    private void same(Season season, SearchAnswer answer, String what) {
        Field field = season.fields().get(0);
        ProgramSearch search = new ProgramSearch(season, field, OPTIONS);
        All all = all(season, field, search.run());
        Proof proof = answer.proof();
        assertThat(proof.programs()).as(what).isEqualTo(all.programs);
        assertThat(proof.whole()).as(what).isTrue();
        assertThat(proof.weighed() + proof.barred() + proof.cut()).as(what).isEqualTo(proof.programs());
        withBars += proof.barred() > 0 ? 1 : 0;
        withCuts += proof.cut() > 0 ? 1 : 0;
        all.advisable.sort((a, b) -> Double.compare(b, a));
        if (all.advisable.isEmpty()) {
            assertThat(answer.best()).as(what).isNull();
            return;
        }
        withAnswer++;
        double best = all.advisable.get(0);
        assertThat(Objects.requireNonNull(answer.best()).meanMarginUsdPerAcre())
                .as(what)
                .isCloseTo(best, within(1e-7));
        if (all.advisable.size() > 1) {
            assertThat(Objects.requireNonNull(answer.runnerUp()).meanMarginUsdPerAcre())
                    .as(what)
                    .isCloseTo(all.advisable.get(1), within(1e-7));
            assertThat(answer.whyItLost().stream()
                            .mapToDouble(LostBy::usdPerAcre)
                            .sum())
                    .as(what)
                    .isCloseTo(best - all.advisable.get(1), within(0.1));
        }
        assertThat(answer.near()).as(what).hasSize((int) all.advisable.stream()
                .filter(mean -> mean >= best - OPTIONS.widthUsdPerAcre() - 1e-9)
                .limit(300)
                .count());
        if (all.open > best + 1e-6) {
            assertThat(Objects.requireNonNull(answer.afterLookingUp()).meanMarginUsdPerAcre())
                    .as(what)
                    .isCloseTo(all.open, within(1e-7));
        } else {
            assertThat(answer.afterLookingUp()).as(what).isNull();
        }
    }

    private static All all(Season season, Field field, ProgramSearch search) {
        All all = new All();
        DrawSource source = new DrawSource(OPTIONS.draws(), OPTIONS.seed());
        for (EveryProgram.Candidate candidate : new EveryProgram(season).all()) {
            all.programs++;
            Season with = season.withPrograms(
                    List.of(candidate.program()), season.work().withSprayPlans(candidate.plans()));
            List<Finding> findings = Gates.check(with, field, candidate.program());
            Standing standing = Gates.standing(findings);
            if (standing != Standing.BARRED
                    && Drivers.enough(Drivers.sites(search.drivers(), findings), search.needed())) {
                double mean = new ProgramDraws(with, field, source)
                        .weigh(candidate.program())
                        .meanMarginUsdPerAcre();
                if (standing == Standing.UNKNOWN) {
                    all.open = Math.max(all.open, mean);
                } else {
                    all.advisable.add(mean);
                }
            }
        }
        return all;
    }

    private static List<List<Tank>> everyChoice(List<List<Tank>> tanks) {
        List<List<Tank>> choices = new ArrayList<>(List.of(List.<Tank>of()));
        for (List<Tank> window : tanks) {
            List<List<Tank>> longer = new ArrayList<>(choices);
            for (List<Tank> choice : choices) {
                for (Tank tank : window) {
                    List<Tank> with = new ArrayList<>(choice);
                    with.add(tank);
                    longer.add(with);
                }
            }
            choices = longer;
        }
        return choices;
    }

    /** The ground on which a barred part is left with all that could be added to it. */
    @Test
    void whatIsBarredStaysBarredWhateverTanksAreAdded() {
        int barred = 0;
        for (int i = 0; i < 60; i++) {
            Season season = RandomShelf.of(random);
            Field field = season.fields().get(0);
            ProgramSearch search = new ProgramSearch(season, field, OPTIONS).run();
            SearchRoom room = search.room();
            for (int f = 0; f < room.frames().size(); f++) {
                var barredParts = new HashSet<List<Tank>>();
                for (List<Tank> chosen : everyChoice(room.tanks(f))) {
                    Program program = room.program(room.frames().get(f), chosen);
                    boolean bar = Gates.standing(search.gates().check(field, program)) == Standing.BARRED;
                    if (bar) {
                        barredParts.add(chosen);
                        barred++;
                    } else {
                        for (int k = 0; k < chosen.size(); k++) {
                            assertThat(barredParts).doesNotContain(chosen.subList(0, k));
                            assertThat(barredParts).doesNotContain(chosen.subList(k, chosen.size()));
                        }
                    }
                }
            }
        }
        assertThat(barred).isGreaterThan(300);
    }

    @Test
    void stoppedEarlyItSaysWhatIsLeftAndHowMuchThatCouldBring() {
        for (int i = 0; i < 20; i++) {
            Season season = RandomShelf.of(random);
            Field field = season.fields().get(0);
            SearchAnswer whole = Search.of(season, field, OPTIONS);
            SearchAnswer stopped = Search.of(season, field, OPTIONS.withMostWeighed(3));
            assertThat(stopped.proof().programs()).isEqualTo(whole.proof().programs());
            if (!stopped.proof().whole() && whole.best() != null) {
                double found = stopped.best() == null
                        ? Double.NEGATIVE_INFINITY
                        : stopped.best().meanMarginUsdPerAcre();
                assertThat(whole.best().meanMarginUsdPerAcre())
                        .isLessThanOrEqualTo(Math.max(found, stopped.proof().bestOpenUsdPerAcre()) + 1e-9);
                assertThat(stopped.proof().says()).contains("left open");
            }
        }
    }

    @Test
    void sameSeasonSameAnswer() {
        Season season = RandomShelf.of(random);
        Field field = season.fields().get(0);
        assertThat(Search.of(season, field, OPTIONS)).isEqualTo(Search.of(season, field, OPTIONS));
    }
}
