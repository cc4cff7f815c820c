package plumbrow.app.command.said;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedCourse;
import plumbrow.app.json.CourseFindings;
import plumbrow.science.figure.Numbers;

/** Findings said in text: the standing in a word, the reason, the measured value against its limit, what clears it. */
public final class FindingWords {
    private FindingWords() {}

    /** Course by course: the standing first, every finding, what is clear in short. */
    public static String checked(List<CourseFindings> courses) {
        Paper paper = new Paper();
        for (CourseFindings course : courses) {
            paper.heading(course.field() + ", " + course.course() + ": "
                    + course.standing().word());
            course.findings().stream()
                    .filter(finding -> finding.standing() != Standing.CLEAR)
                    .forEach(finding -> finding(paper, finding, ""));
            String clear = course.findings().stream()
                    .filter(finding -> finding.standing() == Standing.CLEAR)
                    .map(Finding::gate)
                    .distinct()
                    .collect(Collectors.joining(", "));
            if (!clear.isEmpty()) {
                paper.prose("  clear: ", clear);
            }
        }
        return paper.gap()
                .prose("The current label is the law. Local code and licensed practice decide.")
                .text();
    }

    /** The findings of a field's courses that are not clear, each said once with the courses it holds for. */
    static void across(Paper paper, FieldAdvice advice) {
        Map<Finding, List<String>> courses = new LinkedHashMap<>();
        for (WeighedCourse course : advice.courses()) {
            course.findings().stream()
                    .filter(finding -> finding.standing() != Standing.CLEAR)
                    .forEach(finding -> courses.computeIfAbsent(finding, first -> new ArrayList<>())
                            .add(course.name()));
        }
        if (!courses.isEmpty()) {
            paper.heading("What stands in the way");
            courses.forEach((finding, names) -> finding(paper, finding, " (" + String.join(", ", names) + ")"));
        }
    }

    private static void finding(Paper paper, Finding finding, String where) {
        String mark = "  " + finding.standing().word() + ": ";
        paper.prose(mark, finding.says() + where);
        String indent = " ".repeat(mark.length());
        if (!finding.clears().isEmpty()) {
            paper.prose(indent, finding.clears());
        }
        String measured = measured(finding);
        if (!measured.isEmpty() || !finding.source().isEmpty()) {
            paper.prose(indent, measured + (finding.source().isEmpty() ? "" : "Source: " + finding.source()));
        }
    }

    private static String measured(Finding finding) {
        String unit = finding.unit().isEmpty() ? "" : " " + finding.unit();
        Double measured = finding.measured();
        Double limit = finding.limit();
        String found = measured == null ? "" : "Found " + Numbers.plain(measured) + unit;
        String held = limit == null ? "" : (found.isEmpty() ? "Limit " : ", limit ") + Numbers.plain(limit) + unit;
        return (found + held).isEmpty() ? "" : found + held + ". ";
    }
}
