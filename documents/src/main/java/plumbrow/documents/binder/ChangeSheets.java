package plumbrow.documents.binder;

import java.util.List;
import org.dhatim.fastexcel.Workbook;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.AdviceRange;
import plumbrow.advice.weighing.BestBand;
import plumbrow.advice.weighing.CostLine;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.InformationValue;
import plumbrow.advice.weighing.UncertainInput;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.binder.Grid.Column;
import plumbrow.science.figure.Step;

/** The sheets that say what would change the advice, how it was worked out, and who says so. */
final class ChangeSheets {
    private ChangeSheets() {}

    static void ranges(Workbook workbook, Advice advice) {
        Grid grid = new Grid(
                workbook,
                "ranges",
                List.of(
                        Column.words("field", 24),
                        Column.words("input", 36),
                        Column.words("unit", 12),
                        Column.number("mean now [unit beside]", "General"),
                        Column.words("best program", 30),
                        Column.number("from [unit beside]", "General"),
                        Column.number("to [unit beside]", "General"),
                        Column.number("two standard errors of from [unit beside]", "General"),
                        Column.words("in words", 60)));
        for (FieldAdvice field : advice.fields()) {
            for (AdviceRange range : field.ranges()) {
                for (BestBand band : range.bands()) {
                    grid.row(
                            field.field().name(),
                            range.label(),
                            range.unit(),
                            range.likely(),
                            band.program(),
                            band.from(),
                            band.to(),
                            band.fromError(),
                            range.says());
                }
            }
        }
    }

    static void whatMatters(Workbook workbook, Advice advice) {
        Grid grid = new Grid(
                workbook,
                "what matters",
                List.of(
                        Column.words("field", 24),
                        Column.words("knowing", 36),
                        Column.dollars("is worth at most [$/ac]"),
                        Column.dollars("the same from half the draws [$/ac]"),
                        Column.number("is worth at most on this field [$]", "#,##0"),
                        Column.words("in words", 60)));
        for (FieldAdvice field : advice.fields()) {
            for (InformationValue knowing : field.whatMatters()) {
                grid.row(
                        field.field().name(),
                        knowing.label(),
                        knowing.usdPerAcre(),
                        knowing.halfSampleUsdPerAcre(),
                        knowing.usdField(),
                        knowing.says());
            }
        }
    }

    static void workings(Workbook workbook, Advice advice) {
        Grid grid = new Grid(
                workbook,
                "workings",
                List.of(
                        Column.words("field", 24),
                        Column.words("program", 30),
                        Column.words("role", 12),
                        Column.words("kind", 10),
                        Column.words("line", 40),
                        Column.words("arithmetic, at the likely values", 70),
                        Column.number("result [unit beside]", "#,##0.00####"),
                        Column.words("unit", 12)));
        for (FieldAdvice field : advice.fields()) {
            for (WeighedProgram program : field.programs()) {
                for (CostLine cost : program.costs()) {
                    grid.row(
                            field.field().name(),
                            program.name(),
                            Role.of(field, program),
                            "cost",
                            cost.label(),
                            cost.arithmetic(),
                            cost.usdPerAcre(),
                            "$/ac");
                }
                for (Step step : program.working()) {
                    grid.row(
                            field.field().name(),
                            program.name(),
                            Role.of(field, program),
                            "working",
                            step.label(),
                            step.arithmetic(),
                            step.value(),
                            step.unit());
                }
            }
        }
    }

    static void inputs(Workbook workbook, Advice advice) {
        Grid grid = new Grid(
                workbook,
                "inputs",
                List.of(
                        Column.words("field", 24),
                        Column.words("input", 36),
                        Column.words("unit", 12),
                        Column.words("how it is spread", 40),
                        Column.number("mean [unit beside]", "General"),
                        Column.number("10 of 100 below [unit beside]", "General"),
                        Column.number("half below [unit beside]", "General"),
                        Column.number("10 of 100 above [unit beside]", "General"),
                        Column.words("source", 50)));
        for (FieldAdvice field : advice.fields()) {
            for (UncertainInput input : field.inputs()) {
                grid.row(
                        field.field().name(),
                        input.label(),
                        input.unit(),
                        DistributionWords.of(input.distribution()),
                        input.mean(),
                        input.band().low(),
                        input.band().middle(),
                        input.band().high(),
                        input.source());
            }
        }
    }
}
