package plumbrow.documents.workbook.form;

import java.time.DateTimeException;
import java.time.YearMonth;

/** A month from 1990 to 2100 as 2026-05; a spreadsheet may have made the first day of the month of it. */
public record MonthKind() implements Kind<YearMonth> {
    @Override
    public String words() {
        return "a month written year-month, such as 2026-05";
    }

    @Override
    public YearMonth read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        YearMonth month = cell instanceof Cell.Day day && day.date().getDayOfMonth() == 1
                ? YearMonth.from(day.date())
                : written(cell);
        if (month.getYear() < 1990 || month.getYear() > 2100) {
            throw new Misread("a month between 1990 and 2100");
        }
        return month;
    }

    private YearMonth written(Cell cell) throws Misread {
        String text = cell.found().strip();
        if (cell instanceof Cell.Day || !text.matches("\\d{4}-\\d{2}")) {
            throw new Misread(words());
        }
        try {
            return YearMonth.parse(text);
        } catch (DateTimeException noSuchMonth) {
            throw new Misread("a month that is in the calendar, such as 2026-05");
        }
    }

    @Override
    public Cell show(YearMonth value) {
        return new Cell.Text(value.toString());
    }

    @Override
    public Storage<YearMonth> storage() {
        return new Storage.Plain<>(
                Storage.Type.TEXT, YearMonth::toString, text -> YearMonth.parse(String.class.cast(text)), null);
    }
}
