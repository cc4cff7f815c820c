package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.LastDayKind;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.form.WordKind;

/** Labels for one state beside the main one. */
public final class SpecialLabelSheet {
    static final Column<String> PRODUCT = Words.product("the product");
    static final Column<Crop> CROP = Words.crop("the crop it allows");
    static final Column<String> STATE = Column.of("state", Words.STATE, "the only state it is for, postal code", "IA")
            .need();
    static final Column<Counties> COUNTIES = Column.of(
                    "counties", new CountiesKind(), "the only counties it is for; all for the whole state", "all")
            .need();
    static final Column<LocalDate> FROM = Column.of("from", new DateKind(), "first day it may be used", "2026-04-15")
            .blankMeans("unknown");
    static final Column<LocalDate> UNTIL = Column.of(
                    "until",
                    new LastDayKind(),
                    "last day it may be used; none where the label prints none",
                    "2026-08-31")
            .blankMeans("unknown");
    static final Column<Boolean> BESIDE = Column.of(
                    "beside_main",
                    WordKind.yesNo(),
                    "whether the main label lists the crop too, so that the use stands on it elsewhere and on other days",
                    "no")
            .otherwise(false);
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<SpecialLabel> SHEET = Sheet.<SpecialLabel>named(
                    "special_labels",
                    "Labels for one state beside the main one: special local need (24(c)) and emergency exemption "
                            + "(section 18).",
                    season -> season.shelf().labels().specialLabels())
            .optional()
            .column(PRODUCT, SpecialLabel::product)
            .column(CROP, SpecialLabel::crop)
            .column(STATE, SpecialLabel::state)
            .column(COUNTIES, label -> new Counties(label.counties()))
            .column(FROM, SpecialLabel::from)
            .column(UNTIL, SpecialLabel::until)
            .column(BESIDE, SpecialLabel::beside)
            .column(SOURCE, SpecialLabel::source)
            .once(PRODUCT, CROP, STATE, FROM)
            .check(Words.ordered(FROM, UNTIL, "no later than"))
            .build(row -> new SpecialLabel(
                    row.get(PRODUCT),
                    row.get(CROP),
                    row.get(STATE),
                    row.get(COUNTIES).named(),
                    row.find(FROM),
                    row.find(UNTIL),
                    row.get(BESIDE),
                    row.get(SOURCE)));

    private SpecialLabelSheet() {}

    /** The counties by name; null for all of the state. */
    record Counties(@Nullable List<String> named) {}

    /** The whole state must be said, not left blank: a blank cell never allows. */
    private record CountiesKind() implements Kind<Counties> {
        private static final String ALL = "all";
        private static final ListKind<String> NAMED =
                new ListKind<>(new CountyName(), "all, or counties parted by semicolons, such as Adams; Pike");

        @Override
        public String words() {
            return NAMED.words();
        }

        @Override
        public Counties read(Cell cell) throws Misread {
            return cell.found().strip().equalsIgnoreCase(ALL) ? new Counties(null) : new Counties(NAMED.read(cell));
        }

        @Override
        public Cell show(Counties value) {
            return value.named() == null ? new Cell.Text(ALL) : NAMED.show(value.named());
        }

        @Override
        public Storage<Counties> storage() {
            return new Storage.Many<>(Storage.TEXT, Counties::named, Counties::new);
        }
    }
}
