package plumbrow.science.pages;

import static plumbrow.science.pages.Markdown.code;
import static plumbrow.science.pages.Markdown.head;
import static plumbrow.science.pages.Markdown.row;
import static plumbrow.science.pages.Markdown.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.Checks;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Status;
import plumbrow.science.figure.Subject;
import plumbrow.science.reference.Sources;

/** The manual's pages of every value from outside that the science is held against: one in front, one a subject. */
final class ChecksPage {
    /** Longer calls, such as a whole trial, are shortened in the middle; the figure's page and the tests have them whole. */
    private static final int LONGEST_CALL = 220;

    private ChecksPage() {}

    static String markdown() {
        List<Check> all = Checks.all();
        StringBuilder page = new StringBuilder("""
                # Checks

                Every value from outside that the figures of the science are held against, with what this code gives. Each
                row runs as a test in every build. A number agrees when it lies within one in the last digit that the source
                prints, unless a slack is named; beside it stands ours with one digit more.

                - **verified**: seen in the source named.
                - **computed**: worked outside this code with numpy, scipy or R: a test of the formula, no evidence that the
                  formula is right. The source named is that of the formula.
                - **common practice, no source** and **value from memory**: what the words say; confirm before relying on it.

                A printed value that is known to be wrong, or that stands for something else, is shown as *differs*, with the
                reason; its test fails should it begin to agree.

                Sources go by author and year here; the [list of sources](sources.md) has them in full.

                To write this page and those of the figures anew after a declaration or a check changed:

                    mvn -B test -pl science -am -Dtest=PagesTest -Dsurefire.failIfNoSpecifiedTests=false -Dplumbrow.docs=write

                Without `-Dplumbrow.docs=write` the same test fails where a page is stale.

                """);
        return page.append(counts(all)).toString();
    }

    /** The checks of one subject. */
    static String markdown(Subject subject) {
        StringBuilder page = new StringBuilder("# Checks: " + subject.title() + "\n\n")
                .append(
                        "What the columns mean stands in [checks](../checks.md), each source in full in the [list of sources]")
                .append("(../sources.md).\n\n")
                .append(head("check", "source", "status", "expected", "got", "agrees"));
        Checks.all().stream().filter(check -> check.subject() == subject).forEach(check -> page.append(line(check)));
        return page.toString();
    }

    private static String counts(List<Check> all) {
        List<String> names = new ArrayList<>(List.of("subject"));
        Arrays.stream(Status.values()).map(Status::words).forEach(names::add);
        names.addAll(List.of("together", "differing"));
        StringBuilder table = new StringBuilder(head(names.toArray(String[]::new)));
        for (Subject subject : Subject.values()) {
            table.append(countRow(
                    "[" + subject.title() + "](checks/" + SubjectPage.file(subject) + ".md)",
                    all.stream().filter(check -> check.subject() == subject).toList()));
        }
        return table.append(countRow("together", all)).toString();
    }

    private static String countRow(String name, List<Check> checks) {
        List<String> cells = new ArrayList<>(List.of(name));
        for (Status status : Status.values()) {
            cells.add(count(
                    checks.stream().filter(check -> check.status() == status).count()));
        }
        cells.add(count(checks.size()));
        cells.add(count(
                checks.stream().filter(check -> !check.differs().isEmpty()).count()));
        return row(cells);
    }

    private static String count(long number) {
        return Numbers.fixed((double) number, 0);
    }

    private static String line(Check check) {
        return row(List.of(
                check.expected().containsKey("") ? words(check.what()) : code(shortened(check.what())),
                words(Sources.brief(check.source())),
                check.status().words(),
                code(values(check.expected()) + (check.slack() > 0 ? " ±" + Numbers.plain(check.slack()) : "")),
                code(values(check.found())),
                agrees(check)));
    }

    private static String agrees(Check check) {
        if (!check.differs().isEmpty()) {
            return "*differs*: " + words(check.differs());
        }
        return check.holds() ? "yes" : "**no**";
    }

    private static String values(Map<String, String> values) {
        return values.entrySet().stream()
                .map(value -> value.getKey().isEmpty() ? value.getValue() : value.getKey() + "=" + value.getValue())
                .collect(Collectors.joining(" "));
    }

    private static String shortened(String call) {
        int end = LONGEST_CALL / 2;
        return call.length() <= LONGEST_CALL
                ? call
                : call.substring(0, end) + " … " + call.substring(call.length() - end);
    }
}
