package plumbrow.app.desk.calendar;

import plumbrow.advice.calendar.CourseChanges;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.Asked;

/**
 * A change that was kept: the season before it and after it, and the course it made or changed.
 *
 * @param added whether the course came new
 */
record CourseKept(Season before, Season after, String field, String course, boolean added) {
    /**
     * The season without the change. Where others changed other things since, these stay.
     *
     * @throws MeanwhileException where the course is no longer as it was kept, or somebody chose it
     */
    Season undone(Book.Held held) {
        Season now = held.written();
        boolean chosen = added
                && held.choices().stream()
                        .anyMatch(choice ->
                                choice.field().equals(field) && choice.course().equals(course));
        if (chosen || now.year() != after.year() || !seen(now).equals(seen(after))) {
            throw new MeanwhileException("The course has changed since, or somebody chose it.");
        }
        if (now.equals(after)) {
            return before;
        }
        return added
                ? new CourseChanges(now, Asked.field(now, field)).without(course)
                : new CourseChanges(now, Asked.field(now, field)).asIn(before, course);
    }

    private CourseSeen seen(Season season) {
        return CourseSeen.of(season, field, course);
    }
}
