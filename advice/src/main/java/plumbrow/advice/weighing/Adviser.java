package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.season.Season;

/**
 * Weighs the programs of a season on the same draws and says which to take.
 *
 * <p>Same season, seed and number of draws give the same advice to the bit, however many threads run.
 */
public final class Adviser {
    private Adviser() {}

    /**
     * The advice for every field.
     *
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public static Advice advise(Season season, WeighingOptions options, Progress progress) {
        DrawSource source = new DrawSource(options.draws(), options.seed());
        List<FieldAdvice> answers = inOrder(season, options, source, progress);
        return new Advice(season.year(), season.asOf(), season.adviser(), options.draws(), options.seed(), answers);
    }

    /**
     * The advice for one field, equal to its part of the advice for the season.
     *
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public static FieldAdvice adviseField(Season season, Field field, WeighingOptions options) {
        return weigh(season, OwnSeasons.of(season).of(field), options, new DrawSource(options.draws(), options.seed()));
    }

    /**
     * The advice for one field out of its own season, from draws that others use too: equal to its part of the advice for the
     * season it was cut from.
     *
     * @param options of this season alone: what it leaves behind hangs on other fields
     * @param source as many draws, and of the same seed, as the options say
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public static FieldAdvice adviseField(OwnSeason own, WeighingOptions options, DrawSource source) {
        if (options.later() != null) {
            throw new IllegalArgumentException("what a season leaves behind is not in the season of one field");
        }
        return weigh(own.season(), own, options, source);
    }

    /**
     * What could still be told or looked up on a field, by what it is worth there.
     *
     * @param options of this season alone
     * @param source as many draws, and of the same seed, as the options say
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public static NextInputs next(OwnSeason own, WeighingOptions options, DrawSource source) {
        FieldModel model = FieldModels.of(own.season(), own.field(), options.changed());
        return new FieldWeighing(own.season(), Gates.of(own.season()), model, source, options).next();
    }

    /**
     * The mean margins of a field's programs that are not barred [$/ac], by name, as if what nobody has looked up came out clear.
     *
     * @param options of this season alone
     * @param source as many draws, and of the same seed, as the options say
     */
    public static Map<String, Double> means(OwnSeason own, WeighingOptions options, DrawSource source) {
        FieldModel model = FieldModels.of(own.season(), own.field(), options.changed());
        return new FieldWeighing(own.season(), Gates.of(own.season()), model, source, options).means();
    }

    /** Only what this season leaves behind looks at the whole season: crops of other fields may follow here. */
    private static FieldAdvice weigh(Season season, OwnSeason own, WeighingOptions options, DrawSource source) {
        Field field = own.field();
        FieldModel thisSeason =
                FieldModels.of(own.season(), field, options.changed()).withFirst(own.cautions());
        LaterCost later = options.later();
        FieldModel model = later == null ? thisSeason : thisSeason.withLater(later, later.of(season, field, options));
        return new FieldWeighing(own.season(), Gates.of(own.season()), model, source, options).advice();
    }

    private static List<FieldAdvice> inOrder(
            Season season, WeighingOptions options, DrawSource source, Progress progress) {
        ExecutorService workers = Executors.newFixedThreadPool(options.threads());
        try {
            int fields = season.fields().size();
            OwnSeasons own = OwnSeasons.of(season);
            AtomicInteger done = new AtomicInteger();
            List<Future<FieldAdvice>> answers = new ArrayList<>();
            for (Field field : season.fields()) {
                answers.add(workers.submit(() -> {
                    FieldAdvice answer = weigh(season, own.of(field), options, source);
                    progress.done(done.incrementAndGet(), fields);
                    return answer;
                }));
            }
            List<FieldAdvice> inOrder = new ArrayList<>();
            for (Future<FieldAdvice> answer : answers) {
                inOrder.add(answer.get());
            }
            return inOrder;
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(failure.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the weighing was stopped", stopped);
        } finally {
            workers.shutdownNow();
        }
    }
}
