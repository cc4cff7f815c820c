package plumbrow.app.desk;

import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.Progress;
import plumbrow.advice.weighing.WeighingOptions;

/** Whoever weighs the courses: the same season and options give the same answer. */
public interface Weigher {
    Advice advise(Season season, WeighingOptions options, Progress progress);

    FieldAdvice adviseField(Season season, Field field, WeighingOptions options);
}
