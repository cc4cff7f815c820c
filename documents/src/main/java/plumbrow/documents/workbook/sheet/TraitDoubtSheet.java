package plumbrow.documents.workbook.sheet;

import plumbrow.advice.pests.TraitDoubt;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** Where a trait may no longer work. */
public final class TraitDoubtSheet {
    static final Column<String> FIELD =
            Column.of("field", TextKind.NAME, "the field", "East 80").need().from(FieldSheet.SHEET, FieldSheet.FIELD);
    static final Column<String> GROUP = Column.of(
                    "trait_group", TextKind.NAME, "the group of the traits sheet that may fail", "Cry3")
            .need()
            .from(TraitSheet.SHEET, TraitSheet.GROUP);
    static final Column<String> INSECT = Column.of(
                    "insect", TextKind.NAME, "the insect that may be resistant", "western corn rootworm")
            .need()
            .from(TraitSheet.SHEET, TraitSheet.INSECT);
    static final Column<Double> CHANCE = Column.of(
                    "chance", Words.SHARE, "chance that it fails here this season", "0.25")
            .in("0 to 1")
            .need();
    static final Column<Double> LEFT = Column.of(
                    "control_if_failed", Words.SHARE, "share of injury it still prevents if it fails", "0.3")
            .in("share")
            .otherwise(0.0);
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<TraitDoubt> SHEET = Sheet.<TraitDoubt>named(
                    "trait_doubts",
                    "One row for each trait group that may fail on a field.",
                    season -> season.pests().traitDoubts())
            .column(FIELD, TraitDoubt::field)
            .column(GROUP, TraitDoubt::group)
            .column(INSECT, TraitDoubt::insect)
            .column(CHANCE, TraitDoubt::chance)
            .column(LEFT, TraitDoubt::controlIfFailed)
            .column(SOURCE, TraitDoubt::source)
            .once(FIELD, GROUP, INSECT)
            .build(row -> new TraitDoubt(
                    row.get(FIELD), row.get(GROUP), row.get(INSECT), row.get(CHANCE), row.get(LEFT), row.get(SOURCE)));

    private TraitDoubtSheet() {}
}
