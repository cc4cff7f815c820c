package plumbrow.documents.workbook.sheet;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;

/** What is at hand to protect those who work, in one row. */
public final class CrewSheet {
    static final Column<List<String>> GEAR = Column.of(
                    "gear",
                    Words.gear(),
                    "protective equipment at hand, in the words of the sheet care; none where there is none",
                    "chemical-resistant gloves; goggles")
            .blankMeans("nobody has looked");
    static final Column<Ask> DISPLAY =
            Words.ask("display", "whether application information is shown where workers can see it");

    public static final Sheet<Line> SHEET = Sheet.<Line>named(
                    "crew", "What protects those who work on the fields: one row.", CrewSheet::lines)
            .optional()
            .rows(0, 1)
            .column(GEAR, line -> CareSheet.sorted(line.gear()))
            .column(DISPLAY, Line::display)
            .build(row -> new Line(CareSheet.set(row, GEAR), row.get(DISPLAY)));

    private CrewSheet() {}

    /** The row of this sheet. */
    public record Line(@Nullable Set<String> gear, Ask display) {}

    private static List<Line> lines(Season season) {
        Crew crew = season.work().crew();
        return crew.gear() == null && crew.display() == Ask.UNKNOWN
                ? List.of()
                : List.of(new Line(crew.gear(), crew.display()));
    }
}
