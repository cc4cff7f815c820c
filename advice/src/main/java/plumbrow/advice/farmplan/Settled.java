package plumbrow.advice.farmplan;

import java.util.HashMap;
import java.util.Map;

/** Which options and tiers are settled to be taken or left on a branch. */
record Settled(Map<Long, Word> options, Map<Long, Word> tiers) {
    private static final long ROOM = 1_000_000;

    /** Nothing settled. */
    static final Settled NOTHING = new Settled(Map.of(), Map.of());

    enum Word {
        OPEN,
        TAKEN,
        LEFT
    }

    Settled {
        options = Map.copyOf(options);
        tiers = Map.copyOf(tiers);
    }

    Word option(int place, int option) {
        return options.getOrDefault(key(place, option), Word.OPEN);
    }

    Word tier(int good, int tier) {
        return tiers.getOrDefault(key(good, tier), Word.OPEN);
    }

    Settled withOption(int place, int option, Word word) {
        return new Settled(with(options, key(place, option), word), tiers);
    }

    Settled withTier(int good, int tier, Word word) {
        return new Settled(options, with(tiers, key(good, tier), word));
    }

    static long key(int first, int second) {
        return first * ROOM + second;
    }

    private static Map<Long, Word> with(Map<Long, Word> words, long key, Word word) {
        Map<Long, Word> more = new HashMap<>(words);
        more.put(key, word);
        return more;
    }
}
