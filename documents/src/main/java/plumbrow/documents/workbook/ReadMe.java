package plumbrow.documents.workbook;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** The first sheet of a workbook: how to fill in the others, in plain words. It is not read back. */
final class ReadMe {
    static final String SHEET = "read me";

    private ReadMe() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(
                "Workbook of one season",
                "",
                "This workbook carries a season into Plumbrow and out of it: the fields, the products on the shelf,",
                "what presses on the crop, and the programs to be weighed against each other.",
                "",
                "Point at a column name to see what belongs there, in which unit and range, with an example.",
                "Dark column names must be filled in on every row. Light ones may stay blank.",
                "A blank cell is unknown, never allowed. Where a label was not read, leave the cell blank.",
                "Do not guess. The current label is the law.",
                "",
                "Write decimals with a point (4.5) and no commas in numbers.",
                "Write dates as year-month-day (2026-05-04). Spell a name the same way on every sheet.",
                "Where low, likely and high stand side by side, fill in all three, or only likely if there is no doubt.",
                "Part several entries in one cell by semicolons: IA; IL.",
                "Of a formula, the value it shows is read. A workbook with macros is refused.",
                "",
                "Sheets called optional may be left out. What they would say is unknown then.",
                "",
                "If anything is wrong, nothing is taken over, and you get one sentence for each fault:",
                "the sheet, the row, the column, what was found and what was expected.",
                "",
                "The sheets:"));
        for (Sheet<?> sheet : Sheets.ALL) {
            lines.add(sheet.name() + "\t" + sheet.purpose() + (sheet.optional() ? " Optional." : ""));
        }
        return List.copyOf(lines);
    }
}
