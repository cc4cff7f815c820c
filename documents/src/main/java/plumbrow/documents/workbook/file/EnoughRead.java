package plumbrow.documents.workbook.file;

import org.xml.sax.SAXException;

/** Stops the reading of a sheet that is too large. */
final class EnoughRead extends SAXException {
    private static final long serialVersionUID = 1;
}
