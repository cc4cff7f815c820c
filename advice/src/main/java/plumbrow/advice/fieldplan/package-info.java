/** What to do on one field, in date order: the plan that screen, paper, terminal and programs show. */
@NullMarked
package plumbrow.advice.fieldplan;

import org.jspecify.annotations.NullMarked;
