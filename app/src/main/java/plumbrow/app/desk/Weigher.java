package plumbrow.app.desk;

import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.Progress;
import plumbrow.advice.weighing.WeighingOptions;

/** Whoever weighs the courses: the same season and options give the same answer. */
interface Weigher {
    /** The adviser of Plumbrow. */
    Weigher ADVISER = new Weigher() {
        @Override
        public Advice advise(Season season, WeighingOptions options, Progress progress) {
            return Adviser.advise(season, options, progress);
        }

        @Override
        public FieldAdvice adviseField(Season season, Field field, WeighingOptions options) {
            return Adviser.adviseField(season, field, options);
        }
    };

    Advice advise(Season season, WeighingOptions options, Progress progress);

    FieldAdvice adviseField(Season season, Field field, WeighingOptions options);
}
