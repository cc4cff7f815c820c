package plumbrow.documents.binder;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.weighing.CostLine;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Step;

/** The arithmetic of the advised program and of the baseline, every line, at the likely values. */
record WorkingPages(FieldAdvice field) {
    void write(Html html) {
        List<WeighedProgram> shown = Stream.concat(
                        field.advisedProgram().stream(), field.program(field.baseline()).stream())
                .distinct()
                .toList();
        if (field.advised() == null) {
            html.element("p", "quiet", "No program is advised, so the working of the baseline alone stands here.");
        }
        shown.forEach(program -> write(html, program));
    }

    private void write(Html html, WeighedProgram program) {
        html.element("h2", "Working: " + program.name() + " (" + Role.of(field, program) + ")");
        if (!costsAreInTheWorking(program)) {
            html.table(
                    "plain",
                    List.of(
                            Column.words("cost", 30),
                            Column.words("how it comes about", 55),
                            Column.figure("$/ac", 15)));
            for (CostLine cost : program.costs()) {
                html.open("tr")
                        .cell(cost.label())
                        .cell(cost.arithmetic())
                        .figure(Numbers.fixed(cost.usdPerAcre(), 2))
                        .close("tr");
            }
            html.endTable();
        }
        if (!program.working().isEmpty()) {
            html.table(
                    "plain",
                    List.of(
                            Column.words("line", 30),
                            Column.words("arithmetic, at the likely values", 48),
                            Column.figure("result", 11),
                            Column.words("unit", 11)));
            for (Step step : program.working()) {
                html.open("tr")
                        .cell(step.label())
                        .cell(step.arithmetic())
                        .figure(Numbers.plain(step.value()))
                        .cell(step.unit())
                        .close("tr");
            }
            html.endTable();
        }
    }

    private static boolean costsAreInTheWorking(WeighedProgram program) {
        List<String> lines = program.working().stream().map(Step::label).toList();
        return lines.containsAll(program.costs().stream().map(CostLine::label).toList());
    }
}
