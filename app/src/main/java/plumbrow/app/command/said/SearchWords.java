package plumbrow.app.command.said;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.search.Found;
import plumbrow.advice.search.LostBy;
import plumbrow.advice.search.SearchAnswer;
import plumbrow.advice.weighing.Quantities;
import plumbrow.science.figure.Numbers;

/** What a search found, in text. */
public final class SearchWords {
    private SearchWords() {}

    public static String of(List<SearchAnswer> answers, boolean taken) {
        Paper paper = new Paper();
        for (SearchAnswer answer : answers) {
            add(paper, answer);
            if (taken && answer.best() != null) {
                paper.prose("It stands in the season now: weigh and check it like your own.")
                        .gap();
            }
        }
        return paper.prose(
                        "Mind  ",
                        "The current label is the law. Local code and licensed practice decide; this is "
                                + "arithmetic, not a permit. What the checks ask of a program is said by check.")
                .text();
    }

    private static void add(Paper paper, SearchAnswer answer) {
        paper.heading(answer.field().name() + ": " + answer.says()).gap();
        Found lookUp = answer.afterLookingUp();
        if (lookUp != null && answer.best() != null) {
            paper.prose("Look up first: " + asked(lookUp) + " If that allows it, " + lookUp.name() + " would bring "
                            + Quantities.dollarsPerAcre(lookUp.meanMarginUsdPerAcre()) + ".")
                    .gap();
        } else if (lookUp != null) {
            paper.prose("Look up: " + asked(lookUp)).gap();
        }
        if (answer.runnerUp() != null) {
            paper.prose("Next comes " + answer.runnerUp().name() + ". Why it earns less:");
            TextTable table = TextTable.empty().words("").numbers("of the difference", "$/ac");
            for (LostBy line : answer.whyItLost()) {
                table.row(line.says(), Numbers.fixed(line.usdPerAcre(), 2));
            }
            paper.table(table).gap();
        }
        frontier(paper, "Margin against risk: none of these is beaten in both", answer.againstRisk());
        frontier(paper, "Margin against resistance: none of these is beaten in both", answer.againstResistance());
        paper.prose("Proof  ", answer.proof().says()).gap();
        answer.limits().forEach(limit -> paper.prose("Limit  ", limit));
        paper.gap();
    }

    private static String asked(Found found) {
        return found.lookUps().stream().map(Finding::clears).distinct().limit(4).collect(Collectors.joining(" "));
    }

    private static void frontier(Paper paper, String heading, List<Found> programs) {
        if (programs.isEmpty()) {
            return;
        }
        paper.prose(heading);
        TextTable table = TextTable.empty()
                .words("Program")
                .numbers("mean", "$/ac")
                .numbers("shortfall", "$/ac")
                .words("sites of action")
                .words("if one site fails");
        for (Found program : programs) {
            table.row(
                    program.name(),
                    Numbers.fixed(program.meanMarginUsdPerAcre(), 1),
                    Numbers.fixed(program.shortfallUsdPerAcre(), 1),
                    sites(program),
                    lone(program));
        }
        paper.table(table).gap();
    }

    private static String sites(Found program) {
        return program.sites().entrySet().stream()
                .map(one -> one.getValue() + " on " + one.getKey())
                .collect(Collectors.joining(", "));
    }

    private static String lone(Found program) {
        return program.escape() == null
                ? ""
                : Numbers.fixed(program.escape().share() * 100, 0) + " of 100 "
                        + program.escape().weed() + " that resist group "
                        + program.escape().group() + " survive";
    }
}
