package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ListsTest {
    /** Read from Table 302.4 of 40 CFR, as github.com/18F/allregs keeps it; equal to the working list from memory. */
    @ParameterizedTest
    @CsvSource({
        "chlorpyrifos, 1",
        "86-50-0, 1",
        "trifluralin, 10",
        "carbofuran, 10",
        "phorate, 10",
        "thiram, 10",
        "'2,4-D', 100",
        "malathion, 100",
        "diuron, 100",
        "xylene (mixed isomers), 100",
        "dicamba, 1000",
        "toluene, 1000",
        "methanol, 5000",
        "propyzamide, 5000"
    })
    @DisplayName("Reportable quantities of 40 CFR 302.4")
    void reportable(String name, double pounds) {
        assertThat(ReportableQuantities.find(name))
                .filteredOn(listed -> listed.law() == ReportableQuantity.Law.CERCLA)
                .hasSize(1)
                .allSatisfy(listed -> {
                    assertThat(listed.rqLb()).isEqualTo(pounds);
                    assertThat(listed.backing().sure()).isTrue();
                });
    }

    /** Read from appendix A of 40 CFR 355: the quantity, and the planning quantity as printed. */
    @ParameterizedTest
    @CsvSource({
        "paraquat dichloride, 10, 10/10000",
        "terbufos, 100, 100",
        "methomyl, 100, 500/10000",
        "ammonia, 100, 500",
        "fonofos, 500, 500"
    })
    @DisplayName("Extremely hazardous substances of 40 CFR 355")
    void extremelyHazardous(String name, double pounds, String planning) {
        assertThat(ReportableQuantities.find(name))
                .filteredOn(listed -> listed.law() == ReportableQuantity.Law.EPCRA)
                .hasSize(1)
                .allSatisfy(listed -> {
                    assertThat(listed.rqLb()).isEqualTo(pounds);
                    assertThat(listed.tpqLb()).isEqualTo(planning);
                });
    }

    /** Where both lists have a substance, appendix A of part 355 repeats the quantity of Table 302.4. */
    @Test
    void theListsAgree() {
        for (ReportableQuantity listed : ReportableQuantities.all()) {
            assertThat(ReportableQuantities.find(listed.cas()))
                    .as(listed.name())
                    .allSatisfy(other -> {
                        assertThat(other.rqLb()).isEqualTo(listed.rqLb());
                        assertThat(other.name()).isEqualTo(listed.name());
                    });
        }
    }

    /** No row of Table 302.4 bears these names: nothing is found, which is no answer. */
    @Test
    void notOnTheList() {
        for (String name : new String[] {"atrazine", "glyphosate", "acetochlor", "bifenthrin", "imidacloprid"}) {
            assertThat(ReportableQuantities.find(name)).as(name).isEmpty();
        }
    }

    /** Alms et al. 2016: 10 % loss at 3 to 4 plants/m2 of volunteer soybean in corn. */
    @Test
    void weedsByCrop() {
        assertThat(PestFacts.weed("Volunteer soybean", "corn")).anySatisfy(row -> {
            assertThat(row.fact().measure().key()).isEqualTo("density_for_10pct_loss");
            assertThat(row.says()).isEqualTo("3-4");
        });
        assertThat(PestFacts.weed("kochia", "soybean"))
                .as("emergence is bound to no crop")
                .anyMatch(row -> row.fact().measure().key().equals("emergence_median"))
                .noneMatch(row -> row.crop().equals("corn"));
        assertThat(PestFacts.weed("hemp dogbane", "corn")).isEmpty();
    }

    /** Bode & Calvin 1990: 5.94 % per larva at the 10-leaf stage. Thresholds that differ by state all stand. */
    @Test
    void insectsByCrop() {
        assertThat(PestFacts.insect("European corn borer", "corn"))
                .anyMatch(row ->
                        row.says().equals("5.94") && row.fact().conditions().startsWith("10-leaf"));
        assertThat(PestFacts.insect("defoliators", "soybean"))
                .filteredOn(row -> row.fact().conditions().contains("pod set"))
                .map(PestFact::says)
                .containsExactlyInAnyOrder("20", "10", "15", "15");
        assertThat(PestFacts.insect("soybean aphid", "corn")).isEmpty();
    }
}
