/** The products at hand: price, seed, label, active ingredients, traits and how well they control what. */
@NullMarked
package plumbrow.advice.shelf;

import org.jspecify.annotations.NullMarked;
