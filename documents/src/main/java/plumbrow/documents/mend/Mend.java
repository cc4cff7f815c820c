package plumbrow.documents.mend;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.documents.label.LabelKind;

/**
 * What a person says of a value that was read on a paper, or of one that wasn't. Only ever added to a book; of several about the
 * same reading the last counts.
 *
 * @param sha256 checksum of the paper's file
 * @param about what it is of: the title of a kind of value, or {@link #BELONGS_TO}
 * @param was the reading in words, as he saw it; empty where there was none
 * @param words the paper's very words; empty where there were none
 * @param page he looked at, from 1
 * @param value what he typed; empty where nothing was
 */
public record Mend(
        String sha256,
        String about,
        Verdict verdict,
        String was,
        String words,
        int page,
        String value,
        String who,
        Instant when) {
    /** That a paper belongs to a product of the shelf; the value is its name, the words its registration number. */
    public static final String BELONGS_TO = "Belongs to";

    /** Titles that books of before have, with what they are called now. */
    private static final Map<String, String> FORMERLY = Map.of("Re-entry interval", LabelKind.REENTRY.title());

    public Mend {
        about = FORMERLY.getOrDefault(about, about);
    }

    /** What he found. */
    public enum Verdict {
        /** The page says so. */
        CONFIRMED("confirmed"),
        /** The page says otherwise. */
        TYPED_OVER("typed over"),
        /** The page says something that was not read. */
        ADDED("added"),
        /** The page doesn't say it. */
        STRUCK("struck"),
        /** An earlier word is taken back. */
        TAKEN_BACK("taken back");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        public static Optional<Verdict> of(String word) {
            return Arrays.stream(values())
                    .filter(each -> each.word.equals(word))
                    .findFirst();
        }
    }

    /** Names the reading among all of the paper. */
    Key key() {
        if (about.equals(BELONGS_TO)) {
            return new Key(about, "", "");
        }
        return verdict == Verdict.ADDED ? new Key(about, value, "") : new Key(about, was, words);
    }

    /** A reading: what of, in which words, from which of the paper's words; of one that was added the words typed first. */
    record Key(String about, String was, String words) {}

    /** The last word on each reading, where it was not taken back. */
    static Map<Key, Mend> last(List<Mend> mends) {
        Map<Key, Mend> last = new LinkedHashMap<>();
        for (Mend mend : mends) {
            if (mend.verdict == Verdict.TAKEN_BACK) {
                last.remove(mend.key());
            } else {
                last.put(mend.key(), mend);
            }
        }
        return last;
    }

    public LocalDate day() {
        return when.atZone(ZoneOffset.UTC).toLocalDate();
    }

    /** "typed over by R. Voss on 2026-11-30, page 2; read: 422 %". */
    public String said() {
        return verdict.word + " by " + who + " on " + day() + ", page " + page
                + (verdict == Verdict.TYPED_OVER && !was.isEmpty() ? "; read: " + was : "");
    }
}
