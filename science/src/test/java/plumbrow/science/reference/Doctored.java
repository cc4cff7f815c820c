package plumbrow.science.reference;

import de.siegmar.fastcsv.reader.CsvReader;
import java.util.ArrayList;
import java.util.List;

/** Copies of the files with something put wrong. */
final class Doctored {
    private Doctored() {}

    static DataReport check(ReferenceSet set, String text) {
        return DataCheck.of(file -> file.equals(set.file()) ? text : Packed.text(file), set);
    }

    static List<String> cells(String line) {
        return CsvReader.builder().ofCsvRecord(line).stream()
                .findFirst()
                .orElseThrow()
                .getFields();
    }

    static String line(List<String> cells, int column, String text) {
        List<String> quoted = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            quoted.add('"' + (i == column ? text : cells.get(i)).replace("\"", "\"\"") + '"');
        }
        return String.join(",", quoted);
    }

    static String with(List<String> lines, int at, String line) {
        List<String> copy = new ArrayList<>(lines);
        copy.set(at, line);
        return String.join("\n", copy) + "\n";
    }
}
