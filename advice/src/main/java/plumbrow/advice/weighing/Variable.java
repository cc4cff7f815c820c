package plumbrow.advice.weighing;

import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;

/**
 * An uncertain input before it is drawn.
 *
 * @param id its name within the field, which a person can change it by
 * @param stream the name its draws come from: the same on every field that shares the quantity
 * @param doubt whether it belongs to the field, the product or the seed, or another year brings another value
 */
record Variable(
        String id,
        String label,
        String unit,
        Distribution distribution,
        String source,
        String stream,
        DoubtKind doubt) {}
