package plumbrow.documents.apart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Headings of a table of points by key, as they go to the other process. */
record MachineColumns(List<String> keys, List<String> headings) {
    static MachineColumns of(Map<String, String> columns) {
        return new MachineColumns(new ArrayList<>(columns.keySet()), new ArrayList<>(columns.values()));
    }

    Map<String, String> byKey() {
        Map<String, String> columns = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(keys.size(), headings.size()); i++) {
            columns.put(keys.get(i), headings.get(i));
        }
        return columns;
    }
}
