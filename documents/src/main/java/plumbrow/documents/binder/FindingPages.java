package plumbrow.documents.binder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedCourse;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;

/** What the gates found on a field, worst first. A finding that several courses share is told once. */
record FindingPages(FieldAdvice field) {
    void write(Html html) {
        html.element("h2", "Is it allowed and safe");
        Map<Finding, List<String>> shared = shared();
        if (shared.isEmpty()) {
            html.element("p", "No gate had anything to say of these courses.");
            return;
        }
        html.table(
                "plain",
                List.of(
                        Column.words("finding", 13),
                        Column.words("protects, gate", 13),
                        Column.words("of what, in which course", 19),
                        Column.words("what it says", 25),
                        Column.figure("found", 8),
                        Column.figure("limit", 8),
                        Column.words("where it stands", 14)));
        shared.forEach((finding, courses) -> row(html, finding, courses));
        html.endTable();
    }

    private Map<Finding, List<String>> shared() {
        Map<Finding, List<String>> courses = new LinkedHashMap<>();
        for (WeighedCourse course : field.courses()) {
            for (Finding finding : course.findings()) {
                courses.computeIfAbsent(finding, none -> new ArrayList<>()).add(course.name());
            }
        }
        Map<Finding, List<String>> worstFirst = new LinkedHashMap<>();
        courses.entrySet().stream()
                .sorted(Comparator.comparing(entry -> entry.getKey().standing()))
                .forEach(entry -> worstFirst.put(entry.getKey(), entry.getValue()));
        return worstFirst;
    }

    private void row(Html html, Finding finding, List<String> courses) {
        html.open("tr").open("td");
        html.standing(finding.standing());
        html.close("td").open("td");
        html.words(finding.protects().words()).markup("<br/>").element("span", "quiet", finding.gate());
        html.close("td").open("td");
        html.words(finding.subject()).markup("<br/>").element("span", "quiet", inWhich(courses));
        html.close("td").open("td").words(finding.says());
        if (!finding.clears().isBlank()) {
            html.markup("<br/>").element("b", finding.clears());
        }
        html.close("td")
                .figure(value(finding.measured(), finding.unit()))
                .figure(value(finding.limit(), finding.unit()))
                .cell(finding.source())
                .close("tr");
    }

    /** Names the courses, or, where they are the most, those that are left out. */
    private String inWhich(List<String> courses) {
        List<String> others = field.courses().stream()
                .map(WeighedCourse::name)
                .filter(name -> !courses.contains(name))
                .toList();
        if (others.isEmpty() && courses.size() > 1) {
            return "in all courses";
        }
        return others.size() < courses.size() - 1
                ? "in all courses but " + String.join("; ", others)
                : "in " + String.join("; ", courses);
    }

    private static String value(@Nullable Double value, String unit) {
        return value == null ? "—" : (Numbers.plain(value) + " " + unit).strip();
    }
}
