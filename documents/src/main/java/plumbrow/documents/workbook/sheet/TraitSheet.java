package plumbrow.documents.workbook.sheet;

import plumbrow.advice.shelf.Trait;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** Trait proteins and the insects they are aimed at. */
public final class TraitSheet {
    public static final Column<String> TRAIT = Column.of(
                    "trait", TextKind.NAME, "the protein, as the seeds sheet names it", "Cry3Bb1")
            .need();
    public static final Column<String> GROUP = Column.of(
                    "group",
                    TextKind.NAME,
                    "its mode of action; proteins between which resistance crosses share a group",
                    "Cry3")
            .need();
    public static final Column<String> INSECT = Column.of(
                    "insect", TextKind.NAME, "the insect it is aimed at", "western corn rootworm")
            .need();
    static final DistributionColumns CONTROL = DistributionColumns.of(
                    "control_*", Words.SHARE, "share", "share of injury it prevents while it works", 0.7, 0.85, 0.95)
            .need()
            .spreadWhereBlank();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Trait> SHEET = Sheet.<Trait>named(
                    "traits",
                    "One row for each trait protein and insect.",
                    season -> season.shelf().traits())
            .column(TRAIT, Trait::name)
            .column(GROUP, Trait::group)
            .column(INSECT, Trait::insect)
            .distribution(CONTROL, Trait::control)
            .column(SOURCE, Trait::source)
            .once(TRAIT, INSECT)
            .build(row ->
                    new Trait(row.get(TRAIT), row.get(GROUP), row.get(INSECT), CONTROL.read(row), row.get(SOURCE)));

    private TraitSheet() {}
}
