package plumbrow.app.desk;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/** The weighing of a whole season field by field, which may still be running. Safe for several threads. */
public final class SeasonWeighing {
    /** How it ended. */
    private enum End {
        ANSWERED,
        STOPPED,
        SUPERSEDED
    }

    private final Season season;
    private final Function<Field, FieldAnswer> ask;
    private final FieldAnswer[] answers;
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicInteger fieldsDone = new AtomicInteger();
    private final CompletableFuture<End> end = new CompletableFuture<>();

    private SeasonWeighing(Season season, Function<Field, FieldAnswer> ask) {
        this.season = season;
        this.ask = ask;
        this.answers = new FieldAnswer[season.fields().size()];
    }

    /**
     * Begins in the background.
     *
     * @param ask the answer for a field; at once where it is known
     */
    static SeasonWeighing begin(Season season, Function<Field, FieldAnswer> ask, int threads) {
        SeasonWeighing weighing = new SeasonWeighing(season, ask);
        if (weighing.answers.length == 0) {
            weighing.end.complete(End.ANSWERED);
        }
        for (int i = 0; i < Math.min(threads, weighing.answers.length); i++) {
            Thread thread = new Thread(weighing::work, "season weighing");
            thread.setDaemon(true);
            thread.start();
        }
        return weighing;
    }

    public Season season() {
        return season;
    }

    /** Fields weighed so far. */
    public int fieldsDone() {
        return fieldsDone.get();
    }

    /** Gives it up after the fields it is at. */
    public void stop() {
        end.complete(End.STOPPED);
    }

    /** The season has changed: another weighing goes on with what this one has. */
    void supersede() {
        end.complete(End.SUPERSEDED);
    }

    public boolean stopped() {
        return end.isDone() && !end.isCompletedExceptionally() && end.join() == End.STOPPED;
    }

    /** Waits for the end, whatever that is, as long as it is told to. Returns whether it has come. */
    public boolean endedWithin(Duration patience) {
        try {
            end.get(patience.toMillis(), TimeUnit.MILLISECONDS);
            return true;
        } catch (ExecutionException ended) {
            return true;
        } catch (TimeoutException running) {
            return false;
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Whether there is an answer, or a reason why there can't be one. */
    public boolean answered() {
        return end.isDone() && (end.isCompletedExceptionally() || end.join() == End.ANSWERED);
    }

    /**
     * The answers in the order of the season's fields, where it is {@link #answered}.
     *
     * @throws plumbrow.advice.weighing.SeasonGapException where the season lacks what the weighing needs
     */
    public List<FieldAnswer> answers() {
        try {
            if (end.get() != End.ANSWERED) {
                throw new IllegalStateException("The weighing has no answer.");
            }
            return List.of(answers);
        } catch (ExecutionException fault) {
            throw fault.getCause() instanceof RuntimeException known ? known : new IllegalStateException(fault);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The weighing was interrupted.", stop);
        }
    }

    private void work() {
        try {
            for (int i = next.getAndIncrement(); i < answers.length && !end.isDone(); i = next.getAndIncrement()) {
                answers[i] = ask.apply(season.fields().get(i));
                if (fieldsDone.incrementAndGet() == answers.length) {
                    end.complete(End.ANSWERED);
                }
            }
        } catch (RuntimeException | Error fault) {
            end.completeExceptionally(fault);
        }
    }
}
