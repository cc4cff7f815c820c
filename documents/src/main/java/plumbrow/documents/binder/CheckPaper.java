package plumbrow.documents.binder;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.WholeFile;

/** The check of a farm on paper: the same findings and words as on the desk, by who is protected, worst first. */
public final class CheckPaper {
    private CheckPaper() {}

    /**
     * Writes the check as PDF, in place of an older one of that name.
     *
     * @throws FileTrouble if the file can't be written; an older one is then still as it was
     */
    public static void write(SeasonCheck check, Path pdf) {
        String pages = Typeface.printable(CheckPages.html(check));
        LocalDate day = check.season().asOf();
        WholeFile.write(
                pdf,
                out -> out.write(PdfPages.print(pages, day, Objects.hash(day, pages.hashCode()))
                        .file()));
    }
}
