package plumbrow.documents.map;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The attributes of a shapefile: a dBASE III table. Every value is read as the text that stands there. */
final class DbfTable {
    private static final int MOST_COLUMNS = 255;
    private static final byte END_OF_COLUMNS = 0x0D;

    private final List<Map<String, String>> rows = new ArrayList<>();

    private record Column(String name, int length) {}

    DbfTable(byte[] content, Charset charset) {
        ByteBuffer in = ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN);
        int count = in.getInt(4);
        int start = in.getShort(8) & 0xFFFF;
        int width = in.getShort(10) & 0xFFFF;
        if (count < 0 || count > ShpShapes.MOST_RECORDS || (long) start + (long) count * width > content.length) {
            throw new MapTrouble("its table of attributes (.dbf) says it has " + count + " rows, which is not so");
        }
        List<Column> columns = columns(in, start, charset);
        for (int row = 0; row < count; row++) {
            int at = start + row * width + 1;
            Map<String, String> cells = new LinkedHashMap<>();
            for (Column column : columns) {
                cells.put(
                        column.name(),
                        new String(content, at, column.length(), charset)
                                .replace("\0", "")
                                .strip());
                at += column.length();
            }
            rows.add(cells);
        }
    }

    List<Map<String, String>> rows() {
        return rows;
    }

    private static List<Column> columns(ByteBuffer in, int end, Charset charset) {
        List<Column> columns = new ArrayList<>();
        for (int at = 32; at + 32 <= end && in.get(at) != END_OF_COLUMNS; at += 32) {
            byte[] name = new byte[11];
            in.get(at, name);
            String text = new String(name, charset);
            int zero = text.indexOf('\0');
            columns.add(new Column((zero < 0 ? text : text.substring(0, zero)).strip(), in.get(at + 16) & 0xFF));
            if (columns.size() > MOST_COLUMNS) {
                throw new MapTrouble("its table of attributes (.dbf) has more than 255 columns");
            }
        }
        return columns;
    }
}
