/**
 * Reading of files from outside in a process of its own, with limits that hold: see docs/decisions/0007.
 */
@NullMarked
package plumbrow.documents.apart;

import org.jspecify.annotations.NullMarked;
