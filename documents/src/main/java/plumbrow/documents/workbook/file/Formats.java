package plumbrow.documents.workbook.file;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;
import plumbrow.documents.workbook.form.Cell;

/** Which cell styles of a spreadsheet file show a number as a date or with a % sign. */
final class Formats extends DefaultHandler {
    private final Map<Integer, String> codes = new HashMap<>();
    private final List<Integer> styles = new ArrayList<>();
    private boolean inStyles;
    private boolean from1904;

    /** The cell for a number shown in a style. */
    Cell cell(double value, String style) {
        int format = format(style);
        String code = codes.getOrDefault(format, "");
        if (DateUtil.isADateFormat(format, code) && DateUtil.isValidExcelDate(value)) {
            LocalDateTime time = DateUtil.getLocalDateTime(value, from1904);
            return value == Math.rint(value)
                    ? new Cell.Day(time.toLocalDate())
                    : new Cell.Text(time.toString().replace('T', ' '));
        }
        return new Cell.Numeral(value, code.contains("%"));
    }

    private int format(String style) {
        return style.matches("\\d{1,6}") && Integer.parseInt(style) < styles.size()
                ? styles.get(Integer.parseInt(style))
                : 0;
    }

    @Override
    public void startElement(String uri, String name, String prefixed, Attributes attributes) {
        switch (name) {
            case "workbookPr" -> from1904 = List.of("1", "true").contains(text(attributes, "date1904"));
            case "numFmt" -> codes.put(number(attributes), text(attributes, "formatCode"));
            case "cellXfs" -> inStyles = true;
            case "xf" -> {
                if (inStyles) {
                    int format = number(attributes);
                    styles.add(format);
                    if (!codes.containsKey(format) && format < BuiltinFormats.getAll().length) {
                        codes.put(format, BuiltinFormats.getBuiltinFormat(format));
                    }
                }
            }
            default -> {}
        }
    }

    @Override
    public void endElement(String uri, String name, String prefixed) {
        if (name.equals("cellXfs")) {
            inStyles = false;
        }
    }

    private static int number(Attributes attributes) {
        String text = text(attributes, "numFmtId");
        return text.matches("\\d{1,6}") ? Integer.parseInt(text) : 0;
    }

    private static String text(Attributes attributes, String name) {
        String value = attributes.getValue(name);
        return value == null ? "" : value;
    }
}
