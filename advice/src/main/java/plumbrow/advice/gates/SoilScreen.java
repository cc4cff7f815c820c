package plumbrow.advice.gates;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Texture;

/**
 * How readily a soil lets water through, and how readily it runs off, for the screens. Never for anything a label says.
 *
 * <p>Down: sands high, loams intermediate, clays low. Off: below 2 % slope low, to 6 % intermediate, steeper high; one class
 * more on clay. Common practice, no source; a soil survey's own rating is better.
 */
final class SoilScreen {
    static final double GENTLE_PCT = 2;
    static final double STEEP_PCT = 6;

    private SoilScreen() {}

    /** High, intermediate or low; null where the texture is not known. */
    static @Nullable String leaching(@Nullable Texture texture) {
        return texture == null
                ? null
                : switch (texture) {
                    case SAND, LOAMY_SAND, SANDY_LOAM -> "high";
                    case LOAM, SILT_LOAM, SILT, SANDY_CLAY_LOAM -> "intermediate";
                    case CLAY_LOAM, SILTY_CLAY_LOAM, SANDY_CLAY, SILTY_CLAY, CLAY -> "low";
                };
    }

    /** High, intermediate or low; null where texture or slope is not known. */
    static @Nullable String runoff(@Nullable Texture texture, @Nullable Double slopePct) {
        if (texture == null || slopePct == null) {
            return null;
        }
        boolean clay = texture == Texture.SANDY_CLAY || texture == Texture.SILTY_CLAY || texture == Texture.CLAY;
        if (slopePct > STEEP_PCT || (clay && slopePct > GENTLE_PCT)) {
            return "high";
        }
        return clay || slopePct > GENTLE_PCT ? "intermediate" : "low";
    }
}
