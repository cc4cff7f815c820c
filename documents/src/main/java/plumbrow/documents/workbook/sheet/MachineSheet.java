package plumbrow.documents.workbook.sheet;

import plumbrow.advice.means.Machine;
import plumbrow.advice.means.MachineKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** Planters and sprayers of the farms. */
public final class MachineSheet {
    static final Column<String> FARM = FarmWords.farm();
    static final Column<String> MACHINE = Column.of(
                    "machine", TextKind.NAME, "what it is called, used once in a farm", "the big sprayer")
            .need();
    static final Column<MachineKind> KIND = FarmWords.kind();
    static final Column<Double> WIDTH = Column.of(
                    "width_ft", NumberKind.between(1, 300), "effective width, less overlap", "60")
            .in("ft")
            .need();
    static final Column<Double> SPEED = Column.of("speed_mph", NumberKind.between(0.5, 40), "speed in the field", "12")
            .in("mph")
            .need();
    static final Column<Double> EFFICIENCY = Column.of(
                    "efficiency_pct",
                    NumberKind.between(1, 100),
                    "share of the time in the field in which it works; planter 50 to 75, sprayer 50 to 80 from memory",
                    "65")
            .in("%")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Machine> SHEET = Sheet.<Machine>named(
                    "machines",
                    "Planters and sprayers: one row for each. All of a kind work side by side.",
                    season -> season.work().means().machines())
            .optional()
            .column(FARM, Machine::farm)
            .column(MACHINE, Machine::name)
            .column(KIND, Machine::kind)
            .column(WIDTH, Machine::widthFt)
            .column(SPEED, Machine::speedMph)
            .column(EFFICIENCY, Machine::efficiencyPct)
            .column(SOURCE, Machine::source)
            .once(FARM, MACHINE)
            .build(row -> new Machine(
                    row.get(FARM),
                    row.get(MACHINE),
                    row.get(KIND),
                    row.get(WIDTH),
                    row.get(SPEED),
                    row.get(EFFICIENCY),
                    row.get(SOURCE)));

    private MachineSheet() {}
}
