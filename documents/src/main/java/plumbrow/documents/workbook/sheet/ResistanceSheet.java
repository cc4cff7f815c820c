package plumbrow.documents.workbook.sheet;

import plumbrow.advice.pests.KnownResistance;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.form.TextKind;

/** Weeds that a site of action no longer controls. */
public final class ResistanceSheet {
    static final Column<String> FIELD = Words.field("the field");
    public static final Column<String> WEED = Column.of(
                    "weed", TextKind.NAME, "its name, spelled as in the weeds sheet", "waterhemp")
            .need();
    static final Column<String> GROUP = Column.of(
                    "group", new GroupKind(), "site-of-action group that no longer controls it", "9")
            .need();
    static final Column<Double> SHARE = Column.of("share_pct", Words.PERCENT, "share of its plants that resist", "30")
            .in("%")
            .blankMeans("not counted, all of them are taken to");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<KnownResistance> SHEET = Sheet.<KnownResistance>named(
                    "resistance",
                    "Weeds that a site of action no longer controls: one row for a field, weed and group.",
                    season -> season.pests().resistance())
            .optional()
            .column(FIELD, KnownResistance::field)
            .column(WEED, KnownResistance::weed)
            .column(GROUP, KnownResistance::group)
            .column(SHARE, KnownResistance::sharePct)
            .column(SOURCE, KnownResistance::source)
            .once(FIELD, WEED, GROUP)
            .build(row -> new KnownResistance(
                    row.get(FIELD), row.get(WEED), row.get(GROUP), row.find(SHARE), row.get(SOURCE)));

    private ResistanceSheet() {}

    /** The number of a site-of-action group, as labels print it. */
    private record GroupKind() implements Kind<String> {
        @Override
        public String words() {
            return "the number of a site-of-action group, such as 9 or 14";
        }

        @Override
        public String read(Cell cell) throws Misread {
            if (cell instanceof Cell.Broken broken) {
                throw new Misread(broken.expected());
            }
            String group = cell.found();
            if (!group.matches("[1-9]\\d?")) {
                throw new Misread(words());
            }
            return group;
        }

        @Override
        public Cell show(String value) {
            return new Cell.Text(value);
        }

        @Override
        public Storage<String> storage() {
            return Storage.TEXT;
        }
    }
}
