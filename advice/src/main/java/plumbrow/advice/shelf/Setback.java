package plumbrow.advice.shelf;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.FeatureKind;

/**
 * The distance a label keeps from a kind of feature.
 *
 * @param feet distance from it [ft], 0 where the label was read and asks for none; null where it was not read
 * @param downwindOnly whether it holds only where the wind blows towards the feature
 * @param source the page of the label
 */
public record Setback(
        String product, FeatureKind kind, @Nullable Double feet, boolean downwindOnly, String source) {}
