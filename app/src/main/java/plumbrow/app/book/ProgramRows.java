package plumbrow.app.book;

import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.field.Crop;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.season.Season;

/** The candidate answers with their passes, and the assumptions on which they are weighed. */
final class ProgramRows {
    /** Programs; their passes come with {@link #PASS}. */
    static final RowKind<Program> PROGRAM = new RowKind<>(
            "program",
            "field name baseline refuge_distance_ft refuge_rows note",
            Season::programs,
            (program, cells) -> cells.text(program.field())
                    .text(program.name())
                    .yes(program.baseline())
                    .real(program.refuge().distanceFt())
                    .whole(program.refuge().rows())
                    .text(program.note()),
            row -> new Program(
                    row.text(),
                    row.text(),
                    row.yes(),
                    new RefugePlan(row.maybeReal(), row.maybeWhole()),
                    row.text(),
                    List.of()));

    static final RowKind<Trip> PASS = new RowKind<>(
            "pass",
            "field program number kind date product rate rate_unit share_pct charge_usd_ac injury_pct delay_days"
                    + " trigger_insect trigger_threshold trigger_unit trigger_count_per_pressure trigger_within_times"
                    + " trigger_scouting_usd_ac",
            season -> season.programs().stream()
                    .flatMap(program -> program.passes().stream()
                            .map(pass -> new Trip(new Place(program.field(), program.name()), pass)))
                    .toList(),
            (trip, cells) -> trigger(
                    cells.text(trip.place().field())
                            .text(trip.place().program())
                            .whole(trip.pass().number())
                            .word(trip.pass().kind())
                            .date(trip.pass().date())
                            .text(trip.pass().product())
                            .amount(trip.pass().rate())
                            .real(trip.pass().sharePct())
                            .real(trip.pass().chargeUsdPerAcre())
                            .distribution(trip.pass().injuryPct())
                            .real(trip.pass().delayDays()),
                    trip.pass().trigger()),
            row -> new Trip(
                    new Place(row.text(), row.text()),
                    new Pass(
                            row.whole(),
                            row.word(PassKind.class),
                            row.maybeDate(),
                            row.maybeText(),
                            row.maybeAmount(),
                            row.real(),
                            row.real(),
                            row.distribution(),
                            row.real(),
                            trigger(row))));

    static final RowKind<AssumptionLine> OUTLOOK = new RowKind<>(
            "assumptions",
            "crop field quantity distribution source",
            Season::assumptions,
            (line, cells) -> cells.word(line.crop())
                    .text(line.field())
                    .word(line.quantity())
                    .distribution(line.distribution())
                    .text(line.source()),
            row -> new AssumptionLine(
                    row.maybeWord(Crop.class),
                    row.maybeText(),
                    row.word(AssumptionQuantity.class),
                    row.distribution(),
                    row.text()));

    /** The program of a field to which a pass belongs. */
    record Place(String field, String program) {}

    /** A pass and where it belongs. */
    record Trip(Place place, Pass pass) {}

    private ProgramRows() {}

    private static void trigger(Cells cells, @Nullable ScoutingTrigger trigger) {
        if (trigger == null) {
            cells.text(null).real(null).text(null).real(null).real(null).real(null);
        } else {
            cells.text(trigger.insect())
                    .real(trigger.threshold())
                    .text(trigger.unit())
                    .real(trigger.countPerPressure())
                    .real(trigger.withinTimes())
                    .real(trigger.scoutingUsdPerAcre());
        }
    }

    private static @Nullable ScoutingTrigger trigger(Row row) throws SQLException {
        String insect = row.maybeText();
        Double threshold = row.maybeReal();
        String unit = row.maybeText();
        Double countPerPressure = row.maybeReal();
        Double withinTimes = row.maybeReal();
        Double scouting = row.maybeReal();
        return insect == null || threshold == null
                ? null
                : new ScoutingTrigger(
                        insect,
                        threshold,
                        unit,
                        countPerPressure == null ? 1 : countPerPressure,
                        withinTimes == null ? 1 : withinTimes,
                        scouting);
    }

    /** The programs with their passes. */
    static List<Program> withPasses(List<Program> programs, List<Trip> trips) {
        Map<Place, List<Trip>> byProgram = Grouped.by(Trip::place, trips);
        return programs.stream()
                .map(program -> withPasses(program, byProgram.get(new Place(program.field(), program.name()))))
                .toList();
    }

    private static Program withPasses(Program program, @Nullable List<Trip> trips) {
        List<Pass> passes =
                trips == null ? List.of() : trips.stream().map(Trip::pass).toList();
        return new Program(
                program.field(), program.name(), program.baseline(), program.refuge(), program.note(), passes);
    }
}
