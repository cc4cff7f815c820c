package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveLimit.Basis;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductKind;

/** What a label allows over the whole season, and before harvest. */
class SeasonGatesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "?",
            value = {
                "32 fl oz | 16 fl oz | 64 fl oz | CLEAR",
                "32 fl oz | 32 fl oz | 64 fl oz | CLEAR",
                "32 fl oz | 32.1 fl oz | 64 fl oz | BARRED",
                "1 qt     | 1 qt     | 0.5 gal  | CLEAR",
                "1 qt     | 33 fl oz | 0.5 gal  | BARRED",
                "32 fl oz | 16 fl oz | ?        | UNKNOWN",
                "32 fl oz | ?        | 64 fl oz | UNKNOWN",
                "32 fl oz | 1 lb     | 64 fl oz | UNKNOWN",
                "65 fl oz | ?        | 64 fl oz | BARRED",
            })
    void productTotalIsHeldAgainstItsSeasonMaximum(
            @Nullable String first, @Nullable String second, @Nullable String most, Standing expected) {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE)
                .use("Tackline", null, null, Ask.UNKNOWN, most, null, null)
                .spray("Tackline", first, null)
                .spray("Tackline", second, null);
        assertThat(scene.standing(new ProductSeasonMaximum())).isEqualTo(expected);
    }

    @Test
    void passOverHalfTheFieldCountsInFull() {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE)
                .use("Tackline", null, null, Ask.UNKNOWN, "1 qt", null, null)
                .pass(PassKind.SPRAY, null, "Tackline", Scene.amount("1 qt"), 50)
                .pass(PassKind.SPRAY, null, "Tackline", Scene.amount("1 qt"), 50);
        assertThat(scene.standing(new ProductSeasonMaximum())).isEqualTo(Standing.BARRED);
    }

    /** Arithmetic E5 of the reference: cap 2.5, used 1.5 and 0.75; 0.25 more is the cap, 0.5 more is over by 0.25. */
    @ParameterizedTest
    @CsvSource({"0.25, CLEAR, 2.5", "0.26, BARRED, 2.51", "0.5, BARRED, 2.75"})
    void premixesFillTheSameCap(double planned, Standing expected, double total) {
        Scene scene = atrazine()
                .limit("Straight", "atrazine", 2.5, Basis.ACTIVE_INGREDIENT)
                .limit("Premix", "atrazine", 2.5, Basis.ACTIVE_INGREDIENT)
                .spray("Straight", "1.5 qt", null)
                .spray("Premix", "1 qt", null)
                .spray("Straight", planned + " qt", null);
        List<Finding> findings = scene.findings(new ActiveSeasonMaximum());
        assertThat(Gates.standing(findings)).isEqualTo(expected);
        assertThat(Objects.requireNonNull(findings.get(0).measured())).isCloseTo(total, within(1e-9));
    }

    @Test
    void tightestLabelDecides() {
        Scene scene = atrazine()
                .limit("Straight", "atrazine", 2.5, Basis.ACTIVE_INGREDIENT)
                .limit("Premix", "atrazine", 2.0, Basis.ACTIVE_INGREDIENT)
                .spray("Straight", "1.5 qt", null)
                .spray("Premix", "1 qt", null);
        Finding worst = Gates.check(scene.season(), scene.field(), scene.program()).stream()
                .filter(finding -> finding.gate().equals("active-season-maximum"))
                .findFirst()
                .orElseThrow();
        assertThat(worst.standing()).isEqualTo(Standing.BARRED);
        assertThat(worst.subject()).isEqualTo("atrazine, label of Premix");
        assertThat(worst.says())
                .isEqualTo("2.25 lb ai/ac from Premix and Straight, but the Premix label allows 2 lb ai/ac a season.");
        assertThat(worst.clears()).isEqualTo("Cut atrazine by 0.25 lb ai/ac.");
    }

    @Test
    void capNotReadOnOneLabelIsUnknown() {
        Scene missingRow = atrazine()
                .limit("Straight", "atrazine", 2.5, Basis.ACTIVE_INGREDIENT)
                .spray("Straight", "1 qt", null)
                .spray("Premix", "1 qt", null);
        assertThat(missingRow.standing(new ActiveSeasonMaximum())).isEqualTo(Standing.UNKNOWN);
        missingRow.limit("Premix", "atrazine", null, Basis.ACTIVE_INGREDIENT);
        assertThat(missingRow.standing(new ActiveSeasonMaximum())).isEqualTo(Standing.UNKNOWN);
    }

    @Test
    void contentNotInTheBookIsUnknown() {
        Scene none = new Scene().product("Straight", ProductKind.HERBICIDE).spray("Straight", "1 qt", null);
        assertThat(none.standing(new ActiveSeasonMaximum())).isEqualTo(Standing.UNKNOWN);
        Scene oneOfTwo = atrazine()
                .limit("Straight", "atrazine", 2.5, Basis.ACTIVE_INGREDIENT)
                .limit("Straight", "mesotrione", 0.24, Basis.ACTIVE_INGREDIENT)
                .spray("Straight", "1 qt", null);
        assertThat(oneOfTwo.standing(new ActiveSeasonMaximum())).isEqualTo(Standing.UNKNOWN);
    }

    @Test
    void rateInAnotherKindOfUnitIsUnknownUnlessTheRestIsTooMuch() {
        Scene scene = atrazine()
                .limit("Straight", "atrazine", 2.5, Basis.ACTIVE_INGREDIENT)
                .spray("Straight", "1 lb", null);
        assertThat(scene.standing(new ActiveSeasonMaximum())).isEqualTo(Standing.UNKNOWN);
        scene.spray("Straight", "2.6 qt", null);
        assertThat(scene.standing(new ActiveSeasonMaximum())).isEqualTo(Standing.BARRED);
    }

    /**
     * Arithmetic E7 of the reference: 0.95 lb ae as ester and 0.95 as choline of 2,4-D fill 1.90 of a 2.0 lb ae cap.
     * Acid fractions 0.6633 (2-ethylhexyl ester, 221.04/333.26) and 0.6818 (choline, 221.04/324.20) by molar mass.
     */
    @ParameterizedTest
    @CsvSource(
            nullValues = "?",
            value = {
                "2.0, 0.6633, CLEAR",
                "1.9000001, 0.6633, CLEAR",
                "1.89, 0.6633, BARRED",
                "2.0, ?, UNKNOWN",
                "0.9, ?, BARRED"
            })
    void acidEquivalentsOfAllFormsCountTogether(double cap, @Nullable Double ester, Standing expected) {
        Scene scene = new Scene()
                .product("Ester", ProductKind.HERBICIDE)
                .product("Choline", ProductKind.HERBICIDE)
                .active("Ester", "2,4-D", 0.95 / 0.6633 * 4, FarmUnit.GAL, ester)
                .active("Choline", "2,4-D", 0.95 / 0.6818, FarmUnit.LB, 0.6818)
                .limit("Ester", "2,4-D", cap, Basis.ACID_EQUIVALENT)
                .limit("Choline", "2,4-D", cap, Basis.ACID_EQUIVALENT)
                .spray("Ester", "1 qt", null)
                .spray("Choline", "16 oz", null);
        assertThat(scene.standing(new ActiveSeasonMaximum())).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "?",
            value = {
                "2026-09-01, 2026-10-01, 21, CLEAR",
                "2026-09-10, 2026-10-01, 21, CLEAR",
                "2026-09-11, 2026-10-01, 21, BARRED",
                "2026-10-01, 2026-10-01, 0, CLEAR",
                "2026-05-01, 2026-10-01, 100, CLEAR",
                "2026-10-02, 2026-10-01, 0, UNKNOWN",
                "?, 2026-10-01, 21, UNKNOWN",
                "?, 2026-10-01, 0, CLEAR",
                "2026-09-01, ?, 0, CLEAR",
                "2026-09-01, ?, 21, UNKNOWN",
                "2026-09-01, 2026-10-01, ?, UNKNOWN",
            })
    void daysBeforeHarvest(
            @Nullable LocalDate applied, @Nullable LocalDate harvest, @Nullable Integer days, Standing expected) {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.INSECTICIDE)
                .use("Tackline", null, null, Ask.UNKNOWN, null, null, days)
                .spray("Tackline", "1 qt", applied)
                .harvest(harvest);
        assertThat(scene.standing(new PreHarvestInterval())).isEqualTo(expected);
    }

    @Test
    void withoutAHarvestPassTheIntervalIsUnknown() {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.INSECTICIDE)
                .use("Tackline", null, null, Ask.UNKNOWN, null, null, 21)
                .spray("Tackline", "1 qt", Scene.PLANTING);
        assertThat(scene.standing(new PreHarvestInterval())).isEqualTo(Standing.UNKNOWN);
    }

    @Test
    void earliestOfTwoHarvestsCounts() {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.INSECTICIDE)
                .use("Tackline", null, null, Ask.UNKNOWN, null, null, 21)
                .spray("Tackline", "1 qt", LocalDate.of(2026, 9, 1))
                .harvest(Scene.HARVEST)
                .harvest(LocalDate.of(2026, 9, 20));
        Finding finding = scene.findings(new PreHarvestInterval()).get(0);
        assertThat(finding.standing()).isEqualTo(Standing.BARRED);
        assertThat(finding.clears()).isEqualTo("Go by 2026-08-30 or harvest on 2026-09-22 or later.");
    }

    /** Straight: 4 lb atrazine per gal; Premix: 3 lb per gal. A quart brings 1 and 0.75 lb. */
    private static Scene atrazine() {
        return new Scene()
                .product("Straight", ProductKind.HERBICIDE)
                .product("Premix", ProductKind.HERBICIDE)
                .active("Straight", "atrazine", 4, FarmUnit.GAL, null)
                .active("Premix", "atrazine", 3, FarmUnit.GAL, null);
    }
}
