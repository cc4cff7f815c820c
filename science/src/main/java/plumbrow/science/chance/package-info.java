/** What is uncertain: laws of chance, draws and their tails, dominance, and how draws move together. */
@NullMarked
package plumbrow.science.chance;

import org.jspecify.annotations.NullMarked;
