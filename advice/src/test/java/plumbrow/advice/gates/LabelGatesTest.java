package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelDifference;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.ProductKind;

/**
 * What a label says of crop, place, rate and number of applications.
 *
 * <p>Checked against 7 U.S.C. 136(ee) and 136j(a)(2)(G): a listed crop and less than the label rate are lawful unless
 * the label forbids it; an unlisted crop or a higher rate is not. A product not registered in the state is not lawful
 * there.
 */
class LabelGatesTest {

    private static Scene scene() {
        return new Scene().product("Tackline", ProductKind.HERBICIDE).spray("Tackline", "16 fl oz", Scene.PLANTING);
    }

    private static LabelUse useOn(Crop crop) {
        return new LabelUse("Tackline", crop, null, null, Ask.UNKNOWN, null, null, null, "label p. 7");
    }

    @Test
    void listedCropIsClear() {
        Scene scene = scene();
        scene.uses.add(useOn(Crop.CORN));
        assertThat(scene.standing(new CropOnLabel())).isEqualTo(Standing.CLEAR);
    }

    @Test
    void labelReadForOtherCropsOnlyIsBarred() {
        Scene scene = scene();
        scene.uses.add(useOn(Crop.SOYBEAN));
        scene.uses.add(useOn(Crop.WHEAT));
        Finding finding = scene.findings(new CropOnLabel()).get(0);
        assertThat(finding.standing()).isEqualTo(Standing.BARRED);
        assertThat(finding.says()).isEqualTo("The label as read lists soybean and wheat, not corn.");
    }

    @Test
    void labelNotReadAtAllIsUnknown() {
        Finding finding = scene().findings(new CropOnLabel()).get(0);
        assertThat(finding.standing()).isEqualTo(Standing.UNKNOWN);
        assertThat(finding.clears()).contains("Look up", "Tackline", "corn");
    }

    @Test
    void productThatIsNotOnTheShelfOrNotNamedIsUnknown() {
        assertThat(new Scene().spray("Elsewhere", "1 qt", null).standing(new CropOnLabel()))
                .isEqualTo(Standing.UNKNOWN);
        assertThat(new Scene().pass(PassKind.SPRAY, null, null, null, 100).standing(new CropOnLabel()))
                .isEqualTo(Standing.UNKNOWN);
    }

