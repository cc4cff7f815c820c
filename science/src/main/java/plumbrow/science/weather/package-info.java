/** What the air and the sun say about spraying: humidity, wet bulb, wind at the boom, sunrise and sunset, inversions. */
@NullMarked
package plumbrow.science.weather;

import org.jspecify.annotations.NullMarked;
