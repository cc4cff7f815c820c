package plumbrow.documents.binder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;

/** What the gates found on a field, in the order of telling. A finding that several programs share is told once. */
record FindingPages(FieldAdvice field) {
    void write(Html html) {
        html.element("h2", "Is it allowed and safe");
        List<Matter> matters = Matter.ofFindings(told());
        if (matters.isEmpty() && clear().isEmpty()) {
            html.element("p", "No check had anything to say of these programs.");
        }
        for (MatterKind kind : MatterKind.values()) {
            List<Matter> of =
                    matters.stream().filter(matter -> matter.kind() == kind).toList();
            if (!of.isEmpty()) {
                html.element("h3", kind.words());
                table(
                        html,
                        found(of.stream()
                                .flatMap(matter -> matter.told().stream())
                                .toList()));
            }
        }
        Map<Finding, List<String>> clear = clear();
        if (!clear.isEmpty()) {
            html.open("h3").standing(Standing.CLEAR).close("h3");
            table(html, clear);
        }
    }

    private List<Matter.Told> told() {
        return field.programs().stream()
                .flatMap(program -> program.findings().stream()
                        .map(finding -> new Matter.Told(field.field().name(), program.name(), finding)))
                .toList();
    }

    private Map<Finding, List<String>> clear() {
        return found(told().stream()
                .filter(one -> one.finding().standing() == Standing.CLEAR)
                .toList());
    }

    /** Each finding with the programs it holds for. */
    private static Map<Finding, List<String>> found(List<Matter.Told> told) {
        Map<Finding, List<String>> found = new LinkedHashMap<>();
        told.forEach(one ->
                found.computeIfAbsent(one.finding(), none -> new ArrayList<>()).add(one.program()));
        return found;
    }

    private void table(Html html, Map<Finding, List<String>> findings) {
        html.table(
                "plain",
                List.of(
                        Column.words("protects", 17),
                        Column.words("what it says", 32),
                        Column.words("in which program", 17),
                        Column.figure("found", 10),
                        Column.figure("limit", 10),
                        Column.words("where it stands", 14)));
        findings.forEach((finding, programs) -> row(html, finding, programs));
        html.endTable();
    }

    private void row(Html html, Finding finding, List<String> programs) {
        html.open("tr").open("td");
        html.words(finding.protects().words())
                .markup("<br/>")
                .element("span", "quiet", finding.gate().replace("-", " "));
        html.close("td").open("td").words(finding.subject() + ": " + finding.says());
        if (!finding.clears().isBlank()) {
            html.markup("<br/>").element("b", finding.clears());
        }
        html.close("td")
                .cell(inWhich(programs))
                .figure(value(finding.measured(), finding.unit()))
                .figure(value(finding.limit(), finding.unit()))
                .cell(finding.source().isBlank() ? "no source stated" : finding.source())
                .close("tr");
    }

    /** Names the programs, or, where they are the most, those that are left out. */
    private String inWhich(List<String> programs) {
        List<String> others = field.programs().stream()
                .map(WeighedProgram::name)
                .filter(name -> !programs.contains(name))
                .toList();
        if (others.isEmpty() && programs.size() > 1) {
            return "all";
        }
        return others.size() < programs.size() - 1
                ? "all but " + String.join("; ", others)
                : String.join("; ", programs);
    }

    private static String value(@Nullable Double value, String unit) {
        return value == null ? "—" : Numbers.read(value, unit);
    }
}
