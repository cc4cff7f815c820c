package plumbrow.documents.binder;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.WholeFile;

/**
 * The printed packet of a season: what is advised for each field, its odds, what stands in the way, what would change
 * it, and every line of the arithmetic.
 *
 * <p>Dates in the file are those of the season and not of the clock: the same season and advice give the same pages.
 */
public final class Binder {
    static {
        PrinterLog.install();
    }

    private Binder() {}

    /**
     * Writes the binder as PDF, in place of an older one of that name.
     *
     * @throws FileTrouble if the file can't be written; an older one is then still as it was
     */
    public static void write(Season season, Advice advice, Path pdf) {
        String pages = Typeface.printable(BinderPages.html(season, advice));
        WholeFile.write(pdf, out -> print(pages, advice, out));
    }

    private static void print(String pages, Advice advice, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument();
                PdfBoxRenderer renderer = renderer(pages, document, out)) {
            renderer.createPDFWithoutClosing();
            describe(document.getDocumentInformation(), advice);
            document.setDocumentId((long) Objects.hash(advice.year(), advice.seed(), pages.hashCode()));
            document.save(out);
        }
    }

    private static PdfBoxRenderer renderer(String pages, PDDocument document, OutputStream out) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        Typeface.embed(builder, document);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useUnicodeLineBreaker(new WordBreaks());
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Plumbrow");
        builder.withHtmlContent(pages, null);
        builder.toStream(out);
        return builder.buildPdfRenderer();
    }

    private static void describe(PDDocumentInformation about, Advice advice) {
        Calendar day = GregorianCalendar.from(advice.asOf().atStartOfDay(ZoneOffset.UTC));
        about.setCreator("Plumbrow");
        about.setCreationDate(day);
        about.setModificationDate(day);
    }
}
