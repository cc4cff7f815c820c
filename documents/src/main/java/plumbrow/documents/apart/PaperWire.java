package plumbrow.documents.apart;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.paper.Box;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Page;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.Row;
import plumbrow.documents.paper.Word;

/**
 * Paper as bytes between the two processes: counts before lists, text in UTF-8, places as floats. What comes in is not
 * trusted: no count or length beyond a bound is believed.
 */
final class PaperWire {
    private static final int MOST = 4_000_000;
    private static final int LONGEST_TEXT = 1 << 20;

    private PaperWire() {}

    static void write(Paper paper, DataOutputStream out) throws IOException {
        out.writeUTF(paper.kind().name());
        out.writeInt(paper.pages().size());
        for (Page page : paper.pages()) {
            out.writeInt(page.number());
            out.writeDouble(page.width());
            out.writeDouble(page.height());
            rows(page.rows(), out);
        }
        rows(paper.heads(), out);
        out.writeInt(paper.notices().size());
        for (String notice : paper.notices()) {
            text(notice, out);
        }
    }

    private static void rows(List<Row> rows, DataOutputStream out) throws IOException {
        out.writeInt(rows.size());
        for (Row row : rows) {
            out.writeInt(row.page());
            out.writeInt(row.cells().size());
            for (Cell cell : row.cells()) {
                out.writeInt(cell.words().size());
                for (Word word : cell.words()) {
                    text(word.text(), out);
                    Box box = word.box();
                    out.writeFloat((float) box.left());
                    out.writeFloat((float) box.top());
                    out.writeFloat((float) box.right());
                    out.writeFloat((float) box.bottom());
                }
            }
        }
    }

    static void text(String text, DataOutputStream out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static Paper read(DataInputStream in) throws IOException {
        Paper.Kind kind = kind(in.readUTF());
        List<Page> pages = new ArrayList<>();
        int pageCount = count(in);
        for (int i = 0; i < pageCount; i++) {
            pages.add(new Page(in.readInt(), in.readDouble(), in.readDouble(), rows(in)));
        }
        List<Row> heads = rows(in);
        List<String> notices = new ArrayList<>();
        int noticeCount = count(in);
        for (int i = 0; i < noticeCount; i++) {
            notices.add(text(in));
        }
        return new Paper(kind, pages, heads, notices);
    }

    private static Paper.Kind kind(String name) throws IOException {
        for (Paper.Kind kind : Paper.Kind.values()) {
            if (kind.name().equals(name)) {
                return kind;
            }
        }
        throw new IOException("no kind of paper: " + name);
    }

    private static List<Row> rows(DataInputStream in) throws IOException {
        List<Row> rows = new ArrayList<>();
        int rowCount = count(in);
        for (int i = 0; i < rowCount; i++) {
            int page = in.readInt();
            List<Cell> cells = new ArrayList<>();
            int cellCount = atLeastOne(in);
            for (int j = 0; j < cellCount; j++) {
                List<Word> words = new ArrayList<>();
                int wordCount = atLeastOne(in);
                for (int k = 0; k < wordCount; k++) {
                    words.add(new Word(
                            text(in), new Box(in.readFloat(), in.readFloat(), in.readFloat(), in.readFloat())));
                }
                cells.add(new Cell(words));
            }
            rows.add(new Row(page, cells));
        }
        return rows;
    }

    private static int atLeastOne(DataInputStream in) throws IOException {
        int count = count(in);
        if (count == 0) {
            throw new IOException("an empty row");
        }
        return count;
    }

    private static int count(DataInputStream in) throws IOException {
        int count = in.readInt();
        if (count < 0 || count > MOST) {
            throw new IOException("a count of " + count);
        }
        return count;
    }

    static String text(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > LONGEST_TEXT) {
            throw new IOException("a text of " + length + " bytes");
        }
        return new String(in.readNBytes(length), StandardCharsets.UTF_8);
    }
}
