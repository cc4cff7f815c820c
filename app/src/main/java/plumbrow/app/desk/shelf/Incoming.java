package plumbrow.app.desk.shelf;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.BookException;
import plumbrow.app.papers.Intake;

/**
 * Files on their way in: read one after the other beside the desk's other work, each whole or not at all. Safe for several
 * threads; files that come while others are read join them.
 */
public final class Incoming {
    /** A file as it came over the wire. */
    @SuppressWarnings("ArrayRecordComponent") // taken over and read once
    record Came(String name, byte[] content) {}

    /**
     * How far it is.
     *
     * @param of files that came
     * @param leftAlone files of other kinds in a folder, which were not looked into
     */
    public record State(Instant began, int of, List<Intake.Outcome> outcomes, int leftAlone, boolean stopped) {
        public boolean running() {
            return outcomes.size() < of;
        }
    }

    private final Function<Came, Intake.Outcome> reader;
    private final Deque<Came> waiting = new ArrayDeque<>();
    private @Nullable State state;
    private boolean working;

    Incoming(Function<Came, Intake.Outcome> reader) {
        this.reader = reader;
    }

    /** What is going on, or what came in last. */
    synchronized Optional<State> state() {
        return Optional.ofNullable(state);
    }

    /** Begins with files, or adds them to those that are being read. */
    synchronized void begin(List<Came> files, int leftAlone, Instant now) {
        State before = state;
        state = before != null && before.running()
                ? new State(
                        before.began(),
                        before.of() + files.size(),
                        before.outcomes(),
                        before.leftAlone() + leftAlone,
                        before.stopped())
                : new State(now, files.size(), List.of(), leftAlone, false);
        waiting.addAll(files);
        if (!working && !files.isEmpty()) {
            working = true;
            Thread thread = new Thread(this::work, "papers coming in");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** The files that wait are given up; the one being read is finished. */
    synchronized void stop() {
        waiting.clear();
        State now = state;
        if (now != null && now.running()) {
            int begun = now.outcomes().size() + (working ? 1 : 0);
            state = new State(now.began(), Math.min(now.of(), begun), now.outcomes(), now.leftAlone(), true);
        }
    }

    private void work() {
        while (true) {
            Came next;
            synchronized (this) {
                next = waiting.poll();
                if (next == null) {
                    working = false;
                    return;
                }
            }
            done(read(next));
        }
    }

    private Intake.Outcome read(Came file) {
        try {
            return reader.apply(file);
        } catch (BookException refused) {
            return new Intake.Outcome(file.name(), null, false, String.valueOf(refused.getMessage()));
        } catch (RuntimeException broken) {
            return new Intake.Outcome(
                    file.name(), null, false, file.name() + " could not be taken in; the others go on without it.");
        }
    }

    private synchronized void done(Intake.Outcome outcome) {
        State now = state;
        if (now != null) {
            List<Intake.Outcome> outcomes = new ArrayList<>(now.outcomes());
            outcomes.add(outcome);
            state = new State(now.began(), now.of(), List.copyOf(outcomes), now.leftAlone(), now.stopped());
        }
    }
}
