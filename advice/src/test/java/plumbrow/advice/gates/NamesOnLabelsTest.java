package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveLimit.Basis;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductKind;

/** A label's limit holds whether the book writes a name as that label does or as another one. By hand from the labels' words. */
class NamesOnLabelsTest {

    /** 24 and 32 fl oz at 4.5 lb ae/gal: 0.844 and 1.125 lb, together 1.969 of 1.5 lb. */
    @Test
    void twoSaltsFillOneCap() {
        Scene scene = new Scene()
                .product("Potassium", ProductKind.HERBICIDE)
                .product("Amine", ProductKind.HERBICIDE)
                .active("Potassium", "glyphosate, potassium salt", 4.5, FarmUnit.GAL, 1.0)
                .active("Amine", "Glyphosate isopropylamine", 4.5, FarmUnit.GAL, 1.0)
                .limit("Potassium", "glyphosate", 1.5, Basis.ACID_EQUIVALENT)
                .limit("Amine", "GLYPHOSATE", 1.5, Basis.ACID_EQUIVALENT)
                .spray("Potassium", "24 fl oz", null)
                .spray("Amine", "32 fl oz", null);
        assertThat(scene.standing(new ActiveSeasonMaximum())).isEqualTo(Standing.BARRED);
    }

    /** The label keeps soybean off for 300 days and anything else for none; the field is planted 100 days later. */
    @ParameterizedTest
    @CsvSource({
        "soybean, Soybeans, BARRED",
        "wheat, winter wheat, BARRED",
        "winter wheat, wheat, BARRED",
        "oats, oat, BARRED",
        "soybean, alfalfa, CLEAR"
    })
    void aCropByAnotherName(String onLabel, String planted, Standing expected) {
        Scene scene =
                new Scene().product("Long Keeper", ProductKind.HERBICIDE).spray("Long Keeper", "1 qt", Scene.PLANTING);
        scene.plantBacks.add(new PlantBack("Long Keeper", onLabel, 300, null, null, "", "label p. 9"));
        scene.plantBacks.add(new PlantBack("Long Keeper", PlantBack.ANY_OTHER, 0, null, null, "", "label p. 9"));
        LocalDate day = Scene.PLANTING.plusDays(100);
        scene.nextCrops.add(new NextCrop("Home", planted, day, NextCrop.Use.NEXT, null));
        assertThat(scene.standing(new PlantBacks())).isEqualTo(expected);
    }

    @Test
    void aForbiddenPartnerBySalt() {
        Scene scene = new Scene()
                .product("Post", ProductKind.HERBICIDE)
                .product("Partner", ProductKind.HERBICIDE)
                .active("Partner", "Dicamba, diglycolamine salt", 4, FarmUnit.GAL, 0.8)
                .spray("Post", "1 qt", Scene.PLANTING)
                .spray("Partner", "1 qt", Scene.PLANTING);
        scene.mixRules.add(new MixRule("Post", "dicamba", MixRule.Word.FORBIDDEN, "label p. 4"));
        for (int pass = 1; pass <= 2; pass++) {
            scene.plans.add(new plumbrow.advice.program.SprayPlan(
                    "Home",
                    "Program",
                    pass,
                    "one",
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    plumbrow.advice.shelf.Ask.UNKNOWN,
                    null));
        }
        assertThat(scene.standing(new TankMix())).isEqualTo(Standing.BARRED);
    }
}
