package plumbrow.app.desk;

import plumbrow.advice.field.Field;
import plumbrow.advice.outlook.DrawSource;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighingOptions;

/** Whoever weighs the courses of a field: the same season, field and options give the same answer. */
@FunctionalInterface
interface Weigher {
    FieldAdvice adviseField(Season season, Field field, WeighingOptions options);

    /** The adviser of Plumbrow. What fields share is drawn once for all of them. */
    static Weigher adviser() {
        WeighingOptions usual = WeighingOptions.DEFAULT;
        DrawSource shared = new DrawSource(usual.draws(), usual.seed());
        return (season, field, options) -> options.draws() == usual.draws() && options.seed() == usual.seed()
                ? Adviser.adviseField(season, field, options, shared)
                : Adviser.adviseField(season, field, options);
    }
}
