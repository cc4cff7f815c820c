package plumbrow.advice.weedseason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weedseason.WeedField.spray;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.years.Ahead;
import plumbrow.advice.years.RotationAhead;
import plumbrow.advice.years.YearsOptions;
import plumbrow.science.weedseason.SeasonLoss;
import plumbrow.science.weedseason.SeasonTrace;

@DisplayName("The season of weeds as a season has it: limits, directions, balance")
class SeasonLawsTest {
    private static final int DRAWS = 300;

    private static WeedField field(double density) {
        return new WeedField()
                .weed("waterhemp", new Distribution.Fixed(density), 1, 45)
                .weed("giant foxtail", new Distribution.Pert(10, 40, 90), .4, 45)
                .late(new Distribution.Pert(0, 2, 8))
                .herbicide("soil", "atrazine")
                .herbicide("leaf", "glyphosate")
                .rating("soil", "waterhemp", Timing.SOIL, 30, new Distribution.Pert(.5, .7, .85))
                .rating("soil", "giant foxtail", Timing.SOIL, 30, new Distribution.Pert(.4, .6, .8))
                .rating("leaf", "waterhemp", Timing.LEAF, 30, new Distribution.Pert(.8, .9, .97))
                .rating("leaf", "giant foxtail", Timing.LEAF, 30, new Distribution.Pert(.85, .94, .98))
                .program("nothing")
                .program("leaf", spray(6, 1, "leaf", 30))
                .program("both", spray(5, 2, "soil", 30), spray(6, 1, "leaf", 30));
    }

    @Test
    @DisplayName("density is what would stand if nothing were done")
    void density() {
        WeedField.Followed followed = field(25).follow("nothing");
        double[][] drawn = followed.drawn(DRAWS);
        double standing = 0;
        for (double plants : followed.season().loss(drawn, DRAWS).survivorsM2()[0]) {
            standing += plants / DRAWS;
        }
        assertThat(standing).as("in the mean of the seasons").isCloseTo(25, within(1.5));
    }

    @Test
    @DisplayName("plants balance on every day: standing = standing before + emerged − died − killed")
    void balance() {
        WeedField.Followed followed = field(25).follow("both");
        SeasonTrace trace = followed.season().trace(followed.drawn(50), 17);
        for (SeasonTrace.OfSpecies weed : trace.species()) {
            double before = 0;
            for (int i = 0; i < weed.standing().length; i++) {
                double now = before + weed.emerged()[i] - weed.died()[i] - weed.killed()[i];
                assertThat(weed.standing()[i]).isCloseTo(now, within(1e-9));
                before = weed.standing()[i];
            }
        }
    }

    @Test
    @DisplayName("the loads of single plants, times density and loss per plant, are the loads of the whole season")
    void unitLoads() {
        WeedField.Followed followed = field(25).follow("both");
        double[][] drawn = followed.drawn(DRAWS);
        SeasonLoss whole = followed.season().loss(drawn, DRAWS);
        for (int weed = 0; weed < 2; weed++) {
            double[] unit = followed.season().unitLoad(weed, drawn, DRAWS);
            int loss = followed.place(weed == 0 ? "loss per plant: waterhemp" : "loss per plant: giant foxtail");
            int density = followed.place(weed == 0 ? "density: waterhemp" : "density: giant foxtail");
            for (int i = 0; i < DRAWS; i++) {
                assertThat(unit[i] * drawn[density][i] * drawn[loss][i])
                        .isCloseTo(whole.loadPct()[weed][i], within(1e-9));
            }
        }
    }

    @Test
    @DisplayName("survivors and seed by biotype add up to those of the weed")
    void biotypes() {
        WeedField.Followed followed = field(25).resists("waterhemp", "9", 30.0).follow("both");
        double[][] drawn = followed.drawn(DRAWS);
        SeasonLoss whole = followed.season().loss(drawn, DRAWS);
        List<BiotypeOutcome> parts = followed.season().biotypes(drawn, DRAWS);
        assertThat(parts).hasSize(3);
        double[] resist = drawn[
                followed.inputs().all().stream()
                        .map(OwnInputs.Input::id)
                        .toList()
                        .indexOf("resistant: waterhemp to group 9")];
        assertThat(Arrays.stream(resist).distinct().count()).isEqualTo(DRAWS);
        for (int i = 0; i < DRAWS; i++) {
            assertThat(parts.get(0).seedsM2()[i] + parts.get(1).seedsM2()[i])
                    .isCloseTo(whole.seedsM2()[0][i], within(1e-7 * (1 + whole.seedsM2()[0][i])));
            assertThat(parts.get(1).seedsM2()[i] / resist[i])
                    .as("of as many seedlings, resistant ones shed more")
                    .isGreaterThan(parts.get(0).seedsM2()[i] / (1 - resist[i]));
        }
    }

    @Test
    @DisplayName(
            "the seasons to come begin with the resistant share that the weighing draws, not with the typed number")
    void yearsBeginWithTheDrawnShare() {
        Season season = field(25).resists("waterhemp", "9", 30.0).season();
        Field field = season.fields().get(0);
        RotationAhead.Share first = Ahead.of(
                        season,
                        field,
                        Ahead.repeated(season, field),
                        YearsOptions.DEFAULT.withSeasons(2).withDraws(400))
                .rotations()
                .get(0)
                .weeds()
                .stream()
                .filter(one -> one.weed().equals("waterhemp"))
                .flatMap(one -> one.resistant().stream())
                .filter(share -> share.group().equals("9"))
                .findFirst()
                .orElseThrow();
        double odds = .3 / .7;
        double spread = Math.exp(0.6 * 1.2815515655446004); // log-odds ± 0.6, a tenth outside on each side
        assertThat(first.share().get(0).low()).isCloseTo(odds / spread / (1 + odds / spread), within(.02));
        assertThat(first.share().get(0).middle()).isCloseTo(.3, within(.02));
        assertThat(first.share().get(0).high()).isCloseTo(odds * spread / (1 + odds * spread), within(.03));
    }

