package plumbrow.documents.workbook.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The texts that the cells of a spreadsheet file share, by number. Reading aids for other scripts are left out. */
final class SharedText extends DefaultHandler {
    private final List<String> texts = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private boolean inText;
    private boolean inReadingAid;

    Optional<String> get(String number) {
        try {
            return Optional.of(texts.get(Integer.parseInt(number)));
        } catch (NumberFormatException | IndexOutOfBoundsException none) {
            return Optional.empty();
        }
    }

    @Override
    public void startElement(String uri, String name, String prefixed, Attributes attributes) {
        switch (name) {
            case "si" -> text.setLength(0);
            case "t" -> inText = true;
            case "rPh" -> inReadingAid = true;
            default -> {}
        }
    }

    @Override
    public void endElement(String uri, String name, String prefixed) {
        switch (name) {
            case "si" -> texts.add(text.toString());
            case "t" -> inText = false;
            case "rPh" -> inReadingAid = false;
            default -> {}
        }
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        // One more than a cell may hold, so that the cell is refused rather than cut.
        if (inText && !inReadingAid && text.length() <= Limits.CELL_CHARACTERS) {
            text.append(characters, start, Math.min(length, Limits.CELL_CHARACTERS + 1 - text.length()));
        }
    }
}
