package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;

/** What is done is fact and sunk cost, once and the same for every program. Expected dollars by hand. */
class SunkCostTest {
    private static final LocalDate PLANNED = LocalDate.of(2026, 5, 1);

    /** A caterpillar that takes 15 % of 200 bu at $4; Ridge at $5/fl oz halves it; the label allows 12 fl oz in 2 passes. */
    private static Season season(Done... log) {
        Season season = new OneField()
                .assumptions(4, 200)
                .assumptions(AssumptionQuantity.HANDLING, OneField.NONE)
                .seed("Plain", 100, 0, OneField.NONE)
                .seed("Other", 110, 0, OneField.NONE)
                .insecticide("Ridge", 5)
                .insect("green cloverworm", new Distribution.Fixed(1), new Distribution.Fixed(15))
                .control("Ridge", "green cloverworm", 6, new Distribution.Fixed(0.5))
                .program("Nothing", true, OneField.plant("Plain"), OneField.harvest(2))
                .program("Sprayed", false, OneField.plant("Plain"), OneField.spray(2, "Ridge", 6), OneField.harvest(3))
                .program("Other seed", false, OneField.plant("Other"), OneField.harvest(2))
                .season();
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms(),
                season.fields(),
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                new Work(season.work().sprayPlans(), season.work().crew(), List.of(log)));
    }

    private static Done ridge(LocalDate day, double oz) {
        return new Done(OneField.FIELD, day, "Ridge", new Amount(oz, FarmUnit.FL_OZ), 100, null, "log book");
    }

    private static FieldAdvice weigh(Season season) {
        return Adviser.adviseField(season, season.fields().get(0), WeighingOptions.DEFAULT.withDraws(100));
    }

    private static double margin(FieldAdvice advice, String program) {
        return advice.programs().stream()
                .filter(one -> one.name().equals(program))
                .findFirst()
                .orElseThrow()
                .meanMarginUsdPerAcre();
    }

    /** Before: 680 − 100 = 580 without, 740 − 130 = 610 with. Done: 610 both, since the $30 are spent and the half is saved. */
    @Test
    void aDayLateIsOnePassAndOneCost() {
        FieldAdvice before = weigh(season());
        assertThat(margin(before, "Nothing")).isCloseTo(580, within(1e-9));
        assertThat(margin(before, "Sprayed")).isCloseTo(610, within(1e-9));
        FieldAdvice after = weigh(season(ridge(PLANNED.plusDays(1), 6)));
        assertThat(margin(after, "Nothing")).isCloseTo(610, within(1e-9));
        assertThat(margin(after, "Sprayed")).isCloseTo(610, within(1e-9));
        assertThat(margin(after, "Other seed")).isCloseTo(600, within(1e-9));
        assertThat(after.cautions())
                .contains(
                        "Done: Ridge on 2026-05-02, 6 fl oz/ac; 1 day later than planned. Its cost is spent, whatever is"
                                + " done from here on.")
                .anyMatch(said -> said.startsWith("Has no such pass as Ridge on 2026-05-02")
                        && said.contains("Nothing; Other seed"));
    }

    /** 8 fl oz were put on instead of 6: $40 are spent in every program, and the label's 12 fl oz a season hold for one line. */
    @Test
    void anotherRateIsTheRateOfTheLog() {
        Season season = season(ridge(PLANNED.plusDays(1), 8));
        FieldAdvice after = weigh(season);
        assertThat(margin(after, "Sprayed")).isCloseTo(740 - 140, within(1e-9));
        assertThat(margin(after, "Nothing")).isCloseTo(740 - 140, within(1e-9));
        assertThat(after.cautions()).anyMatch(said -> said.contains("6 fl oz/ac was planned"));
    }

    /** Every season maximum sees one application of 6 fl oz, as planned or as done, and bars nothing. */
    @Test
    void theGatesSeeItOnce() {
        Season planned = season();
        Season done = season(ridge(PLANNED.plusDays(1), 6));
        Field field = planned.fields().get(0);
        for (Program program : planned.programs()) {
            assertThat(Gates.standing(Gates.check(done, field, program)))
                    .as(program.name())
                    .isNotEqualTo(Standing.BARRED);
        }
        Program sprayed = planned.programs().get(1);
        assertThat(Gates.check(done, field, sprayed).stream()
                        .filter(one -> one.gate().equals("product-season-maximum"))
                        .map(one -> one.measured()))
                .containsOnly(6.0);
    }

    /** Another seed than a program wants is in the ground: it stands there in every program, and that is said. */
    @Test
    void whatIsPlantedIsPlanted() {
        Done seed = new Done(OneField.FIELD, PLANNED, "Other", new Amount(1, FarmUnit.UNIT), 100, null, "log book");
        FieldAdvice after = weigh(season(seed));
        assertThat(margin(after, "Nothing")).isCloseTo(680 - 110, within(1e-9));
        assertThat(margin(after, "Sprayed")).isCloseTo(740 - 140, within(1e-9));
        assertThat(after.cautions())
                .anyMatch(said -> said.startsWith(
                        "Can't be followed as written any more, since Other is in the ground:" + " Nothing; Sprayed"));
    }
}
