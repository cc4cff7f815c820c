/** What is uncertain: distributions, draws and their tails, dominance, and how draws move together. */
@NullMarked
package plumbrow.science.chance;

import org.jspecify.annotations.NullMarked;
