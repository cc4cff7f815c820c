package plumbrow.app.desk.calendar;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The changes kept last, each by a number of its own, so that nobody undoes what another kept. Safe for several threads. */
final class Kept {
    private static final int MOST = 50;

    private final Map<String, ProgramKept> changes = new LinkedHashMap<>();
    private int last;

    /** The number under which the change is found again. */
    synchronized String remember(ProgramKept change) {
        last++;
        changes.put(String.valueOf(last), change);
        if (changes.size() > MOST) {
            changes.remove(changes.keySet().iterator().next());
        }
        return String.valueOf(last);
    }

    synchronized Optional<ProgramKept> find(String number) {
        return Optional.ofNullable(changes.get(number));
    }

    synchronized void forget(String number) {
        changes.remove(number);
    }
}