    @Test
    void tillageHarvestSeedAndAdjuvantsHaveNoLabelToAnswer() {
        Scene scene = new Scene()
                .product("Spreader", ProductKind.ADJUVANT)
                .plainSeed("Hollowbrook")
                .plant("Hollowbrook", 100)
                .spray("Spreader", "1 qt", null)
                .pass(PassKind.TILLAGE, null, null, null, 100)
                .harvest(null);
        assertThat(Gates.check(scene.season(), scene.field(), scene.program()))
                .extracting(Finding::gate)
                .containsExactly("treated-seed");
        assertThat(scene.standing()).isEqualTo(Standing.CLEAR);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "?",
            value = {
                "IA;IL | CLEAR",
                "ia    | CLEAR",
                "IL    | BARRED",
                "none  | BARRED",
                "?     | UNKNOWN",
            })
    void stateMustHaveRegisteredIt(@Nullable String states, Standing expected) {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE, list(states), List.of())
                .spray("Tackline", "16 fl oz", null);
        assertThat(scene.standing(new RegisteredInState())).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "?",
            value = {
                "none              | CLEAR",
                "IA: Sorrel        | CLEAR",
                "IL: Marrow        | CLEAR",
                "IA: Marrow        | BARRED",
                "ia:marrow county  | BARRED",
                "Marrow            | BARRED",
                "?                 | UNKNOWN",
            })
    void countyMustNotBeExcluded(@Nullable String counties, Standing expected) {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE, List.of("IA"), list(counties))
                .spray("Tackline", "16 fl oz", null);
        assertThat(scene.standing(new CountyNotExcluded())).isEqualTo(expected);
    }

    /** Rows B1 and B2 of the reference: label 22 fl oz, 16 is lawful, 24 is not. The rest: at, past and unknown. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "?",
            value = {
                "16 fl oz    | 22 fl oz | NO      | 22 fl oz | CLEAR",
                "16 fl oz    | 22 fl oz | YES     | 16 fl oz | CLEAR",
                "22 fl oz    | 22 fl oz | NO      | 16 fl oz | CONDITIONAL",
                "22 fl oz    | 22 fl oz | NO      | 24 fl oz | BARRED",
                "16 fl oz    | 22 fl oz | NO      | 22.01 fl oz | BARRED",
                "16 fl oz    | 22 fl oz | YES     | 15.99 fl oz | BARRED",
                "16 fl oz    | 22 fl oz | UNKNOWN | 15.99 fl oz | UNKNOWN",
                "16 fl oz    | 22 fl oz | UNKNOWN | 17 fl oz | CLEAR",
                "16 fl oz    | ?        | NO      | 17 fl oz | UNKNOWN",
                "?           | 22 fl oz | UNKNOWN | 22 fl oz | UNKNOWN",
                "?           | 22 fl oz | UNKNOWN | 17 fl oz | UNKNOWN",
                "?           | 22 fl oz | YES     | 17 fl oz | UNKNOWN",
                "?           | 22 fl oz | NO      | 17 fl oz | CONDITIONAL",
                "16 fl oz    | 22 fl oz | NO      | ?        | UNKNOWN",
                "16 fl oz    | 22 fl oz | NO      | 1 lb     | UNKNOWN",
                "16 oz       | 22 fl oz | NO      | 17 fl oz | UNKNOWN",
                // 32 fl oz, a quart, 0.25 gal and 946.352946 mL are one amount
                "16 fl oz    | 32 fl oz | NO      | 0.25 gal | CLEAR",
                "1 pt        | 1 qt     | YES     | 946.352946 mL | CLEAR",
                "1 qt        | 1 gal    | YES     | 32 fl oz | CLEAR",
            })
    void rateMustBeWithinTheLabel(
            @Nullable String low, @Nullable String high, Ask forbidden, @Nullable String rate, Standing expected) {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE)
                .use("Tackline", low, high, forbidden, null, null, null)
                .spray("Tackline", rate, null);
        assertThat(scene.standing(new LabelRate())).isEqualTo(expected);
    }

    @Test
    void rateFindingShowsNumbersUnitsAndSource() {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE)
                .use("Tackline", "22 fl oz", "22 fl oz", Ask.NO, null, null, null)
                .spray("Tackline", "16 fl oz", null);
        Finding less = scene.findings(new LabelRate()).get(0);
        assertThat(less.says())
                .isEqualTo("16 fl oz/ac is less than the lowest labelled rate, 22 fl oz/ac; "
                        + "the label does not forbid less.");
        assertThat(less.measured()).isEqualTo(16);
        assertThat(less.limit()).isEqualTo(22);
        assertThat(less.unit()).isEqualTo("fl oz/ac");
        assertThat(less.source()).contains("label p. 7", "136(ee)");
        assertThat(less.clears()).contains("resistance guidance");
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "?",
            value = {"1,1,CLEAR", "2,2,CLEAR", "3,2,BARRED", "1,?,UNKNOWN"})
    void applicationsAreCounted(int planned, @Nullable Integer most, Standing expected) {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE)
                .use("Tackline", null, null, Ask.UNKNOWN, null, most, null);
        for (int i = 0; i < planned; i++) {
            scene.pass(PassKind.SPRAY, null, "Tackline", new Amount(1, FarmUnit.QT), 50);
        }
        assertThat(scene.standing(new MostApplications())).isEqualTo(expected);
    }

    private static @Nullable List<String> list(@Nullable String text) {
        if (text == null) {
            return null;
        }
        return text.equals("none") ? List.of() : List.of(text.split(";"));
    }

    /** What the label in the book and the workbook say differently stays unknown on the fields it touches, and only there. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Tackline | CORN | '' | true | true",
                "Tackline | SOYBEAN | '' | true | false",
                "Tackline | | '' | true | true",
                "Otherline | CORN | '' | true | false",
                "Tackline | | alfalfa | true | true",
                "Tackline | | alfalfa | false | true",
                "Tackline | | cotton | true | false",
            })
    void whatNobodySettledIsUnknownWhereItTouches(
            String product, @Nullable Crop crop, String nextCrop, boolean stricter, boolean touches) {
        Scene scene = scene();
        scene.nextCrops.add(new NextCrop("Home", "Alfalfa", Scene.HARVEST, NextCrop.Use.NEXT, null));
        scene.differences.add(new LabelDifference(
                product,
                crop,
                nextCrop,
                "plant-back interval",
                "155 days",
                "120 days",
                "155 days",
                stricter,
                "label, page 3"));
        List<Finding> unsettled = scene.findings(new LabelCurrent());
        if (touches) {
            assertThat(unsettled).singleElement().satisfies(finding -> {
                assertThat(finding.standing()).isEqualTo(stricter ? Standing.UNKNOWN : Standing.CONDITIONAL);
                assertThat(finding.says()).contains("155 days", "the workbook says 120 days", "go by 155 days");
                assertThat(finding.source()).isEqualTo("label, page 3");
            });
        } else {
            assertThat(unsettled).isEmpty();
        }
    }
}
