package plumbrow.documents.binder;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;

/** What the gates found on a field, worst first. A finding that several programs share is told once. */
record FindingPages(FieldAdvice field) {
    void write(Html html) {
        html.element("h2", "Is it allowed and safe");
        Map<Standing, Map<Finding, List<String>>> found = worstFirst();
        if (found.isEmpty()) {
            html.element("p", "No gate had anything to say of these programs.");
        }
        found.forEach((standing, findings) -> table(html, standing, findings));
    }

    /** By standing, worst first; each finding with the programs it holds for. */
    private Map<Standing, Map<Finding, List<String>>> worstFirst() {
        Map<Standing, Map<Finding, List<String>>> found = new EnumMap<>(Standing.class);
        for (WeighedProgram program : field.programs()) {
            for (Finding finding : program.findings()) {
                found.computeIfAbsent(finding.standing(), none -> new LinkedHashMap<>())
                        .computeIfAbsent(finding, none -> new ArrayList<>())
                        .add(program.name());
            }
        }
        return found;
    }

    private void table(Html html, Standing standing, Map<Finding, List<String>> findings) {
        html.open("h3")
                .standing(standing)
                .words(findings.size() == 1 ? ", 1 finding" : ", " + findings.size() + " findings");
        html.close("h3");
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
