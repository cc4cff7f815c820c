package plumbrow.app.desk.rows;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.season.Season;

/** Workbooks that were read and wait for somebody to agree to what they would change. Safe for several threads. */
public final class IncomingWorkbooks {
    private static final int MOST = 4;
    private static final int BYTES = 12;

    private final SecureRandom random = new SecureRandom();
    private final Map<String, Season> waiting = new LinkedHashMap<>();

    /** The word under which the season is found again. */
    public synchronized String hold(Season season) {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        String word = HexFormat.of().formatHex(bytes);
        waiting.put(word, season);
        if (waiting.size() > MOST) {
            waiting.remove(waiting.keySet().iterator().next());
        }
        return word;
    }

    synchronized Optional<Season> find(String word) {
        return Optional.ofNullable(waiting.get(word));
    }

    synchronized void forget(String word) {
        waiting.remove(word);
    }
}
