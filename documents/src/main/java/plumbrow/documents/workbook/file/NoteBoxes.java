package plumbrow.documents.workbook.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Makes the boxes of the notes large enough to be read: the spreadsheet library draws all of them two rows high. */
final class NoteBoxes {
    private static final int COLUMNS = 3;
    private static final int ROWS = 15;

    /** First column of a note's box, then offset, row, offset, and the same for its other corner. */
    private static final Pattern ANCHOR = Pattern.compile("<x:Anchor>(\\d+),\\d+,(\\d+),[\\d,]*</x:Anchor>");

    private NoteBoxes() {}

    /** Copies a spreadsheet file, the boxes enlarged. */
    static void enlarge(Path spreadsheet, Path target) throws IOException {
        try (ZipFile in = new ZipFile(spreadsheet.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(target))) {
            for (ZipEntry part : Collections.list(in.entries())) {
                out.putNextEntry(new ZipEntry(part.getName()));
                try (InputStream data = in.getInputStream(part)) {
                    byte[] content = data.readAllBytes();
                    out.write(part.getName().endsWith(".vml") ? enlarged(content) : content);
                }
            }
        }
    }

    private static byte[] enlarged(byte[] drawing) {
        String text = new String(drawing, StandardCharsets.UTF_8);
        return ANCHOR.matcher(text).replaceAll(NoteBoxes::box).getBytes(StandardCharsets.UTF_8);
    }

    /** From just right of the column's name, so that the name stays in sight. */
    private static String box(MatchResult anchor) {
        int column = Integer.parseInt(anchor.group(1)) + 1;
        int row = Integer.parseInt(anchor.group(2));
        return "<x:Anchor>%d,10,%d,4,%d,10,%d,4</x:Anchor>".formatted(column, row, column + COLUMNS, row + ROWS);
    }
}
