/** Outlines and features from the files of other programs: GeoJSON, KML, zipped shapefiles. */
@NullMarked
package plumbrow.documents.map;

import org.jspecify.annotations.NullMarked;
