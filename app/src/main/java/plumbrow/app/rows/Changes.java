package plumbrow.app.rows;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.By;
import plumbrow.app.book.SeasonChange;

/** Which changes of a season are meant. */
public final class Changes {
    private Changes() {}

    /** Those made since a day, in the time of this machine; all of them for null. */
    public static List<SeasonChange> since(List<SeasonChange> changes, @Nullable LocalDate day) {
        if (day == null) {
            return changes;
        }
        Instant from = day.atStartOfDay(ZoneId.systemDefault()).toInstant();
        return changes.stream()
                .filter(change -> change.at() != null && !change.at().isBefore(from))
                .toList();
    }

    /** The number of the latest change that stands and is no undo. */
    public static Optional<Integer> toUndo(List<SeasonChange> changes) {
        return latest(changes, false);
    }

    /** The number of the latest undo that stands. */
    public static Optional<Integer> toRedo(List<SeasonChange> changes) {
        return latest(changes, true);
    }

    private static Optional<Integer> latest(List<SeasonChange> changes, boolean undo) {
        return changes.stream()
                .filter(change -> !change.takenBack()
                        && (!change.rows().isEmpty() || change.began())
                        && (change.way() == By.Way.UNDO) == undo
                        && (undo || change.way() != By.Way.REDO))
                .map(SeasonChange::number)
                .reduce((one, next) -> next);
    }
}
