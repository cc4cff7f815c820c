/**
 * Reads pesticide labels: what a product may be used on, how much, when, how, and what the label forbids.
 *
 * What is read is a proposal: a person holds it against the page before any gate believes it. What isn't stated is
 * unknown, never allowed.
 */
@NullMarked
package plumbrow.documents.label;

import org.jspecify.annotations.NullMarked;
