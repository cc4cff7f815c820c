/** Reading of pictures by the program tesseract, as a process of its own. */
@NullMarked
package plumbrow.documents.ocr;

import org.jspecify.annotations.NullMarked;
