package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.ProductKind;

/** A product of which 80 % control is typed does not simply "not work": what counts and what it comes to is said. */
class NearlyWorkingTest {

    /** Typed 60, 80, 90 %: a PERT's mean is (60 + 4 · 80 + 90) / 6 = 78.3 %, short of the 80 % that count as working. */
    @Test
    void eightyTypedIsNotSilentlyNothing() {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE)
                .active("Tackline", "mesotrione", 4, FarmUnit.GAL, null)
                .spray("Tackline", "3 fl oz", Scene.PLANTING);
        scene.weeds.add(new WeedPressure("Home", "waterhemp", new Distribution.Fixed(10), 1, 45, "walked"));
        scene.controls.add(new Control(
                "Tackline", "waterhemp", new Amount(3, FarmUnit.FL_OZ), new Distribution.Pert(0.6, 0.8, 0.9), "trial"));
        assertThat(scene.findings(new SitesOfAction()))
                .singleElement()
                .extracting(Finding::says)
                .isEqualTo(
                        "No site of action works on waterhemp at the planned rates. Tackline at 3 fl oz/ac takes 78.3 %"
                                + " of it on the mean of the control sheet, and only from 80 % on does a product count as working"
                                + " here.");
    }
}
