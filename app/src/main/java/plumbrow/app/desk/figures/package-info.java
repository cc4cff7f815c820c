/** The figures as forms. */
@NullMarked
package plumbrow.app.desk.figures;

import org.jspecify.annotations.NullMarked;
