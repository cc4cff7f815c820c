package plumbrow.documents.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Reads the text of a PDF where it stands. Scripts are never run, links never followed, forms never filled. */
final class PdfPaper {
    private static final Logger LOG = LoggerFactory.getLogger(PdfPaper.class);

    static {
        FontMappers.set(new OneFace());
    }

    private PdfPaper() {}

    static Paper read(
            byte[] file, String name, PaperLimits limits, Predicate<String> landmark, @Nullable OpticalReader optical) {
        try (PDDocument document = Loader.loadPDF(
                new RandomAccessReadBuffer(file), "", null, null, IOUtils.createMemoryOnlyStreamCache())) {
            return paper(document, name, limits, landmark, optical);
        } catch (InvalidPasswordException locked) {
            throw new PaperTrouble(name + " is locked with a password; expected a PDF that opens without one.", locked);
        } catch (PdfGlyphs.TooMany tooMany) {
            throw new PaperTrouble(
                    name + " holds more than " + limits.glyphs() + " letters; expected one safety sheet or label.",
                    tooMany);
        } catch (PaperTrouble said) {
            throw said;
        } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError broken) {
            LOG.debug("{} could not be read", name, broken);
            throw new PaperTrouble(
                    name + " is broken or cut off; expected a whole PDF. Fetch it again from where it came from.",
                    broken);
        }
    }

    private static Paper paper(
            PDDocument document,
            String name,
            PaperLimits limits,
            Predicate<String> landmark,
            @Nullable OpticalReader optical)
            throws IOException {
        int pages = document.getNumberOfPages();
        if (pages == 0) {
            throw new PaperTrouble(name + " has no page; expected a safety sheet or label.");
        }
        if (pages > limits.pages()) {
            throw new PaperTrouble(name + " has " + pages + " pages; expected at most " + limits.pages() + ".");
        }
        List<PdfGlyphs.Letters> letters = PdfGlyphs.of(document, limits.glyphs());
        List<Leaf> leaves = new ArrayList<>();
        Scans scans = new Scans(document, optical);
        for (int i = 0; i < letters.size(); i++) {
            List<Row> rows = Lines.rows(i + 1, letters.get(i).glyphs());
            leaves.add(leaf(document.getPage(i), letters.get(i).turn(), scans.rows(i + 1, letters.get(i), rows)));
        }
        List<String> notices = notices(document);
        notices.addAll(scans.notices());
        return Leaf.bind(Paper.Kind.PDF, leaves, notices, scans.found(), landmark);
    }

    private static Leaf leaf(PDPage page, int turn, List<Row> rows) {
        PDRectangle size = page.getCropBox();
        boolean turned = turn % 180 != 0;
        return new Leaf(turned ? size.getHeight() : size.getWidth(), turned ? size.getWidth() : size.getHeight(), rows);
    }

    private static List<String> notices(PDDocument document) {
        List<String> notices = new ArrayList<>();
        if (carriesScript(document)) {
            notices.add("The file carries a script. It was not run; what it would have shown is not here.");
        }
        if (document.getDocumentCatalog().getCOSObject().containsKey(COSName.ACRO_FORM)) {
            notices.add("The file has a form. What is filled into it may be missing here: compare with the page.");
        }
        return notices;
    }

    private static boolean carriesScript(PDDocument document) {
        PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
        if (names != null && names.getCOSObject().containsKey(COSName.getPDFName("JavaScript"))) {
            return true;
        }
        return document.getDocumentCatalog().getCOSObject().getDictionaryObject(COSName.OPEN_ACTION)
                        instanceof org.apache.pdfbox.cos.COSDictionary action
                && COSName.getPDFName("JavaScript").equals(action.getCOSName(COSName.S));
    }
}
