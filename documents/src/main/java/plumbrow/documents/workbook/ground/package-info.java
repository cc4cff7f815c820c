/** Field outlines: read and written as GeoJSON, checked, and measured in acres. */
@NullMarked
package plumbrow.documents.workbook.ground;

import org.jspecify.annotations.NullMarked;
