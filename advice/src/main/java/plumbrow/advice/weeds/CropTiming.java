package plumbrow.advice.weeds;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;

/**
 * When the crop of a field is up and closed, and how late its sprayer comes.
 *
 * @param up day on which it is up; null to reckon it from the seed pass by degree days
 * @param closed day on which its leaves meet between the rows; null to reckon it
 * @param daysLate days by which a spray after planting comes later than planned once the ground is fit: other work, wind, repairs.
 *     That it waits for wet ground comes from the weather of the season
 */
public record CropTiming(
        String field, @Nullable LocalDate up, @Nullable LocalDate closed, Distribution daysLate, String source) {
    /** How late a sprayer comes where nobody says otherwise, wet ground not counted. Common practice, no source. */
    public static final Distribution USUALLY_LATE = new Distribution.Pert(0, 0, 4);
}