    @Test
    @DisplayName(
            "resistance that nobody has counted holds for half the plants to all; a counted share is drawn about its number")
    void resistance() {
        double none = field(25).lossPct("leaf", DRAWS);
        double some = field(25).resists("waterhemp", "9", 30.0).lossPct("leaf", DRAWS);
        double all = field(25).resists("waterhemp", "9", null).lossPct("leaf", DRAWS);
        double otherGroup = field(25).resists("waterhemp", "14", null).lossPct("leaf", DRAWS);
        assertThat(none).isLessThan(some).isEqualTo(otherGroup);
        assertThat(some).isLessThan(all);
    }

    @Test
    @DisplayName("more plants, later sprays and less rate never cost less; no weeds cost nothing")
    void directions() {
        assertThat(new WeedField()
                        .weed("waterhemp", new Distribution.Fixed(0), 1, 45)
                        .program("nothing")
                        .lossPct("nothing", DRAWS))
                .isZero();
        assertThat(field(50).lossPct("both", DRAWS)).isGreaterThan(field(25).lossPct("both", DRAWS));
        assertThat(field(25).lossPct("nothing", DRAWS)).isGreaterThan(field(25).lossPct("both", DRAWS));
        WeedField rates = field(25).program("less", spray(5, 2, "soil", 15), spray(6, 1, "leaf", 15));
        assertThat(rates.lossPct("less", DRAWS)).isGreaterThan(rates.lossPct("both", DRAWS));
        assertThat(field(25).rain(1, 3).lossPct("both", DRAWS))
                .isGreaterThan(field(25).lossPct("both", DRAWS));
    }

    @Test
    @DisplayName("a weed without numbers of its own borrows them, and its flush is taken as less sure")
    void borrowed() {
        WeedField like = field(25).weed("Palmer amaranth", new Distribution.Fixed(5), 2, 60);
        Season season = like.season();
        SeasonAnswer unknown = WeedSeasons.of(season, season.fields().get(0), new OwnInputs());
        assertThat(((SeasonLacks) unknown).missing()).anyMatch(missing -> missing.contains("Palmer amaranth is like"));

        WeedField.Followed followed = like.like("Palmer amaranth", "waterhemp").follow("leaf");
        assertThat(followed.inputs().all())
                .anyMatch(input -> input.id().equals("shift: Palmer amaranth")
                        && input.distribution().equals(new Distribution.Pert(-20, 0, 20))
                        && input.source().contains("borrowed from waterhemp"));
        assertThat(followed.season().notes())
                .anyMatch(note -> note.contains("leaf works on Palmer amaranth is unknown"));
    }

    @Test
    @DisplayName("published ratings stand in where the adviser has none, with their source and caution")
    void published() {
        WeedField.Followed followed = new WeedField()
                .weed("waterhemp", new Distribution.Fixed(25), 1, 45)
                .herbicide("pre", "atrazine")
                .program("pre", spray(5, 2, "pre", 30))
                .follow("pre");
        assertThat(followed.inputs().all())
                .filteredOn(input -> input.id().startsWith("rating: pre on waterhemp, soil"))
                .singleElement()
                .satisfies(input -> assertThat(input.source())
                        .contains("published ratings", "susceptible plants at the labelled rate and size"));
    }

    @Test
    @DisplayName(
            "a second look at the same plots tells how fast control fades; two that can't both be are refused in words")
    void twoLooks() {
        String fades = twice(.55);
        String lasts = twice(.85);
        String cannot = twice(.05);

        assertThat(fades).doesNotContain("can't both");
        assertThat(lasts).doesNotContain("can't both");
        assertThat(cannot)
                .contains("after 28 and 56 days can't both come of one residual that fades")
                .contains("what was controlled does not come back");
        assertThat(stopped(.55)).isLessThan(stopped(.85));
    }

    private static WeedField twoLooks(double later) {
        return new WeedField()
                .weed("waterhemp", new Distribution.Fixed(25), 1, 45)
                .herbicide("soil", "S-metolachlor")
                .look("soil", "waterhemp", 28, new Distribution.Pert(.85, .9, .95))
                .look("soil", "waterhemp", 56, new Distribution.Pert(later - .02, later, later + .02))
                .program("pre", WeedField.spray(5, 1, "soil", 30));
    }

    private static String twice(double later) {
        return String.join(" ", twoLooks(later).follow("pre").season().notes());
    }

    private static double stopped(double later) {
        return Arrays.stream(twoLooks(later)
                        .follow("pre")
                        .season()
                        .traceAt(Arrays.stream(twoLooks(later).follow("pre").drawn(500))
                                .mapToDouble(
                                        draws -> Arrays.stream(draws).average().orElseThrow())
                                .toArray())
                        .species()
                        .get(0)
                        .stoppedByResidual())
                .sum();
    }

    @Test
    @DisplayName("a program that lacks a date is refused in a sentence")
    void gaps() {
        WeedField.Followed followed = field(25).follow("leaf");
        var undated = WeedField.programOf("new", false, new WeedField.Step(null, "leaf", 30, 0));
        assertThatThrownBy(() -> followed.field().program(undated))
                .hasMessage("The weeds of Creek 100 can't be followed under 'new': missing is a date for pass 1 of"
                        + " program 'new'.");
    }
}
