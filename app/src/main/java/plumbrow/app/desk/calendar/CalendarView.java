package plumbrow.app.desk.calendar;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.calendar.SeasonCalendar;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.calendar.Window;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.picture.SeasonPicture;
import plumbrow.science.figure.Numbers;

/**
 * What the page of a season picture shows.
 *
 * @param boxes what was typed
 * @param pictures one for each width asked for
 * @param name proposed for a new program
 * @param told what was just done to the book; empty where nothing was
 * @param undo number of the change that can be undone; empty where none can
 * @param seen the program as the page shows it, to come back with the form
 */
public record CalendarView(
        Season season,
        Field field,
        SeasonTrial trial,
        PassBoxes boxes,
        List<SeasonPicture> pictures,
        String name,
        String told,
        String undo,
        String seen) {

    public List<String> programs() {
        return season.programs(field.name()).stream().map(Program::name).toList();
    }

    /** The word of the tank that a pass goes out in; empty where it goes by itself. */
    public String tank(int pass) {
        return season.work().sprayPlans().stream()
                .filter(plan -> plan.field().equals(field.name())
                        && plan.program().equals(trial.program())
                        && plan.pass() == pass)
                .map(plan -> Shown.text(plan.tank()))
                .findFirst()
                .orElse("");
    }

    public List<PassBoxes.Fault> faults() {
        return boxes.faults();
    }

    /** The fault of one pass, where it has one. */
    public String fault(int pass) {
        return boxes.faults().stream()
                .filter(fault -> fault.pass() == pass)
                .map(PassBoxes.Fault::sentence)
                .findFirst()
                .orElse("");
    }

    /** The day in the box of a pass: what was typed, else what is shown. */
    public String date(SeasonCalendar.Mark pass) {
        return typed(pass)
                .map(PassBoxes.Typed::date)
                .filter(text -> !text.isEmpty())
                .orElse(pass.date() == null ? "" : pass.date().toString());
    }

    /** The rate in the box of a pass. */
    public String rate(SeasonCalendar.Mark pass) {
        return typed(pass)
                .map(PassBoxes.Typed::rate)
                .filter(text -> !text.isEmpty())
                .orElse(
                        pass.rate() == null
                                ? ""
                                : Numbers.plain(pass.rate().value()).replace(",", ""));
    }

    private Optional<PassBoxes.Typed> typed(SeasonCalendar.Mark pass) {
        return boxes.typed().stream()
                .filter(typed -> typed.pass().strip().equals(String.valueOf(pass.pass())))
                .findFirst();
    }

    /** Days on which a pass is barred or something about it is unknown. */
    public List<Window> closed() {
        return trial.calendar().windows().stream()
                .filter(window -> window.standing() != Standing.CLEAR)
                .toList();
    }

    /** Where a pass stands in a picture. */
    public static Optional<SeasonPicture.Handle> handle(SeasonPicture picture, int pass) {
        return picture.handles().stream()
                .filter(handle -> handle.pass() == pass)
                .findFirst();
    }
}
