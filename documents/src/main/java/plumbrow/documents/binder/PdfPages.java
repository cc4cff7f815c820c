package plumbrow.documents.binder;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** Sets pages of XHTML as PDF. The same pages and day give the same file. */
final class PdfPages {
    static {
        PrinterLog.install();
    }

    private PdfPages() {}

    /**
     * A printed file and how many pages it has.
     *
     * @param starts page of each bookmark, from 0, in their order
     */
    @SuppressWarnings("ArrayRecordComponent") // made once and written out
    record Printed(byte[] file, int pages, List<Integer> starts) {}

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
            return new Printed(out.toByteArray(), document.getNumberOfPages(), starts(document));
        }
    }

    private static List<Integer> starts(PDDocument document) throws IOException {
        List<Integer> starts = new ArrayList<>();
        PDDocumentOutline outline = document.getDocumentCatalog().getDocumentOutline();
        if (outline != null) {
            for (PDOutlineItem item : outline.children()) {
                PDPage page = item.findDestinationPage(document);
                starts.add(page == null ? 0 : document.getPages().indexOf(page));
            }
        }
        return List.copyOf(starts);
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
