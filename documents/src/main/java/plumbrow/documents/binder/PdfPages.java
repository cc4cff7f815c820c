package plumbrow.documents.binder;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Sets pages of XHTML as PDF. The same pages and day give the same file. */
final class PdfPages {
    static {
        PrinterLog.install();
    }

    private PdfPages() {}

    /** A printed file and how many pages it has. */
    @SuppressWarnings("ArrayRecordComponent") // made once and written out
    record Printed(byte[] file, int pages) {}

    /**
     * Prints.
     *
     * @param xhtml of characters that the face holds, see {@link Typeface#printable}
     * @param day the day in the file
     * @param number by which readers tell files apart
     */
    static Printed print(String xhtml, LocalDate day, long number) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument();
                PdfBoxRenderer renderer = renderer(xhtml, document, out)) {
            renderer.createPDFWithoutClosing();
            describe(document.getDocumentInformation(), day);
            document.setDocumentId(number);
            document.save(out);
            return new Printed(out.toByteArray(), document.getNumberOfPages());
        }
    }

    private static PdfBoxRenderer renderer(String xhtml, PDDocument document, OutputStream out) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        Typeface.embed(builder, document);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useUnicodeLineBreaker(new WordBreaks());
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Plumbrow");
        builder.withHtmlContent(xhtml, null);
        builder.toStream(out);
        return builder.buildPdfRenderer();
    }

    private static void describe(PDDocumentInformation about, LocalDate day) {
        Calendar start = GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC));
        about.setCreator("Plumbrow");
        about.setCreationDate(start);
        about.setModificationDate(start);
    }
}
