package plumbrow.advice.calendar;

import java.time.LocalDate;
import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/** On which days the gates let a pass be made, without the rest of the season picture. */
public final class LawfulWindows {
    private LawfulWindows() {}

    /** The windows of a pass of a program between two days, all other passes left where they are. */
    public static List<Window> of(
            Season season, Field field, Program program, Pass pass, LocalDate first, LocalDate last) {
        return new LawfulDays(season, field).of(program, pass, first, last);
    }
}
