package plumbrow.documents.workbook.form;

import java.time.DateTimeException;
import java.time.LocalDate;

/** A day from 1990 to 2100: a spreadsheet date, or text such as 2026-05-04. */
public record DateKind() implements Kind<LocalDate> {
    private static final LocalDate FIRST = LocalDate.of(1990, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2100, 12, 31);

    @Override
    public String words() {
        return "a date written year-month-day, such as 2026-05-04";
    }

    @Override
    public LocalDate read(Cell cell) throws Misread {
        LocalDate date = date(cell);
        if (date.isBefore(FIRST) || date.isAfter(LAST)) {
            throw new Misread("a date between 1990 and 2100");
        }
        return date;
    }

    private LocalDate date(Cell cell) throws Misread {
        if (cell instanceof Cell.Day day) {
            return day.date();
        }
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        String text = cell.found();
        if (!(cell instanceof Cell.Numeral) && text.matches("\\d{4}-\\d{2}-\\d{2}")) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeException noSuchDay) {
                throw new Misread("a day that is in the calendar");
            }
        }
        throw new Misread(words());
    }

    @Override
    public Cell show(LocalDate value) {
        return new Cell.Day(value);
    }

    @Override
    public Storage<LocalDate> storage() {
        return Storage.DAY;
    }
}
