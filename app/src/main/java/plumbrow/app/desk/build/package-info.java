/** The program builder: passes picked from what the shelf and its labels allow, copied, changed and put into series. */
@NullMarked
package plumbrow.app.desk.build;

import org.jspecify.annotations.NullMarked;
