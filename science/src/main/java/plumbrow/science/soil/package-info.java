/** The ground: its texture, the floor a tillage tool leaves, residue on top, and how many acres a field has. */
@NullMarked
package plumbrow.science.soil;

import org.jspecify.annotations.NullMarked;
