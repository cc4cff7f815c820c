package plumbrow.app.desk;

import java.time.Duration;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.WeighingOptions;

/** The weighing of a whole season, which may still be running. */
public final class SeasonWeighing {
    private final Season season;
    private final FutureTask<Advice> work;
    private volatile int fieldsDone;
    private volatile boolean stopped;

    private SeasonWeighing(Weigher weigher, Season season) {
        this.season = season;
        this.work = new FutureTask<>(() -> weigher.advise(season, WeighingOptions.DEFAULT, this::heard));
    }

    static SeasonWeighing begin(Weigher weigher, Season season) {
        SeasonWeighing weighing = new SeasonWeighing(weigher, season);
        Thread thread = new Thread(weighing.work, "season weighing");
        thread.setDaemon(true);
        thread.start();
        return weighing;
    }

    public Season season() {
        return season;
    }

    /** Fields weighed so far. */
    public int fieldsDone() {
        return fieldsDone;
    }

    /** Gives it up after the field it is at. */
    public void stop() {
        stopped = true;
        work.cancel(true);
    }

    public boolean stopped() {
        return stopped && work.isCancelled();
    }

    /** Whether the answer is there. */
    public boolean finished() {
        if (!work.isDone() || work.isCancelled()) {
            return false;
        }
        try {
            work.get();
            return true;
        } catch (ExecutionException fault) {
            return false;
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Waits a little for the end, whatever that is. Returns whether it has come. */
    public boolean endedWithin(Duration patience) {
        try {
            work.get(patience.toMillis(), TimeUnit.MILLISECONDS);
            return true;
        } catch (ExecutionException | CancellationException ended) {
            return true;
        } catch (TimeoutException running) {
            return false;
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /**
     * The answer, waited for.
     *
     * @throws plumbrow.advice.weighing.SeasonGapException where the season lacks what the weighing needs
     */
    public Advice advice() {
        try {
            return work.get();
        } catch (ExecutionException fault) {
            throw fault.getCause() instanceof RuntimeException known ? known : new IllegalStateException(fault);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The weighing was interrupted.", stop);
        }
    }

    private void heard(int fields, int of) {
        fieldsDone = Math.max(fieldsDone, fields);
        if (stopped) {
            throw new CancellationException();
        }
    }
}
