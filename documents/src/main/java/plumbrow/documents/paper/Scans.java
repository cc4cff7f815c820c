package plumbrow.documents.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/** The pages of a PDF that are pictures, or whose text is no language: what an OCR made out stands for them. */
final class Scans {
    /** A sheet has 20 pages at most; each takes seconds. */
    private static final int MOST_PAGES = 60;

    private final PDDocument document;
    private final @Nullable OpticalReader reader;
    private final List<Integer> pages = new ArrayList<>();
    private final List<Integer> garbled = new ArrayList<>();
    private final List<Optical.Doubt> doubts = new ArrayList<>();
    private final TreeMap<Integer, String> unread = new TreeMap<>();
    private boolean lacking;
    private boolean tooMany;

    Scans(PDDocument document, @Nullable OpticalReader reader) {
        this.document = document;
        this.reader = reader;
    }

    /** The rows of a page: its own where its text is language, else what was made out. */
    List<Row> rows(int page, PdfGlyphs.Letters letters, List<Row> own) throws IOException {
        boolean language = TextLayer.isLanguage(own);
        if (!language) {
            garbled.add(page);
        }
        if (!own.isEmpty() && language && !letters.hidden()) {
            return own;
        }
        if (own.isEmpty() || !language) {
            return made(page);
        }
        // Letters that nobody sees lie over a picture: what another machine made out, nobody knows how surely.
        pages.add(page);
        doubts.addAll(against(page, own));
        return own;
    }

    private List<Row> made(int page) throws IOException {
        OpticalReader eye = eye();
        if (eye == null) {
            return List.of();
        }
        try {
            eye.page(page);
            ScannedPage scanned = ScannedPage.read(document, page, eye);
            if (!scanned.isEmpty()) {
                pages.add(page);
                doubts.addAll(scanned.doubts());
            }
            return Lines.rows(page, scanned.glyphs());
        } catch (PaperTrouble trouble) {
            unread.put(page, String.valueOf(trouble.getMessage()));
            return List.of();
        }
    }

    /** Numbers of another machine that this one does not make out likewise; all where it makes out nothing. */
    private List<Optical.Doubt> against(int page, List<Row> own) throws IOException {
        OpticalReader eye = eye();
        try {
            return ScannedPage.against(document, page, eye, own);
        } catch (PaperTrouble trouble) {
            return ScannedPage.against(document, page, null, own);
        }
    }

    private @Nullable OpticalReader eye() {
        OpticalReader eye = reader;
        if (eye == null) {
            return null;
        }
        if (!eye.ready()) {
            lacking = true;
            return null;
        }
        if (pages.size() > MOST_PAGES) {
            tooMany = true;
            return null;
        }
        return eye;
    }

    Optical found() {
        return new Optical(pages, doubts);
    }

    /** What a person should know, a sentence each. */
    List<String> notices() {
        List<String> notices = new ArrayList<>();
        if (!garbled.isEmpty()) {
            notices.add("The text that the file carries for page " + numbers(garbled)
                    + " is no language, as where its letters are mixed up: it is not read"
                    + (pages.containsAll(garbled) ? "; the picture of the page is." : "."));
        }
        if (lacking && reader != null) {
            notices.add(reader.lacking());
        }
        if (!pages.isEmpty()) {
            notices.add("Page " + numbers(pages)
                    + (pages.size() == 1 ? " is a picture and was" : " are pictures and were")
                    + " read by OCR. What it says counts only once a person has held it against the page.");
        }
        unread.forEach(
                (page, why) -> notices.add("Page " + page + " is a picture that could not be read: " + why + "."));
        if (tooMany) {
            notices.add("Only the first " + MOST_PAGES + " scanned pages were read.");
        }
        return notices;
    }

    private static String numbers(List<Integer> pages) {
        return pages.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
