package plumbrow.documents.binder;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.weighing.CostLine;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedCourse;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Step;

/** The arithmetic of the advised course and of the baseline, every line, at the likely values. */
record WorkingPages(FieldAdvice field) {
    void write(Html html) {
        List<WeighedCourse> shown = Stream.concat(
                        field.advisedCourse().stream(), field.course(field.baseline()).stream())
                .distinct()
                .toList();
        if (field.advised() == null) {
            html.element("p", "quiet", "No course is advised, so the working of the baseline alone stands here.");
        }
        shown.forEach(course -> write(html, course));
    }

    private void write(Html html, WeighedCourse course) {
        html.element("h2", "Working: " + course.name() + " (" + Role.of(field, course) + ")");
        if (!costsAreInTheWorking(course)) {
            html.table(
                    "plain",
                    List.of(
                            Column.words("cost", 30),
                            Column.words("how it comes about", 55),
                            Column.figure("$/ac", 15)));
            for (CostLine cost : course.costs()) {
                html.open("tr")
                        .cell(cost.label())
                        .cell(cost.arithmetic())
                        .figure(Numbers.fixed(cost.usdPerAcre(), 2))
                        .close("tr");
            }
            html.endTable();
        }
        if (!course.working().isEmpty()) {
            html.table(
                    "plain",
                    List.of(
                            Column.words("line", 30),
                            Column.words("arithmetic, at the likely values", 48),
                            Column.figure("result", 11),
                            Column.words("unit", 11)));
            for (Step step : course.working()) {
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

    private static boolean costsAreInTheWorking(WeighedCourse course) {
        List<String> lines = course.working().stream().map(Step::label).toList();
        return lines.containsAll(course.costs().stream().map(CostLine::label).toList());
    }
}
