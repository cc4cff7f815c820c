package plumbrow.app.desk;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.OwnSeason;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.BookException;

/**
 * Answers already worked out, each kept with the season of its field that it came out of: it holds for as long as that is
 * equal, whatever became of other fields, and for no other. Safe for several threads.
 *
 * <p>Each answer is worked out once, by the first who asks; whoever asks meanwhile waits for it. Nobody who waits is sent
 * away because somebody else writes into the book: he gets the answer of the season that he read.
 */
public final class Weighings {
    /** Whole answers at hand. A season of no more fields has all of them. */
    private static final int MOST_KEPT = 200;

    private static final Logger LOG = LoggerFactory.getLogger(Weighings.class);

    private record Question(String field, WeighingOptions options) {}

    private record Asked(OwnSeason own, FutureTask<FieldAdvice> answer) {}

    private record Known(OwnSeason own, FieldAnswer answer) {}

    private record Cut(Season season, OwnSeasons own) {}

    private final Weigher weigher;
    private final DrawSource drawn = new DrawSource(WeighingOptions.DEFAULT.draws(), WeighingOptions.DEFAULT.seed());
    private final Map<String, Known> known = new ConcurrentHashMap<>();
    private final Map<Question, Asked> answers = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Question, Asked> eldest) {
            return size() > MOST_KEPT;
        }
    };
    private @Nullable SeasonWeighing whole;
    private @Nullable Cut cut;

    public Weighings(Weigher weigher) {
        this.weigher = weigher;
    }

    /** Begins with the season at once, so that the first page need not wait; what is wrong then, the page will say. */
    public void prepare(DeskBook book) {
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
        SeasonWeighing running = whole;
        if (running == null || !running.season().equals(season)) {
            if (running != null) {
                running.supersede();
            }
            running = begin(season);
        }
        return running;
    }

    /** Begins anew after a weighing was stopped; leaves one that runs or is done as it is. */
    public synchronized SeasonWeighing again(Season season) {
        SeasonWeighing running = whole(season);
        return running.stopped() ? begin(season) : running;
    }

    /**
     * The answer for one field.
     *
     * @throws plumbrow.advice.weighing.SeasonGapException where the season lacks what the weighing needs
     */
    public FieldAdvice field(Season season, Field field, WeighingOptions options) {
        return answer(own(season).of(field), options);
    }

    /**
     * The whole advice for some fields of a season, in their order. Ask for few at a time: each takes some hundred kilobytes.
     *
     * @throws plumbrow.advice.weighing.SeasonGapException where the season lacks what the weighing needs
     */
    public Advice advice(Season season, List<Field> fields) {
        OwnSeasons own = own(season);
        WeighingOptions usual = WeighingOptions.DEFAULT;
        return new Advice(
                season.year(),
                season.asOf(),
                season.adviser(),
                usual.draws(),
                usual.seed(),
                fields.parallelStream()
                        .map(field -> answer(own.of(field), usual))
                        .toList());
    }

    /**
     * What to tell or look up next on a field.
     *
     * @throws plumbrow.advice.weighing.SeasonGapException where the season lacks what the weighing needs
     */
    public NextInputs next(Season season, Field field) {
        return Adviser.next(own(season).of(field), WeighingOptions.DEFAULT, drawn);
    }

    private FieldAdvice answer(OwnSeason own, WeighingOptions options) {
        Question question = new Question(own.field().name(), options);
        FutureTask<FieldAdvice> task;
        synchronized (answers) {
            Asked asked = answers.get(question);
            if (asked == null || !asked.own().equals(own)) {
                asked = new Asked(own, new FutureTask<>(() -> weigher.adviseField(own, options)));
                answers.put(question, asked);
            }
            task = asked.answer();
        }
        task.run();
        try {
            return task.get();
        } catch (ExecutionException fault) {
            forget(question, task);
            throw fault.getCause() instanceof RuntimeException known ? known : new IllegalStateException(fault);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The weighing was interrupted.", stop);
        }
    }

    private void forget(Question question, FutureTask<FieldAdvice> task) {
        synchronized (answers) {
            Asked asked = answers.get(question);
            if (asked != null && asked.answer() == task) {
                answers.remove(question);
            }
        }
    }

    private SeasonWeighing begin(Season season) {
        Set<String> names = new HashSet<>();
        season.fields().forEach(field -> names.add(field.name()));
        known.keySet().retainAll(names);
        OwnSeasons own = own(season);
        SeasonWeighing fresh =
                SeasonWeighing.begin(season, field -> inShort(own.of(field)), WeighingOptions.DEFAULT.threads());
        whole = fresh;
        return fresh;
    }

    /** The answer known of a field, if it came out of an equal season; else it is worked out. */
    private FieldAnswer inShort(OwnSeason own) {
        Known kept = known.get(own.field().name());
        FieldAnswer answer = kept != null && kept.own().equals(own) ? kept.answer() : weighed(own);
        known.put(own.field().name(), new Known(own, answer));
        return answer;
    }

    /** One field that can't be weighed yet keeps no other from its answer. */
    private FieldAnswer weighed(OwnSeason own) {
        try {
            return FieldAnswer.of(answer(own, WeighingOptions.DEFAULT));
        } catch (SeasonGapException gap) {
            return FieldAnswer.lacking(own.field(), String.valueOf(gap.getMessage()));
        }
    }

    private synchronized OwnSeasons own(Season season) {
        Cut last = cut;
        if (last == null || !last.season().equals(season)) {
            last = new Cut(season, OwnSeasons.of(season));
            cut = last;
        }
        return last.own();
    }
}
