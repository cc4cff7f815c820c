/** Where a product goes after it is applied: into air, soil, water and what birds, mammals and bees eat. */
@NullMarked
package plumbrow.science.fate;

import org.jspecify.annotations.NullMarked;
