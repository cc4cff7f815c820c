package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.names.UnknownName;
import plumbrow.advice.names.UnknownNames;
import plumbrow.advice.season.Season;

/** A control row under a name that no pest bears counts as nothing: the field says so before anything else. */
class DanglingNamesTest {
    private static OneField field(String controls) {
        return new OneField()
                .assumptions(4, 200)
                .assumptions(AssumptionQuantity.HANDLING, OneField.NONE)
                .seed("Plain", 100, 0, OneField.NONE)
                .insecticide("Ridge", 5)
                .insect("western corn rootworm", new Distribution.Fixed(1), new Distribution.Fixed(15))
                .control("Ridge", controls, 6, new Distribution.Fixed(0.5))
                .program("Nothing", true, OneField.plant("Plain"), OneField.harvest(2))
                .program("Sprayed", false, OneField.plant("Plain"), OneField.spray(2, "Ridge", 6), OneField.harvest(3));
    }

    /** 200 bu at $4 less 15 % of it halved: 0.075 · 800 = $60 for 6 fl oz at $5, so $30 better; unmet, $30 worse. */
    @Test
    void whatItWasWorthAndWhatIsSaid() {
        FieldAdvice met = field("western corn rootworm").weigh(100);
        assertThat(gain(met)).isCloseTo(30, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(met.cautions()).noneMatch(caution -> caution.contains("COUNTS AS NOTHING"));
        FieldAdvice unmet = field("rootworm").weigh(100);
        assertThat(gain(unmet)).isCloseTo(-30, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(unmet.cautions())
                .contains("A row COUNTS AS NOTHING until its name is put right. control, row 2, column pest: found"
                        + " \"rootworm\", expected an insect of the sheet insects or a weed of the sheet weeds; did you mean"
                        + " western corn rootworm?");
    }

    /** The wider name is known by itself, but the field has the narrower one, and nothing meets that. */
    @Test
    void aKnownNameThatIsWider() {
        assertThat(UnknownNames.of(field("corn rootworm").season()))
                .extracting(UnknownName::expected)
                .singleElement()
                .asString()
                .endsWith("did you mean western corn rootworm?");
        assertThat(UnknownNames.of(field("soybean aphid").season())).isEmpty();
    }

    /** A change made at the desk, by a command or by another process is asked for what it brings in, not for what stood there. */
    @Test
    void onlyWhatAChangeBringsIn() {
        Season before = field("rootworm").season();
        Season after = field("rootwurm").season();
        assertThat(UnknownNames.added(before, before)).isEmpty();
        assertThat(UnknownNames.added(before, after))
                .extracting(UnknownName::found)
                .isEqualTo(List.of("rootwurm"));
    }

    private static double gain(FieldAdvice advice) {
        return advice.programs().stream()
                .filter(program -> program.name().equals("Sprayed"))
                .findFirst()
                .orElseThrow()
                .meanGainUsdPerAcre();
    }
}
