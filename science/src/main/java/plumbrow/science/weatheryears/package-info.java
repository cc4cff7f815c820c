/** Weather from year to year: days of seasons as likely as each other, made from a place's normals, and days fit for field work. */
@NullMarked
package plumbrow.science.weatheryears;

import org.jspecify.annotations.NullMarked;
