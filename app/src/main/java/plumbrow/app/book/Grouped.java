package plumbrow.app.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Rows that belong under other rows, gathered by what they belong to; the order of entry is kept. */
final class Grouped {
    private Grouped() {}

    static <K, R> Map<K, List<R>> by(Function<R, K> owner, List<R> rows) {
        return rows.stream().collect(Collectors.groupingBy(owner, LinkedHashMap::new, Collectors.toList()));
    }
}
