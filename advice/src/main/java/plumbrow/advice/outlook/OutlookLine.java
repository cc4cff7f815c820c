package plumbrow.advice.outlook;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * One line of the outlook. A line for a field comes before a line for its crop.
 *
 * @param crop the crop it holds for; null where it is for one field
 * @param field the field it holds for; null where it is for a whole crop
 */
public record OutlookLine(
        @Nullable Crop crop, @Nullable String field, OutlookQuantity quantity, Law law, String source) {
    public OutlookLine {
        if ((crop == null) == (field == null)) {
            throw new IllegalArgumentException("an outlook line is for a crop or for a field, not both or neither");
        }
    }
}
