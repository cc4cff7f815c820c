package plumbrow.documents.workbook.sheet;

import plumbrow.advice.tank.Sprayer;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** What the sprayers of the farms are built of. */
public final class SprayerSheet {
    static final Column<String> FARM = FarmWords.farm();
    static final Column<String> MACHINE = Column.of(
                    "machine", TextKind.NAME, "the sprayer, as the sheet machines calls it", "the big sprayer")
            .need();
    static final Column<Double> TANK = Column.of(
                    "tank_gal",
                    NumberKind.between(1, 10_000),
                    "usable volume of the tank, less what the pump cannot reach",
                    "1000")
            .in("gal")
            .need();
    static final Column<Double> SPACING =
            Words.number("spacing_in", NumberKind.between(5, 120), "in", "nozzle spacing along the boom", "20");
    static final Column<Double> PUMP = Words.number(
            "pump_gpm", NumberKind.between(0, 1000), "gal/min", "what the pump gives at spraying pressure", "140");
    static final Column<Double> AGITATION = Words.number(
            "agitation_gpm",
            NumberKind.between(0, 1000),
            "gal/min",
            "what of it goes back into the tank to agitate",
            "50");
    static final Column<Double> FILL =
            Words.number("fill_min", NumberKind.between(0, 600), "min", "minutes to fill, the drive included", "20");
    static final Column<Double> LEFT = Words.number(
            "most_left_gal",
            NumberKind.between(0, 1000),
            "gal",
            "the most that may be left in tank and lines at the end of a job",
            "10");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Sprayer> SHEET = Sheet.<Sprayer>named(
                    "sprayers",
                    "Tank, boom and pump of a sprayer: one row for each. Load cards need it.",
                    season -> season.work().means().tank().sprayers())
            .optional()
            .column(FARM, Sprayer::farm)
            .column(MACHINE, Sprayer::machine)
            .column(TANK, Sprayer::tankGal)
            .column(SPACING, Sprayer::spacingIn)
            .column(PUMP, Sprayer::pumpGpm)
            .column(AGITATION, Sprayer::agitationGpm)
            .column(FILL, Sprayer::fillMinutes)
            .column(LEFT, Sprayer::mostLeftGal)
            .column(SOURCE, Sprayer::source)
            .once(FARM, MACHINE)
            .build(row -> new Sprayer(
                    row.get(FARM),
                    row.get(MACHINE),
                    row.get(TANK),
                    row.find(SPACING),
                    row.find(PUMP),
                    row.find(AGITATION),
                    row.find(FILL),
                    row.find(LEFT),
                    row.get(SOURCE)));

    private SprayerSheet() {}
}
