package plumbrow.app.book;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Who changes a season, and by which door.
 *
 * @param who name of the person; null where nobody says, which stands for the season's adviser
 * @param why the reason in his own words, may be empty
 * @param way the door
 * @param at the moment; null where nobody says
 */
public record By(
        @Nullable String who, String why, Way way, @Nullable Instant at) {
    /** The door by which a change came. */
    public enum Way {
        DESK("desk"),
        COMMAND("command"),
        /** Another program, over the web interface. */
        PROGRAM("program"),
        WORKBOOK("workbook"),
        UNDO("undo"),
        REDO("redo");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        /** As the book keeps it. */
        public String word() {
            return word;
        }

        static Way of(String word) {
            for (Way way : values()) {
                if (way.word.equals(word)) {
                    return way;
                }
            }
            throw new BookException("The book is damaged: nothing changes a season by '" + word + "'.");
        }
    }

    public By {
        who = who == null || who.isBlank() ? null : who.strip();
        why = why.strip();
    }

    /** Of nobody in particular. */
    static By unsaid(@Nullable Instant at) {
        return new By(null, "", Way.DESK, at);
    }
}
