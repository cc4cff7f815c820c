@NullMarked
package plumbrow.documents.ocr;

import org.jspecify.annotations.NullMarked;
