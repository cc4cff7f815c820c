package plumbrow.app.command.said;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.science.figure.Numbers;

/** Findings said in text: the standing in a word, the reason, the measured value against its limit, what clears it. */
public final class FindingWords {
    private FindingWords() {}

    /** The whole first, then every matter in the order of telling, then what is lawful on one side of a line. */
    public static String checked(SeasonCheck check) {
        Paper paper = new Paper().heading(check.sentence());
        if (check.programs().size() > 1) {
            paper.gap().table(table(check));
        }
        if (check.programs().size() == 1) {
            ProgramCheck only = check.programs().get(0);
            paper.heading(only.field().name() + ", " + only.program().name() + ": "
                    + only.standing().word());
        }
        matters(paper, check.matters());
        clear(paper, check);
        acrossLines(paper, check.acrossLines());
        return paper.gap()
                .prose("The current label is the law. Local code and licensed practice decide.")
                .text();
    }

    private static TextTable table(SeasonCheck check) {
        TextTable table = TextTable.empty().words("field").words("program").words("status");
        for (Standing standing : Standing.ofFindings()) {
            table.numbers(standing.word(), "");
        }
        for (ProgramCheck program : check.programs()) {
            List<String> cells = new ArrayList<>(List.of(
                    program.field().name(),
                    program.program().name(),
                    program.standing().word()));
            for (Standing standing : Standing.ofFindings()) {
                cells.add(Numbers.fixed(program.count(standing), 0));
            }
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }

    /** Each matter in a line, under what it asks; what is not law is counted. */
    private static void matters(Paper paper, List<Matter> matters) {
        for (MatterKind kind : MatterKind.values()) {
            List<Matter> of =
                    matters.stream().filter(matter -> matter.kind() == kind).toList();
            if (!of.isEmpty()) {
                paper.heading(kind.words() + " (" + of.size() + ")");
                of.forEach(matter -> {
                    paper.prose("  - ", matter.line());
                    if (matter.findings().size() == 1 && !kind.folded()) {
                        source(paper, matter.findings().get(0), "    ");
                    }
                });
            }
        }
    }

    private static void source(Paper paper, Finding finding, String indent) {
        String measured = measured(finding);
        if (!measured.isEmpty() || !finding.source().isEmpty()) {
            paper.prose(indent, measured + (finding.source().isEmpty() ? "" : "Source: " + finding.source()));
        }
    }

    private static void clear(Paper paper, SeasonCheck check) {
        String clear = check.programs().stream()
                .flatMap(program -> program.findings().stream())
                .filter(finding -> finding.standing() == Standing.CLEAR)
                .map(Finding::gate)
                .distinct()
                .collect(Collectors.joining(", "));
        if (!clear.isEmpty() && check.programs().size() == 1) {
            paper.prose("  clear: ", clear);
        }
    }

    private static void acrossLines(Paper paper, List<AcrossLine> lines) {
        if (!lines.isEmpty()) {
            paper.heading("Lawful on one side of a line, barred on the other");
            for (AcrossLine line : lines) {
                paper.prose(line.product() + ":");
                line.places()
                        .forEach(place -> paper.prose(
                                "  " + place.standing().word() + ": ",
                                place.field() + " (" + place.lies() + "): "
                                        + place.finding().says()));
            }
        }
    }

    /** What stands in the way of a field's programs, each matter once with the programs it holds for. */
    static void across(Paper paper, FieldAdvice advice) {
        List<Matter> matters = Matter.ofFindings(advice.programs().stream()
                .flatMap(program -> program.findings().stream()
                        .map(finding -> new Matter.Told(advice.field().name(), program.name(), finding)))
                .toList());
        if (!matters.isEmpty()) {
            paper.heading("What stands in the way");
            matters(paper, matters);
        }
    }

    private static String measured(Finding finding) {
        String unit = finding.unit();
        Double measured = finding.measured();
        Double limit = finding.limit();
        String found = measured == null ? "" : "Found " + Numbers.read(measured, unit);
        String held = limit == null ? "" : (found.isEmpty() ? "Limit " : ", limit ") + Numbers.read(limit, unit);
        String apart = finding.distance().isPresent()
                ? ", " + Numbers.read(finding.distance().getAsDouble(), unit) + " apart"
                : "";
        return (found + held).isEmpty() ? "" : found + held + apart + ". ";
    }
}
