/** Files for machines: task data by ISO 11783-10, rate zones as shapefile and GeoJSON; and what machines write back. */
@NullMarked
package plumbrow.documents.machine;

import org.jspecify.annotations.NullMarked;
