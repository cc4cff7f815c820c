package plumbrow.documents.binder;

import java.util.List;
import org.dhatim.fastexcel.Workbook;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.binder.Grid.Column;

/** The sheets that say what to do, how sure that is, and whether it is allowed. */
final class ProgramSheets {
    private ProgramSheets() {}

    static void advice(Workbook workbook, Season season, Advice advice) {
        Grid grid = new Grid(
                workbook,
                "advice",
                List.of(
                        Column.number("year", "0"),
                        Column.words("as of", 12),
                        Column.words("adviser", 18),
                        Column.words("farm", 20),
                        Column.words("grower", 18),
                        Column.words("field", 24),
                        Column.number("area [ac]", "#,##0.0"),
                        Column.words("crop", 10),
                        Column.words("advised program, or those about equal", 40),
                        Column.words("baseline", 30),
                        Column.words("advice", 60),
                        Column.words("reason", 50),
                        Column.words("doubt", 50),
                        Column.dollars("value of information all [$/ac]"),
                        Column.number("draws", "#,##0"),
                        Column.number("seed", "0")));
        for (FieldAdvice field : advice.fields()) {
            grid.row(
                    season.year(),
                    advice.asOf(),
                    advice.adviser(),
                    field.field().farm(),
                    field.grower(),
                    field.field().name(),
                    field.field().acres(),
                    field.field().crop().word(),
                    field.advised() == null ? "none may be advised" : String.join("; ", field.leading()),
                    field.baseline(),
                    field.sentence(),
                    field.reason(),
                    field.doubt(),
                    field.evpiUsdPerAcre(),
                    field.draws(),
                    field.seed());
        }
    }

    static void programs(Workbook workbook, Advice advice) {
        Grid grid = new Grid(
                workbook,
                "programs",
                List.of(
                        Column.words("field", 24),
                        Column.words("program", 30),
                        Column.words("status", 12),
                        Column.words("role", 12),
                        Column.dollars("cost [$/ac]"),
                        Column.number("mean yield [bu/ac]", "#,##0.0"),
                        Column.dollars("mean margin [$/ac]"),
                        Column.dollars("standard error of that mean [$/ac]"),
                        Column.dollars("margin, 10 of 100 below [$/ac]"),
                        Column.dollars("margin, half below [$/ac]"),
                        Column.dollars("margin, 10 of 100 above [$/ac]"),
                        Column.dollars("expected shortfall, mean margin of the worst 10 % [$/ac]"),
                        Column.dollars("mean gain over baseline [$/ac]"),
                        Column.dollars("gain, 10 of 100 below [$/ac]"),
                        Column.dollars("gain, half below [$/ac]"),
                        Column.dollars("gain, 10 of 100 above [$/ac]"),
                        Column.number("chance it beats the baseline [0 to 1]", "0.00"),
                        Column.number("chance it is best of all [0 to 1]", "0.00"),
                        Column.words("note", 40),
                        Column.words("decided after scouting", 60)));
        for (FieldAdvice field : advice.fields()) {
            for (WeighedProgram program : field.programs()) {
                grid.row(
                        field.field().name(),
                        program.name(),
                        program.standing().word(),
                        Role.of(field, program),
                        program.costUsdPerAcre(),
                        program.meanYieldBuPerAcre(),
                        program.meanMarginUsdPerAcre(),
                        program.standardErrorUsdPerAcre(),
                        program.margin().low(),
                        program.margin().middle(),
                        program.margin().high(),
                        program.shortfallUsdPerAcre(),
                        program.meanGainUsdPerAcre(),
                        program.gain().low(),
                        program.gain().middle(),
                        program.gain().high(),
                        program.chanceBeatsBaseline(),
                        program.chanceBest(),
                        program.note(),
                        String.join(" ", program.scouting()));
            }
        }
    }

    static void findings(Workbook workbook, Advice advice) {
        Grid grid = new Grid(
                workbook,
                "findings",
                List.of(
                        Column.words("field", 24),
                        Column.words("program", 30),
                        Column.words("finding", 12),
                        Column.words("check", 18),
                        Column.words("protects", 18),
                        Column.words("of what", 24),
                        Column.words("what it says", 50),
                        Column.number("found [unit beside]", "General"),
                        Column.number("limit [unit beside]", "General"),
                        Column.words("unit", 12),
                        Column.words("where it stands", 36),
                        Column.words("what would clear it", 50)));
        for (FieldAdvice field : advice.fields()) {
            for (WeighedProgram program : field.programs()) {
                for (Finding finding : program.findings()) {
                    grid.row(
                            field.field().name(),
                            program.name(),
                            finding.standing().word(),
                            finding.gate(),
                            finding.protects().words(),
                            finding.subject(),
                            finding.says(),
                            finding.measured(),
                            finding.limit(),
                            finding.unit(),
                            finding.source(),
                            finding.clears());
                }
            }
        }
    }
}
