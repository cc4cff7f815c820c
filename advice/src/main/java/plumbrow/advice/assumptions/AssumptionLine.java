package plumbrow.advice.assumptions;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * One line of the assumptions. A line for a field comes before a line for its crop.
 *
 * @param crop the crop it holds for; null where it is for one field
 * @param field the field it holds for; null where it is for a whole crop
 */
public record AssumptionLine(
        @Nullable Crop crop,
        @Nullable String field,
        AssumptionQuantity quantity,
        Distribution distribution,
        String source) {
    public AssumptionLine {
        if ((crop == null) == (field == null)) {
            throw new IllegalArgumentException("assumptions line is for a crop or for a field, not both or neither");
        }
    }
}
