package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;

/**
 * A field boiled down for the kernel: its uncertain inputs and its programs, places instead of names.
 *
 * @param drying place of drying [$/bu]; −1 where it is part of handling
 * @param tie rank correlation of price and yield
 * @param weather the season's weather and how the yield hangs on it; null where it is unknown, or known for certain
 */
record FieldModel(
        Field field,
        Farm farm,
        List<Variable> variables,
        int price,
        int yield,
        int handling,
        int drying,
        int geneticLag,
        int delayLoss,
        double tie,
        @Nullable WeatherTie weather,
        List<ProgramModel> programs,
        List<String> cautions) {

    /** Passes that were scouted for and for which too few were found, once for each count: it is the same in all programs. */
    List<ProgramModel.Trigger> tooFew() {
        List<ProgramModel.Trigger> settled = new ArrayList<>();
        for (ProgramModel program : programs) {
            program.triggers().stream()
                    .filter(trigger -> trigger.settled()
                            && settled.stream().noneMatch(one -> one.scouting().equals(trigger.scouting())))
                    .forEach(settled::add);
        }
        return settled;
    }

    /** The same field with what each of its programs costs in later years. */
    FieldModel withLater(LaterCost later, double[][] usdPerAcre) {
        List<ProgramModel> counted = IntStream.range(0, programs.size())
                .mapToObj(c -> programs.get(c).withLater(usdPerAcre[c]))
                .toList();
        List<String> said =
                Stream.concat(cautions.stream(), Stream.of(later.says())).toList();
        return new FieldModel(
                field,
                farm,
                variables,
                price,
                yield,
                handling,
                drying,
                geneticLag,
                delayLoss,
                tie,
                weather,
                counted,
                said);
    }

    /** The same field with more to be careful of, told before the rest. */
    FieldModel withFirst(List<String> more) {
        List<String> said = Stream.concat(more.stream(), cautions.stream()).toList();
        return new FieldModel(
                field,
                farm,
                variables,
                price,
                yield,
                handling,
                drying,
                geneticLag,
                delayLoss,
                tie,
                weather,
                programs,
                said);
    }

    /** Places of the inputs that the margin of a program is made of, some of them more than once. */
    IntStream inputs(ProgramModel program) {
        return IntStream.concat(
                IntStream.of(price, yield, handling, drying, geneticLag, delayLoss)
                        .filter(place -> place >= 0),
                program.places());
    }
}
