package plumbrow.advice.nextseason;

import java.time.LocalDate;
import java.util.Map;
import plumbrow.advice.field.Crop;

/**
 * How the next season is to begin.
 *
 * @param year harvest year, later than the last season's
 * @param asOf the day of its assumptions
 * @param crops crops that somebody says, by field; the rest go by {@link NextCropRule}
 * @param yields what was harvested in the last season [bu/ac], by field; blank in the history where it is not known
 */
public record BeginAsked(int year, LocalDate asOf, Map<String, Crop> crops, Map<String, Double> yields) {
    public BeginAsked {
        crops = Map.copyOf(crops);
        yields = Map.copyOf(yields);
    }
}
