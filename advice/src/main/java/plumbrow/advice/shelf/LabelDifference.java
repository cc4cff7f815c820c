package plumbrow.advice.shelf;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * Something that the product's label and the book say differently and nobody has settled yet.
 *
 * @param crop the crop that it is said for; null where it holds on any
 * @param nextCrop the crop that is to follow, where it is about one; empty where it isn't
 * @param what what it is of, in a person's words, such as "plant-back interval, alfalfa"
 * @param label what the label says, with its unit
 * @param workbook what the workbook says, with its unit
 * @param stricter whether the label forbids more than what counts, or nobody can tell
 * @param counts what the checks go by until it is settled, with its unit
 * @param source the label and its page
 */
public record LabelDifference(
        String product,
        @Nullable Crop crop,
        String nextCrop,
        String what,
        String label,
        String workbook,
        String counts,
        boolean stricter,
        String source) {}
