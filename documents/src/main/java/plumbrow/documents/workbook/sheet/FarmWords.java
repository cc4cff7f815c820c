package plumbrow.documents.workbook.sheet;

import plumbrow.advice.means.MachineKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** Columns that the sheets of a farm's means have in common. */
final class FarmWords {
    private FarmWords() {}

    static Column<String> farm() {
        return Column.of("farm", TextKind.NAME, "the farm", "Oakridge").need().from(FarmSheet.SHEET, FarmSheet.FARM);
    }

    static Column<MachineKind> kind() {
        return Column.of(
                        "kind",
                        WordKind.of(MachineKind.class, MachineKind::word),
                        "planter for seed passes, sprayer for spray passes",
                        "sprayer")
                .need();
    }
}
