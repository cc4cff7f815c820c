package plumbrow.app.desk;

import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.OwnSeason;
import plumbrow.advice.weighing.WeighingOptions;

/** Whoever weighs the programs of a field: the same season of the field and options give the same answer. */
@FunctionalInterface
public interface Weigher {
    FieldAdvice adviseField(OwnSeason own, WeighingOptions options);

    /** The adviser of Plumbrow. What fields share is drawn once for all of them. */
    static Weigher adviser() {
        WeighingOptions usual = WeighingOptions.DEFAULT;
        DrawSource shared = new DrawSource(usual.draws(), usual.seed());
        return (own, options) -> Adviser.adviseField(
                own,
                options,
                options.draws() == usual.draws() && options.seed() == usual.seed()
                        ? shared
                        : new DrawSource(options.draws(), options.seed()));
    }
}
