/** What a farm has to work with: machines and hours, money, and what it can buy at which price. */
@NullMarked
package plumbrow.advice.means;

import org.jspecify.annotations.NullMarked;
