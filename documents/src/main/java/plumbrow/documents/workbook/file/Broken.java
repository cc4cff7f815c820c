package plumbrow.documents.workbook.file;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import plumbrow.documents.workbook.form.Objections;

/** Says in a person's words why a spreadsheet file could not be unpacked or parsed. */
final class Broken {
    private static final Logger LOG = LoggerFactory.getLogger(Broken.class);

    private Broken() {}

    static void object(String place, Throwable reason, Objections objections) {
        LOG.debug("{} could not be read", place, reason);
        if (says(reason, "zip bomb") || says(reason, "too many files") || says(reason, "exceeds the max")) {
            objections.at(
                    place,
                    0,
                    "",
                    "a file that unpacks to far more than it should (a zip bomb)",
                    "a workbook of one season");
        } else if (says(reason, "doctype")) {
            objections.at(
                    place,
                    0,
                    "",
                    "XML with a document type, which could draw in other files",
                    "a workbook saved by a spreadsheet program");
        } else if (says(reason, "odf") || says(reason, "opendocument")) {
            objections.at(place, 0, "", "an OpenDocument file", "an XLSX workbook: save it again as XLSX");
        } else {
            objections.at(
                    place,
                    0,
                    "",
                    "a broken or cut-off file",
                    "a workbook saved by a spreadsheet program; open it there and save it again as XLSX");
        }
    }

    private static boolean says(Throwable reason, String words) {
        for (@Nullable Throwable each = reason; each != null; each = each.getCause()) {
            if (String.valueOf(each.getMessage()).toLowerCase(Locale.ROOT).contains(words)) {
                return true;
            }
        }
        return false;
    }
}
