package plumbrow.app.desk.calendar;

import plumbrow.advice.calendar.ProgramChanges;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.Asked;

/**
 * A change that was kept: the season before it and after it, and the program it made or changed.
 *
 * @param added whether the program came new
 */
record ProgramKept(Season before, Season after, String field, String program, boolean added) {
    /**
     * The season without the change. Where others changed other things since, these stay.
     *
     * @throws MeanwhileException where the program is no longer as it was kept, or somebody chose it
     */
    Season undone(Book.Held held) {
        Season now = held.written();
        boolean chosen = added
                && held.choices().stream()
                        .anyMatch(choice ->
                                choice.field().equals(field) && choice.program().equals(program));
        if (chosen || now.year() != after.year() || !seen(now).equals(seen(after))) {
            throw new MeanwhileException("The program has changed since, or somebody chose it.");
        }
        if (now.equals(after)) {
            return before;
        }
        return added
                ? new ProgramChanges(now, Asked.field(now, field)).without(program)
                : new ProgramChanges(now, Asked.field(now, field)).asIn(before, program);
    }

    private ProgramSeen seen(Season season) {
        return ProgramSeen.of(season, field, program);
    }
}
