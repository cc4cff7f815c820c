package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order in which one value is chosen: docs/reference-data.md, "How one value is chosen". */
class ChoosingTest {
    private static Fact fact(Property property, String value, String conditions, String status) {
        return new Fact(
                property.measure(),
                Bound.read(value).orElseThrow(),
                property.unit(),
                conditions,
                new Origin("a source", "a place"),
                Backing.read(status).orElseThrow(),
                2);
    }

    private static Choice choose(Property property, String form, Fact... facts) {
        Choice choice = new Substance("x", "50-00-0", "herbicide", List.of(facts))
                .choose(property, form)
                .orElseThrow();
        List<Fact> backwards = Arrays.asList(facts.clone());
        Collections.reverse(backwards);
        assertThat(new Substance("x", "50-00-0", "herbicide", backwards)
                        .choose(property, form)
                        .map(Choice::fact))
                .as("the order of rows does not matter")
                .contains(choice.fact());
        return choice;
    }

    @Test
    void theRightFormComesFirst() {
        Fact acid = fact(Property.KOC, "20", "form: acid", "memory");
        Fact ester = fact(Property.KOC, "100", "form: 2-ethylhexyl ester", "verified");
        Fact unnamed = fact(Property.KOC, ">5", "", "memory");
        assertThat(choose(Property.KOC, "acid", acid, ester, unnamed).fact()).isEqualTo(acid);
        assertThat(choose(Property.KOC, "ester", acid, ester, unnamed).fact()).isEqualTo(ester);
        assertThat(choose(Property.KOC, "amine", acid, ester, unnamed).fact()).isEqualTo(unnamed);
        assertThat(choose(Property.KOC, "", acid, ester, unnamed).fact()).isEqualTo(unnamed);
    }

    @Test
    void thenADefiniteNumberOrRangeOverALimit() {
        Fact limit = fact(Property.RAT_ORAL, ">2000", "", "verified");
        Fact definite = fact(Property.RAT_ORAL, "3090", "", "memory");
        assertThat(choose(Property.RAT_ORAL, "", limit, definite).fact()).isEqualTo(definite);
        assertThat(choose(Property.RAT_ORAL, "", limit, fact(Property.RAT_ORAL, "2500-4000", "", "memory"))
                        .fact()
                        .value()
                        .printed())
                .isEqualTo("2500-4000");
    }

    @Test
    void thenVerifiedOverReserveOverMemory() {
        Fact memory = fact(Property.RAT_ORAL, "10", "", "memory");
        Fact reserve = fact(Property.RAT_ORAL, "20", "", "verified; converted");
        Fact verified = fact(Property.RAT_ORAL, "30", "", "verified");
        assertThat(choose(Property.RAT_ORAL, "", memory, reserve, verified).fact())
                .isEqualTo(verified);
        assertThat(choose(Property.RAT_ORAL, "", memory, reserve).fact()).isEqualTo(reserve);
    }

    @Test
    void thenTheLowestToxicity() {
        assertThat(choose(
                                Property.TROUT,
                                "",
                                fact(Property.TROUT, "0.69", "", "verified"),
                                fact(Property.TROUT, "0.074", "", "verified"))
                        .fact()
                        .value()
                        .printed())
                .isEqualTo("0.074");
    }

    /** Ours: no end of a half-life is the safe one. */
    @Test
    void ofOtherPropertiesTheMiddle() {
        Choice choice = choose(
                Property.FIELD_HALF_LIFE,
                "",
                fact(Property.FIELD_HALF_LIFE, "3", "", "verified"),
                fact(Property.FIELD_HALF_LIFE, "136", "", "verified"),
                fact(Property.FIELD_HALF_LIFE, "14", "", "verified"));
        assertThat(choice.fact().value().printed()).isEqualTo("14");
        assertThat(choice.low()).isEqualTo(3);
        assertThat(choice.high()).isEqualTo(136);
        assertThat(choice.all()).hasSize(3).startsWith(choice.fact());
    }

    @Test
    void aValueThatItsSourceWarnsOfIsNotTaken() {
        assertThat(Substances.find("zeta-cypermethrin")
                        .flatMap(found -> found.choose(Property.BEE_CONTACT))
                        .map(choice -> choice.fact().value().printed()))
                .as("zeta-cypermethrin: the operator of >0.002 is doubtful, 0.023 is used")
                .contains("0.023");
        assertThat(Substances.find("EPTC")
                        .flatMap(found -> found.choose(Property.GROUP_NUMBER))
                        .map(choice -> choice.fact().value().printed()))
                .as("8 on old labels, 15 since 2020")
                .contains("15");
    }

    @Test
    void theSpreadIsInOneUnit() {
        Choice choice = Substances.find("glyphosate")
                .flatMap(found -> found.choose(Property.VAPOUR_PRESSURE))
                .orElseThrow();
        assertThat(choice.unit()).isEqualTo("mPa");
        assertThat(choice.all()).hasSize(3);
        assertThat(choice.low()).isEqualTo(2.1e-3);
        assertThat(choice.high()).isEqualTo(1.31e-2);
    }
}
