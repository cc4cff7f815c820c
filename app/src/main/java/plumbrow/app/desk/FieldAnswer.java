package plumbrow.app.desk;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;

/**
 * What a list of fields shows of the advice for one of them. The advice itself, with its findings and its working, would fill
 * the memory of this machine for a farm of ten thousand fields; it is worked out anew where its page is opened.
 *
 * @param draws number of draws it rests on
 * @param advised the program advised; null where none may be
 * @param tied whether others are about equal to it
 * @param leading the programs that are about equal, the advised one among them
 * @param sentence the advice in one sentence; what is lacking where it can't be weighed
 * @param lacking whether the season lacks what the weighing of the field needs
 */
public record FieldAnswer(
        Field field,
        int draws,
        @Nullable Advised advised,
        boolean tied,
        List<String> leading,
        String sentence,
        boolean lacking) {
    public FieldAnswer {
        leading = List.copyOf(leading);
    }

    /**
     * The program advised, per acre of the field, as {@link WeighedProgram} says it.
     *
     * @param odds the chance in words
     */
    public record Advised(
            String program,
            boolean baseline,
            Standing standing,
            double chanceBeatsBaseline,
            String odds,
            double meanGainUsdPerAcre,
            Band gain) {
        static Advised of(FieldAdvice advice, WeighedProgram program) {
            return new Advised(
                    program.name(),
                    program.baseline(),
                    program.standing(),
                    program.chanceBeatsBaseline(),
                    advice.oddsAgainstBaseline(program),
                    program.meanGainUsdPerAcre(),
                    program.gain());
        }
    }

    static FieldAnswer of(FieldAdvice advice) {
        return new FieldAnswer(
                advice.field(),
                advice.draws(),
                advice.advisedProgram()
                        .map(program -> Advised.of(advice, program))
                        .orElse(null),
                advice.aboutEqual() != null,
                advice.leading(),
                advice.sentence(),
                false);
    }

    /** Of a field that lacks what the weighing needs. */
    static FieldAnswer lacking(Field field, String sentence) {
        return new FieldAnswer(field, 0, null, false, List.of(), sentence, true);
    }

    /** Mean gain of the advised program over the baseline for the whole field [$]; 0 where nothing is advised. */
    public double advisedGainUsd() {
        return advised == null ? 0 : advised.meanGainUsdPerAcre() * field.acres();
    }
}
