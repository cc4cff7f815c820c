package plumbrow.advice.tank;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A test of the water that a farm sprays with; ions [ppm].
 *
 * @param iron where it was tested
 */
public record WaterTest(
        String farm,
        LocalDate tested,
        double calcium,
        double magnesium,
        double sodium,
        double potassium,
        @Nullable Double iron,
        @Nullable Double ph,
        String source) {}
