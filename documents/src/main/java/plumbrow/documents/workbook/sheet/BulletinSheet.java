package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import java.time.YearMonth;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.MonthKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.form.TextKind;

/** Endangered-species bulletins that somebody has looked up. */
public final class BulletinSheet {
    static final Column<String> PRODUCT = Words.product("the product whose label names bulletins");
    public static final Column<String> STATE =
            Column.of("state", Words.STATE, "the state, postal code", "IA").need();
    public static final Column<String> COUNTY = Column.of(
                    "county", new CountyName(), "the county that it was looked up for", "Adams")
            .need();
    static final Column<YearMonth> MONTH = Column.of(
                    "month", new MonthKind(), "the month of use that it is valid for", "2026-05")
            .need();
    static final Column<LocalDate> LOOKED = Column.of(
                    "looked_up",
                    new DateKind(),
                    "the day it was looked up, at most six months before use",
                    "2026-04-20")
            .need();
    static final Column<String> BY =
            Column.of("by", TextKind.NAME, "who looked it up", "S. Lind").need();
    static final Column<String> SAYS = Column.of(
                    "says", new SaidKind(), "its limits in its own words; none where it sets none", "none")
            .need();

    public static final Sheet<BulletinLook> SHEET = Sheet.<BulletinLook>named(
                    "bulletins",
                    "Endangered-species bulletins looked up: one row for a product, county and month of use. Until then "
                            + "what they say is unknown.",
                    season -> season.shelf().labels().bulletins())
            .optional()
            .column(PRODUCT, BulletinLook::product)
            .column(STATE, BulletinLook::state)
            .column(COUNTY, BulletinLook::county)
            .column(MONTH, BulletinLook::month)
            .column(LOOKED, BulletinLook::looked)
            .column(BY, BulletinLook::by)
            .column(SAYS, BulletinLook::says)
            .once(PRODUCT, STATE, COUNTY, MONTH, LOOKED)
            .check(BulletinSheet::checkMonth)
            .build(row -> new BulletinLook(
                    row.get(PRODUCT),
                    row.get(STATE),
                    row.get(COUNTY),
                    row.get(MONTH),
                    row.get(LOOKED),
                    row.get(BY),
                    row.get(SAYS)));

    private BulletinSheet() {}

    private static void checkMonth(Row row, Objections objections) {
        YearMonth month = row.find(MONTH);
        LocalDate looked = row.find(LOOKED);
        if (month != null && looked != null && YearMonth.from(looked).isAfter(month)) {
            objections.at(row, LOOKED, "a day no later than the month it is valid for, " + month);
        }
    }

    /** The limits in words; "none" is kept as empty text, since a blank must not say that there are none. */
    private record SaidKind() implements Kind<String> {
        private static final String NONE = "none";

        @Override
        public String words() {
            return "its limits in its own words, or none where it sets none";
        }

        @Override
        public String read(Cell cell) throws Misread {
            String text = TextKind.PROSE.read(cell);
            return text.strip().equalsIgnoreCase(NONE) ? "" : text;
        }

        @Override
        public Cell show(String value) {
            return value.isEmpty() ? new Cell.Text(NONE) : TextKind.PROSE.show(value);
        }

        @Override
        public Storage<String> storage() {
            return Storage.TEXT;
        }
    }
}
