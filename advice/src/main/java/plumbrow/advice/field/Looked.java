package plumbrow.advice.field;

import org.jspecify.annotations.Nullable;

/**
 * Somebody has looked around a field, so that what is not noted of this kind is not there. A thing that is noted says
 * nothing of others: one stream on the list does not mean that somebody looked for houses, or for a second stream.
 *
 * @param kind what was looked for; null for everything
 */
public record Looked(String field, @Nullable FeatureKind kind) {}
