package plumbrow.advice.years;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.SeasonGapException;

/**
 * Programs that follow each other year by year and then begin again; one program alone is repeated.
 *
 * @param steps at least one
 */
public record Rotation(List<Step> steps) {
    private static final String ELSEWHERE = ": ";

    /**
     * One year of it.
     *
     * @param from the field whose program it is; another field's stands in for a crop that this one has no program for
     */
    public record Step(String from, String program) {}

    public Rotation {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a rotation has at least one program");
        }
    }

    /** A program of the field, every year. */
    public static Rotation repeated(Program program) {
        return new Rotation(List.of(new Step(program.field(), program.name())));
    }

    /**
     * Programs as a person names them: a program of this field by its name, one of another field as "Field: Program".
     *
     * @throws SeasonGapException where there is no such program
     */
    public static Rotation named(Season season, Field field, List<String> names) {
        List<Step> steps = new ArrayList<>();
        for (String name : names) {
            steps.add(step(season, field, name.strip()));
        }
        return new Rotation(steps);
    }

    private static Step step(Season season, Field field, String name) {
        if (has(season, field.name(), name)) {
            return new Step(field.name(), name);
        }
        for (Field other : season.fields()) {
            String start = other.name() + ELSEWHERE;
            if (name.startsWith(start) && has(season, other.name(), name.substring(start.length()))) {
                return new Step(other.name(), name.substring(start.length()));
            }
        }
        throw new SeasonGapException("There is no program '" + name + "' on " + field.name() + "; its programs are "
                + season.programs(field.name()).stream().map(Program::name).collect(Collectors.joining("; "))
                + ". A program of another field is named with that field: 'Field: Program'.");
    }

    private static boolean has(Season season, String field, String program) {
        return season.programs(field).stream().anyMatch(one -> one.name().equals(program));
    }

    /** Whether it is one program of the field, every year. */
    boolean repeats(Field field) {
        return steps.size() == 1 && steps.get(0).from().equals(field.name());
    }

    /** The step of a year counted from 0. */
    Step step(int year) {
        return steps.get(year % steps.size());
    }

    /** "A, then B"; the programs of other fields with theirs. */
    public String words(Field field) {
        return steps.stream()
                .map(step ->
                        step.from().equals(field.name()) ? step.program() : step.from() + ELSEWHERE + step.program())
                .collect(Collectors.joining("; then "));
    }
}
