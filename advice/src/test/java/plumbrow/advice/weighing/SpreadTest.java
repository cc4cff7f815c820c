package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weighing.OneField.plant;
import static plumbrow.advice.weighing.OneField.spray;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.assumptions.SiteSpread;
import plumbrow.advice.assumptions.Sure;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.season.Season;
import plumbrow.science.weeds.HyperbolicLoss;

/** What pests cost and products do is drawn, where it was a number. */
@DisplayName("One number for what differs between fields is drawn about it")
class SpreadTest {
    private static final int DRAWS = 10_000;

    private static OneField sprayed(Distribution lossPerPlant, Distribution half, Distribution full) {
        return new OneField()
                .assumptions(4, 200)
                .seed("seed", 100, 0, OneField.NONE)
                .insecticide("spray", 1)
                .enteredControl("spray", "waterhemp", 2, half)
                .enteredControl("spray", "waterhemp", 6, full)
                .enteredWeed("waterhemp", new Distribution.Fixed(2), lossPerPlant, 45)
                .program("none", true, plant("seed"))
                .program("half", false, plant("seed"), spray(2, "spray", 2))
                .program("full", false, plant("seed"), spray(2, "spray", 6));
    }

    private static FieldAdvice weigh(Distribution lossPerPlant, Distribution half, Distribution full) {
        return sprayed(lossPerPlant, half, full).weigh(DRAWS);
    }

    @Test
    @DisplayName("the mean yield of a weedy field is that of the mean loss over fields, not of the middle one")
    void meanOfLosses() {
        FieldAdvice advice = weigh(new Distribution.Fixed(3), Sure.of(.6), Sure.of(.9));

        double mean = Arrays.stream(Chances.of(new Distribution.Factor(3, .8)).strata(DRAWS))
                .map(one -> HyperbolicLoss.ofLoad(2 * one, 45))
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(6.375, within(.002));
        assertThat(advice.program("none").orElseThrow().meanYieldBuPerAcre())
                .isCloseTo(200 * (1 - mean / 100), within(1e-6));
        assertThat(advice.inputs())
                .filteredOn(input -> input.id().equals("loss per plant: waterhemp"))
                .singleElement()
                .satisfies(input -> assertThat(input.source()).contains(SiteSpread.ONE_NUMBER));
        assertThat(advice.cautions())
                .anyMatch(caution ->
                        caution.startsWith("One number was entered for: yield lost for each plant of waterhemp"));
    }

    @Test
    @DisplayName("a spread that was entered is drawn as it is, and nothing is said")
    void entered() {
        FieldAdvice advice = weigh(new Distribution.Pert(1, 3, 6), Sure.of(.6), Sure.of(.9));

        assertThat(advice.inputs())
                .filteredOn(input -> input.id().equals("loss per plant: waterhemp"))
                .singleElement()
                .satisfies(input -> assertThat(input.distribution()).isEqualTo(new Distribution.Pert(1, 3, 6)));
        assertThat(advice.cautions()).noneMatch(caution -> caution.startsWith("One number was entered"));
    }

    @Test
    @DisplayName("control at two rates comes from one draw: the full rate is never behind the half by luck")
    void ratesTogether() {
        Season season = sprayed(Sure.of(30), new Distribution.Fixed(.6), new Distribution.Fixed(.9))
                .season();
        ProgramDraws draws = new ProgramDraws(season, season.fields().get(0), new DrawSource(DRAWS, 1));
        double[] half = draws.weigh(season.programs(OneField.FIELD).get(1)).yields();
        double[] full = draws.weigh(season.programs(OneField.FIELD).get(2)).yields();

        for (int i = 0; i < DRAWS; i++) {
            assertThat(full[i]).isGreaterThan(half[i]);
        }
    }

    @Test
    @DisplayName("loss per node from 15 % alone spreads over more than 4 to 26 % in eight of ten fields")
    void node() {
        Season season = sprayed(Sure.of(3), Sure.of(.6), Sure.of(.9)).season();
        Pests pests = season.pests();
        InsectPressure worms = new InsectPressure(
                OneField.FIELD,
                "corn rootworm",
                InsectPressure.Measure.NODE_INJURY,
                new Distribution.Fixed(1),
                new Distribution.Fixed(15),
                0,
                null,
                null,
                "invented");
        Season wormy = season.withPests(pests.withPressure(List.of(worms), List.of()));
        FieldAdvice advice =
                Adviser.adviseField(wormy, wormy.fields().get(0), WeighingOptions.DEFAULT.withDraws(DRAWS));

        UncertainInput loss = advice.inputs().stream()
                .filter(input -> input.id().equals("loss: corn rootworm"))
                .findFirst()
                .orElseThrow();
        assertThat(loss.mean()).isCloseTo(15, within(1e-6));
        assertThat(loss.band().low()).isCloseTo(15 - 1.2816 * 15 * .14 / 1.68 / .15, within(.05));
        assertThat(loss.source()).contains("14 % of yield at 1.68 nodes");
    }

    @Test
    @DisplayName("the same draws for every program, and others on another field")
    void streams() {
        DrawSource source = new DrawSource(DRAWS, 1);
        SiteSpread.Drawn drawn = SiteSpread.soil(new Distribution.Fixed(.9), false);
        String here = drawn.stream("control spray on waterhemp", "A");
        String there = drawn.stream("control spray on waterhemp", "B");

        assertThat(source.column(here, drawn.distribution()).values())
                .isEqualTo(source.column(here, drawn.distribution()).values())
                .isNotEqualTo(source.column(there, drawn.distribution()).values());
        assertThat(source.column(here, drawn.distribution()).ranks())
                .isEqualTo(
                        source.column(here, new Distribution.LogOdds(.5, .95)).ranks());
    }
}
