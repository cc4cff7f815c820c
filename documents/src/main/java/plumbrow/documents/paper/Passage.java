package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Running text that remembers where each of its words stands.
 *
 * Lines follow each other with a blank; a word broken at the end of a line is whole again. A tab stands between cells of
 * different columns.
 */
public final class Passage {
    private static final Pattern BROKEN = Pattern.compile(".*[\\p{L}\\d][-‐\u00ad]");
    private static final Pattern GOES_ON = Pattern.compile("[\\p{L}\\d].*", Pattern.DOTALL);
    private static final Pattern SMALL = Pattern.compile("\\p{Ll}.*", Pattern.DOTALL);
    private static final Pattern HOLDS_DIGIT_OR_SLASH = Pattern.compile(".*[\\d/].*");

    /** First parts that keep their hyphen: self-contained, non-combustible, water-soluble. */
    private static final Pattern KEEPS_HYPHEN =
            Pattern.compile("(?i).*\\b(?:self|non|well|half|long|short|first|air|eye|skin|water|fire|co|re|post|pre)-");

    private final String text;
    private final List<Piece> pieces;

    /** A word and the stretch of text it takes: from (inclusive) to (exclusive). */
    private record Piece(int page, Word word, int from, int to) {}

    private Passage(String text, List<Piece> pieces) {
        this.text = text;
        this.pieces = pieces;
    }

    public String text() {
        return text;
    }

    public boolean isEmpty() {
        return pieces.isEmpty();
    }

    /** The words that the stretch touches; at least one must be. */
    public Quote quote(int from, int to) {
        List<Piece> touched = touched(from, to);
        List<Mark> marks = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        for (Piece piece : touched) {
            words.append(words.isEmpty() ? "" : " ").append(piece.word.text());
            int last = marks.size() - 1;
            if (last >= 0 && sameLine(marks.get(last), piece)) {
                marks.set(last, new Mark(piece.page, marks.get(last).box().around(piece.word.box())));
            } else {
                marks.add(new Mark(piece.page, piece.word.box()));
            }
        }
        return new Quote(words.toString(), marks);
    }

    public Quote quote() {
        return quote(0, text.length());
    }

    /** The words up to the end of the line they begin on. */
    public Passage firstLine() {
        int end = text.length();
        for (int i = 1; i < pieces.size(); i++) {
            Piece before = pieces.get(i - 1);
            Piece next = pieces.get(i);
            boolean below = next.page != before.page
                    || next.word.box().top() > before.word.box().middle();
            if (below || text.charAt(next.from - 1) == '\t') {
                end = before.to;
                break;
            }
        }
        return part(0, end);
    }

    /** The stretch as a passage of its own, without blanks at its ends. */
    public Passage part(int from, int to) {
        int start = from;
        int end = to;
        while (start < end && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        List<Piece> parts = new ArrayList<>();
        for (Piece piece : touched(start, end)) {
            parts.add(new Piece(
                    piece.page, piece.word, Math.max(0, piece.from - start), Math.min(end, piece.to) - start));
        }
        return new Passage(text.substring(start, end), parts);
    }

    public Passage from(int start) {
        return part(start, text.length());
    }

    /** Pieces follow each other, so the first one touched is found by halving. */
    private List<Piece> touched(int from, int to) {
        int low = 0;
        int high = pieces.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (pieces.get(middle).to > from) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        int end = low;
        while (end < pieces.size() && pieces.get(end).from < to) {
            end++;
        }
        return pieces.subList(low, end);
    }

    private static boolean sameLine(Mark mark, Piece piece) {
        Box box = piece.word.box();
        return mark.page() == piece.page
                && mark.box().top() < box.middle()
                && mark.box().bottom() > box.middle()
                && box.left() >= mark.box().left();
    }

    @Override
    public String toString() {
        return text;
    }

    /** Puts a passage together from cells. */
    public static final class Builder {
        private final StringBuilder text = new StringBuilder();
        private final List<Piece> pieces = new ArrayList<>();

        /** Adds a cell that goes on where the last one ended. */
        public Builder line(int page, Cell cell) {
            return line(Passage.of(page, cell));
        }

        /** Adds a cell of another column. */
        public Builder cell(int page, Cell cell) {
            return cell(Passage.of(page, cell));
        }

        /** Adds text that goes on where the last one ended. */
        public Builder line(Passage passage) {
            return add(passage, ' ');
        }

        /** Adds text of another column. */
        public Builder cell(Passage passage) {
            return add(passage, '\t');
        }

        /** Adds text of the next line, and keeps the line's end. */
        public Builder newLine(Passage passage) {
            return add(passage, '\n');
        }

        private Builder add(Passage passage, char separator) {
            if (passage.isEmpty()) {
                return this;
            }
            join(passage.text, separator);
            int start = text.length();
            text.append(passage.text);
            for (Piece piece : passage.pieces) {
                pieces.add(new Piece(piece.page, piece.word, start + piece.from, start + piece.to));
            }
            return this;
        }

        private void join(String next, char separator) {
            if (pieces.isEmpty()) {
                return;
            }
            int last = pieces.size() - 1;
            Piece piece = pieces.get(last);
            String before = piece.word.text();
            boolean newLine = separator != '\t' && lineEnded(piece);
            if (newLine
                    && BROKEN.matcher(before).matches()
                    && GOES_ON.matcher(next).matches()) {
                boolean whole = HOLDS_DIGIT_OR_SLASH.matcher(before).matches()
                        || !SMALL.matcher(next).matches();
                if (!whole && !KEEPS_HYPHEN.matcher(before).matches()) {
                    text.setLength(text.length() - 1);
                    pieces.set(last, new Piece(piece.page, piece.word, piece.from, piece.to - 1));
                }
                return;
            }
            text.append(separator);
        }

        private boolean lineEnded(Piece piece) {
            return ended == pieces.size() && piece.to == text.length();
        }

        private int ended;

        /** Says that the line is at its end: a hyphen there may be one of a broken word. */
        public Builder endLine() {
            ended = pieces.size();
            return this;
        }

        public boolean isEmpty() {
            return pieces.isEmpty();
        }

        public Passage build() {
            return new Passage(text.toString(), List.copyOf(pieces));
        }
    }

    /** A cell alone. */
    public static Passage of(int page, Cell cell) {
        StringBuilder text = new StringBuilder();
        List<Piece> pieces = new ArrayList<>();
        for (Word word : cell.words()) {
            text.append(text.isEmpty() ? "" : " ");
            int from = text.length();
            text.append(word.text());
            pieces.add(new Piece(page, word, from, text.length()));
        }
        return new Passage(text.toString(), List.copyOf(pieces));
    }

    /** The cells of a row, with tabs between. */
    public static Passage of(Row row) {
        Builder builder = new Builder();
        row.cells().forEach(cell -> builder.cell(row.page(), cell));
        return builder.build();
    }
}
