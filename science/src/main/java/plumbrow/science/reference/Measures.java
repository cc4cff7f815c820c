package plumbrow.science.reference;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Measures by their key, in their order. */
final class Measures {
    private Measures() {}

    static Map<String, Measure> byKey(Measure... measures) {
        Map<String, Measure> byKey = new LinkedHashMap<>();
        for (Measure measure : measures) {
            byKey.put(measure.key(), measure);
        }
        return Collections.unmodifiableMap(byKey);
    }
}
