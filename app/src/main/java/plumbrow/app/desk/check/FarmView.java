package plumbrow.app.desk.check;

import java.util.List;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.CourseCheck;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;

/** What the check of the whole farm shows. */
public record FarmView(SeasonCheck check, Sieve sieve, List<LookUp> lookUps, List<AcrossLine> acrossLines) {
    /** Shown at once; the others are folded away. */
    public static final int FIRST_LOOK_UPS = 10;

    static FarmView of(SeasonCheck check, Sieve sieve) {
        return new FarmView(check, sieve, check.lookUps(), check.acrossLines());
    }

    /** The fields of which something comes through the sieve. */
    public List<Field> fields() {
        return check.fields().stream()
                .filter(field -> !courses(field).isEmpty())
                .toList();
    }

    public List<CourseCheck> courses(Field field) {
        return check.courses(field).stream().filter(sieve::shows).toList();
    }
}
