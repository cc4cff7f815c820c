package plumbrow.app.command.said;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.science.figure.Numbers;

/** Findings said in text: the standing in a word, the reason, the measured value against its limit, what clears it. */
public final class FindingWords {
    private FindingWords() {}

    /** More of them stand in the JSON, on the desk and on paper. */
    private static final int MOST_LOOK_UPS = 12;

    /** The whole first, then program by program and by who is protected, then what to look up. */
    public static String checked(SeasonCheck check) {
        Paper paper = new Paper().heading(check.sentence());
        if (check.programs().size() > 1) {
            paper.gap().table(table(check));
        }
        check.programs().forEach(program -> program(paper, program));
        acrossLines(paper, check.acrossLines());
        lookUps(paper, check.lookUps());
        return paper.gap()
                .prose("The current label is the law. Local code and licensed practice decide.")
                .text();
    }

    private static TextTable table(SeasonCheck check) {
        TextTable table = TextTable.empty().words("field").words("program").words("standing");
        for (Standing standing : Standing.values()) {
            table.numbers(standing.word(), "");
        }
        for (ProgramCheck program : check.programs()) {
            List<String> cells = new ArrayList<>(List.of(
                    program.field().name(),
                    program.program().name(),
                    program.standing().word()));
            for (Standing standing : Standing.values()) {
                cells.add(Numbers.fixed(program.count(standing), 0));
            }
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }

    private static void program(Paper paper, ProgramCheck program) {
        paper.heading(program.field().name() + ", " + program.program().name() + ": "
                + program.standing().word());
        for (ProgramCheck.Group group : program.groups()) {
            if (group.standing() != Standing.CLEAR) {
                paper.prose("To protect " + group.protects().words() + ":");
                group.findings().stream()
                        .filter(finding -> finding.standing() != Standing.CLEAR)
                        .forEach(finding -> finding(paper, finding, ""));
            }
        }
        String clear = program.findings().stream()
                .filter(finding -> finding.standing() == Standing.CLEAR)
                .map(Finding::gate)
                .distinct()
                .collect(Collectors.joining(", "));
        if (!clear.isEmpty()) {
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

    private static void lookUps(Paper paper, List<LookUp> lookUps) {
        if (!lookUps.isEmpty()) {
            paper.heading("What to look up, and where");
            lookUps.stream()
                    .limit(MOST_LOOK_UPS)
                    .forEach(one -> paper.prose(
                            "  settles " + one.settles() + ": ",
                            one.about() + ", " + one.where().words() + ": " + one.ask()));
            if (lookUps.size() > MOST_LOOK_UPS) {
                paper.prose("  and " + (lookUps.size() - MOST_LOOK_UPS) + " more, each of which settles no more.");
            }
        }
    }

    /** The findings of a field's programs that are not clear, each said once with the programs it holds for. */
    static void across(Paper paper, FieldAdvice advice) {
        Map<Finding, List<String>> programs = new LinkedHashMap<>();
        for (WeighedProgram program : advice.programs()) {
            program.findings().stream()
                    .filter(finding -> finding.standing() != Standing.CLEAR)
                    .forEach(finding -> programs.computeIfAbsent(finding, first -> new ArrayList<>())
                            .add(program.name()));
        }
        if (!programs.isEmpty()) {
            paper.heading("What stands in the way");
            programs.forEach((finding, names) -> finding(paper, finding, " (" + String.join(", ", names) + ")"));
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
