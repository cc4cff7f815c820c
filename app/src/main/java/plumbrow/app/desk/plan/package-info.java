/** The page of the farm plans: one program for each field under what a farm's fields share. */
@NullMarked
package plumbrow.app.desk.plan;

import org.jspecify.annotations.NullMarked;
