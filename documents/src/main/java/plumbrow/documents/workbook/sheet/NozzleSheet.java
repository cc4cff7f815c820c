package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.tank.Nozzle;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** The nozzles of the farms, line by line of their makers' charts. */
public final class NozzleSheet {
    private static final NumberKind PSI = NumberKind.between(1, 300);

    static final Column<String> FARM = FarmWords.farm();
    static final Column<String> NOZZLE = Column.of("nozzle", TextKind.NAME, "what it is called", "wide air 04")
            .need();
    static final Column<String> SIZE = Column.of(
                    "size",
                    WordKind.of(List.of("01", "015", "02", "025", "03", "04", "05", "06", "08", "10", "15", "20")),
                    "ISO size: tenths of a gallon a minute at 40 psi",
                    "04")
            .need();
    static final Column<Double> LOW = Column.of("low_psi", PSI, "lowest pressure of this line of the chart", "30")
            .in("psi")
            .need();
    static final Column<Double> HIGH =
            Column.of("high_psi", PSI, "highest pressure of it", "60").in("psi").need();
    static final Column<Droplets> DROPLETS = Column.of(
                    "droplets",
                    WordKind.of(Droplets.class, Droplets::word),
                    "droplet class between these pressures, from the maker's chart",
                    "VC")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Nozzle> SHEET = Sheet.<Nozzle>named(
                    "nozzles",
                    "Nozzles at hand: one row for each droplet class on the maker's chart of a nozzle.",
                    season -> season.work().means().tank().nozzles())
            .optional()
            .column(FARM, Nozzle::farm)
            .column(NOZZLE, Nozzle::nozzle)
            .column(SIZE, Nozzle::size)
            .column(LOW, Nozzle::lowPsi)
            .column(HIGH, Nozzle::highPsi)
            .column(DROPLETS, Nozzle::droplets)
            .column(SOURCE, Nozzle::source)
            .once(FARM, NOZZLE, LOW)
            .check(Words.below(LOW, HIGH))
            .build(row -> new Nozzle(
                    row.get(FARM),
                    row.get(NOZZLE),
                    row.get(SIZE),
                    row.get(LOW),
                    row.get(HIGH),
                    row.get(DROPLETS),
                    row.get(SOURCE)));

    private NozzleSheet() {}
}
