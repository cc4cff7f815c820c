/**
 * Values of a label as proposals that a person confirms, corrects or rejects, and the shelf with what was confirmed: see
 * docs/decisions/0009.
 */
@NullMarked
package plumbrow.documents.confirm;

import org.jspecify.annotations.NullMarked;
