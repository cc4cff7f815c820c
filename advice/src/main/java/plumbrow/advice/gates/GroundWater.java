package plumbrow.advice.gates;

import java.util.stream.Stream;
import plumbrow.advice.field.Texture;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether the label warns of ground water under ground like this field's.
 *
 * <p>Protects water. A warning is conditional on soils that let water through readily, see {@link SoilScreen}, and unknown
 * where the texture is not known. Unknown where the label was not read for it. How deep the water stands the book does not
 * know: a high water table counts on any soil.
 *
 * <p>Source: the label. Needs: whether the label warns, and the texture of the field.
 */
final class GroundWater extends CareGate {
    GroundWater() {
        super("ground-water", Protects.WATER, "Does the label warn of ground water on such ground?");
    }

    @Override
    Stream<Finding> judge(Case at, ProductCare care) {
        if (care.groundwater() == Ask.UNKNOWN) {
            return Stream.of(unknown(
                    care.product(),
                    "Whether the label warns of ground water has not been read.",
                    "Look for ground water in the environmental hazards of the label."));
        }
        if (care.groundwater() == Ask.NO) {
            return Stream.of(clear(care.product(), "The label does not warn of ground water."));
        }
        Texture texture = at.field().texture();
        String soil = SoilScreen.leaching(texture);
        if (texture == null || soil == null) {
            return Stream.of(unknown(
                    care.product(),
                    "The label warns of ground water on open soils, and the texture here is not known.",
                    "Look up the texture on the soil map, and how deep the water stands."));
        }
        return Stream.of(
                soil.equals("high")
                        ? conditional(
                                care.product(),
                                "The label warns of ground water on open soils, and this is " + texture.word() + ".",
                                "Ask how deep the water stands, and keep off where it stands high.")
                        : clear(
                                care.product(),
                                "The label warns of ground water on open soils; this is " + texture.word() + "."));
    }
}
