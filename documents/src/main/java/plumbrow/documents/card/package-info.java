/**
 * The product card: what a safety sheet and a label mean to whoever handles the jug, each value with where it stands.
 *
 * Nothing is guessed and nothing reckoned here: values are read, kept in the reference data, or worked by a figure.
 */
@NullMarked
package plumbrow.documents.card;

import org.jspecify.annotations.NullMarked;
