/**
 * What a safety data sheet says: its sections and values, each with the very words and their place.
 *
 * Nothing is guessed. What is not there, what the sheet itself calls unknown, what can be read two ways and what is said
 * twice and differently are answers of their own.
 */
@NullMarked
package plumbrow.documents.sheet;

import org.jspecify.annotations.NullMarked;
