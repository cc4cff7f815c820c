package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.means.MachineKind;
import plumbrow.advice.means.WorkWindow;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** Days and hours fit for planting and spraying. */
public final class WorkWindowSheet {
    static final Column<String> FARM = FarmWords.farm();
    static final Column<String> WINDOW = Column.of(
                    "window", TextKind.NAME, "what it is called, used once in a farm", "first week of June")
            .need();
    static final Column<MachineKind> KIND = FarmWords.kind();
    static final Column<LocalDate> FROM =
            Column.of("from", new DateKind(), "first day", "2026-06-01").need();
    static final Column<LocalDate> UNTIL = Column.of("until", new DateKind(), "last day, itself included", "2026-06-07")
            .need();
    static final Column<Double> FIT_DAYS = Column.of(
                    "fit_days", NumberKind.between(0, 366), "days of it fit for this work, as you would count on", "4")
            .in("days")
            .need();
    static final Column<Double> HOURS = Column.of(
                    "hours_per_day", NumberKind.between(0, 24), "fit hours on such a day for one machine", "7")
            .in("h")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<WorkWindow> SHEET = Sheet.<WorkWindow>named(
                    "work_windows",
                    "Days between which work is done, and how much of it is fit: a pass of a day in it takes of its "
                            + "hours.",
                    season -> season.work().means().windows())
            .optional()
            .column(FARM, WorkWindow::farm)
            .column(WINDOW, WorkWindow::name)
            .column(KIND, WorkWindow::kind)
            .column(FROM, WorkWindow::from)
            .column(UNTIL, WorkWindow::until)
            .column(FIT_DAYS, WorkWindow::fitDays)
            .column(HOURS, WorkWindow::hoursPerDay)
            .column(SOURCE, WorkWindow::source)
            .once(FARM, WINDOW)
            .check(Words.ordered(FROM, UNTIL))
            .build(row -> new WorkWindow(
                    row.get(FARM),
                    row.get(WINDOW),
                    row.get(KIND),
                    row.get(FROM),
                    row.get(UNTIL),
                    row.get(FIT_DAYS),
                    row.get(HOURS),
                    row.get(SOURCE)));

    private WorkWindowSheet() {}
}
