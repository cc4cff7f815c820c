package plumbrow.app.desk.years;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.years.Failure;
import plumbrow.advice.years.RotationAhead;
import plumbrow.advice.years.YearsAhead;

/** What the page of a look ahead shows. */
public record YearsView(Season season, YearsAhead ahead, YearsForm form) {
    /** Programs that may follow each other in the boxes. */
    public static final int YEARS_OF_ROTATION = 3;

    public Field field() {
        return ahead.field();
    }

    /** Other fields whose programs are offered, and other programs still may be named in the address. */
    private static final int MOST_OTHERS = 40;

    /** The field's own programs. */
    public List<String> own() {
        return season.programs(field().name()).stream().map(Program::name).toList();
    }

    /** Programs of fields with another crop, by field and crop, as they are named in a rotation. */
    public Map<String, List<String>> others() {
        Map<String, List<String>> others = new LinkedHashMap<>();
        for (Field other : season.fields()) {
            if (other.crop() != field().crop() && others.size() < MOST_OTHERS) {
                others.put(
                        other.name() + ", " + other.crop().word(),
                        season.programs(other.name()).stream()
                                .map(program -> other.name() + ": " + program.name())
                                .toList());
            }
        }
        return others;
    }

    /** The rotation whose picture stands on the page: the one that was asked for, else the best, else the first. */
    public RotationAhead shown() {
        if (!form.programs().isEmpty() && form.faults().isEmpty()) {
            String asked = form.rotations().get(0).words(field());
            return ahead.rotations().stream()
                    .filter(one -> one.name().equals(asked))
                    .findFirst()
                    .orElseThrow();
        }
        return ahead.bestRotation().orElseGet(() -> ahead.rotations().get(0));
    }

    /** The year by which control has failed in half of the draws. */
    public String failsBy(Failure fails) {
        Integer median = fails.medianYear();
        return median == null ? "not in half of them" : String.valueOf(ahead.firstYear() + median - 1);
    }
}
