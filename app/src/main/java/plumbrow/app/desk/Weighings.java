package plumbrow.app.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.BookException;

/**
 * Answers already worked out, kept for as long as the season stays the same.
 *
 * <p>Each answer is worked out once, by the first who asks; whoever asks meanwhile waits for it.
 */
public final class Weighings {
    private static final Logger LOG = LoggerFactory.getLogger(Weighings.class);
    private static final int MOST_KEPT = 200;

    private record Question(String field, WeighingOptions options) {}

    private final Weigher weigher;
    private final Map<Question, FutureTask<FieldAdvice>> answers = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Question, FutureTask<FieldAdvice>> eldest) {
            return size() > MOST_KEPT;
        }
    };
    private @Nullable SeasonWeighing whole;

    Weighings(Weigher weigher) {
        this.weigher = weigher;
    }

    /** Begins with the season at once, so that the first page need not wait; what is wrong then, the page will say. */
    void prepare(DeskBook book) {
        Thread thread = new Thread(
                () -> {
                    try {
                        book.season().ifPresent(this::whole);
                    } catch (BookException fault) {
                        LOG.debug("The season could not be read ahead", fault);
                    }
                },
                "season reading");
        thread.setDaemon(true);
        thread.start();
    }

    /** The weighing of all fields as the season says; begun by the first who asks. */
    public synchronized SeasonWeighing whole(Season season) {
        SeasonWeighing known = whole;
        if (known == null || !known.season().equals(season)) {
            answers.clear();
            if (known != null) {
                known.stop();
            }
            known = begin(season);
        }
        return known;
    }

    /** Begins anew after a weighing was stopped; leaves one that runs or is done as it is. */
    public synchronized SeasonWeighing again(Season season) {
        SeasonWeighing known = whole(season);
        return known.stopped() ? begin(season) : known;
    }

    /**
     * The answer for one field.
     *
     * @throws plumbrow.advice.weighing.SeasonGapException where the season lacks what the weighing needs
     */
    public FieldAdvice field(Season season, Field field, WeighingOptions options) {
        SeasonWeighing all = whole(season);
        if (options.equals(WeighingOptions.DEFAULT) && all.finished()) {
            for (FieldAdvice known : all.advice().fields()) {
                if (known.field().name().equals(field.name())) {
                    return known;
                }
            }
        }
        return answer(new Question(field.name(), options), question -> weigher.adviseField(season, field, options));
    }

    private FieldAdvice answer(Question question, Function<Question, FieldAdvice> ask) {
        FutureTask<FieldAdvice> task;
        synchronized (this) {
            task = answers.computeIfAbsent(question, asked -> new FutureTask<>(() -> ask.apply(asked)));
        }
        task.run();
        try {
            return task.get();
        } catch (ExecutionException fault) {
            synchronized (this) {
                answers.remove(question, task);
            }
            throw fault.getCause() instanceof RuntimeException known ? known : new IllegalStateException(fault);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The weighing was interrupted.", stop);
        }
    }

    private SeasonWeighing begin(Season season) {
        SeasonWeighing fresh = SeasonWeighing.begin(weigher, season);
        whole = fresh;
        return fresh;
    }
}
