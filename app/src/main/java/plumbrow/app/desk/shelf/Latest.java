package plumbrow.app.desk.shelf;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;

/** The last answers, as many as there is room for; safe for several threads. */
final class Latest<K, V> {
    private final Map<K, V> kept = new LinkedHashMap<>(16, .75f, true);
    private final ToLongFunction<V> size;
    private final long room;
    private long used;

    /**
     * Keeps so much.
     *
     * @param room how much may be kept, in whatever {@code size} counts
     */
    Latest(long room, ToLongFunction<V> size) {
        this.room = room;
        this.size = size;
    }

    V get(K key, Supplier<V> made) {
        synchronized (kept) {
            V known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        V fresh = made.get();
        synchronized (kept) {
            V before = kept.put(key, fresh);
            used += size.applyAsLong(fresh) - (before == null ? 0 : size.applyAsLong(before));
            var oldest = kept.entrySet().iterator();
            while (used > room && kept.size() > 1) {
                used -= size.applyAsLong(oldest.next().getValue());
                oldest.remove();
            }
        }
        return fresh;
    }
}
