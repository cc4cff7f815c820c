package plumbrow.documents.ocr;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.paper.OpticalWord;

/**
 * What tesseract says of a picture, as tab-separated lines: level, page, block, paragraph, line, word, left, top, width, height,
 * confidence, text. Words are of level 5. A line that is none is passed over.
 */
final class TesseractLines {
    private static final int COLUMNS = 12;
    private static final String WORD = "5";
    private static final int MOST_WORDS = 20_000;
    private static final int LONGEST_WORD = 200;

    private TesseractLines() {}

    static List<OpticalWord> read(String text) {
        List<OpticalWord> words = new ArrayList<>();
        String lineBefore = "";
        int line = 0;
        for (String row : text.split("\n", -1)) {
            String[] cells = row.split("\t", -1);
            if (cells.length < COLUMNS || !cells[0].equals(WORD) || words.size() >= MOST_WORDS) {
                continue;
            }
            String here = cells[2] + " " + cells[3] + " " + cells[4];
            line += here.equals(lineBefore) ? 0 : 1;
            lineBefore = here;
            word(cells, line, words);
        }
        return words;
    }

    private static void word(String[] cells, int line, List<OpticalWord> words) {
        String text = cells[COLUMNS - 1].strip().replaceAll("\\p{Cntrl}|\\s", "");
        try {
            int left = Integer.parseInt(cells[6]);
            int top = Integer.parseInt(cells[7]);
            int width = Integer.parseInt(cells[8]);
            int height = Integer.parseInt(cells[9]);
            double confidence = Double.parseDouble(cells[10]);
            boolean placed = left >= 0 && top >= 0 && width > 0 && height > 0 && left < 100_000 && top < 100_000;
            if (!text.isEmpty() && text.length() <= LONGEST_WORD && placed && width < 100_000 && height < 100_000) {
                words.add(new OpticalWord(line, text, left, top, left + width, top + height, confidence));
            }
        } catch (NumberFormatException broken) {
            return; // no word
        }
    }
}
