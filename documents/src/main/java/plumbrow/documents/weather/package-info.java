/** Reads weather that a farmer can get as files, hour by hour or day by day. What a file lacks stays unknown. */
@NullMarked
package plumbrow.documents.weather;

import org.jspecify.annotations.NullMarked;
