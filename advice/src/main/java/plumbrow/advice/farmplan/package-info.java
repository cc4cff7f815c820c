/** One program for each field of a farm under limits that they share: hours, money, quantities, refuge and risk. */
@NullMarked
package plumbrow.advice.farmplan;

import org.jspecify.annotations.NullMarked;
