package plumbrow.app.command.said;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plumbrow.advice.weighing.AdviceRange;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.GainDoubt;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.science.figure.Numbers;

/** The advice for one field: what to do, how sure that is, what stands in the way, what would change it. */
final class FieldWords {
    /** Less than this is not told apart from nothing [$/ac]. */
    private static final double WORTH_SAYING = 0.05;

    private FieldWords() {}

    /** Adds a field to the paper; the cautions said elsewhere are left out. */
    static void add(Paper paper, FieldAdvice advice, String later, Set<String> saidElsewhere) {
        paper.heading(advice.field().name() + ": " + advice.sentence());
        paper.prose(advice.reason());
        GainDoubt gain = advice.gainDoubt();
        if (gain != null) {
            paper.prose(gain.says());
        }
        paper.prose(advice.doubt());
        if (!later.isEmpty()) {
            paper.prose(later);
        }
        paper.gap().table(programs(advice));
        advice.programs().stream()
                .map(WeighedProgram::weeds)
                .filter(weeds -> !weeds.isEmpty())
                .forEach(weeds -> paper.prose("  ", weeds));
        for (WeighedProgram program : advice.programs()) {
            program.scouting().forEach(says -> paper.prose("  ", program.name() + ": " + says));
        }
        FindingWords.across(paper, advice);
        ranges(paper, advice.ranges());
        matters(paper, advice);
        paper.gap();
        advice.cautions().stream()
                .filter(caution -> !saidElsewhere.contains(caution))
                .forEach(caution -> paper.prose("Mind  ", caution));
    }

    /** Money in a table: to the dollar, which is all the draws support. */
    static String whole(double usdPerAcre) {
        return Numbers.fixed(usdPerAcre, 0);
    }

    private static TextTable programs(FieldAdvice advice) {
        TextTable table = TextTable.empty()
                .words("Program")
                .numbers("cost", "$/ac")
                .numbers("mean", "$/ac")
                .numbers("10 of 100 below", "$/ac")
                .numbers("middle", "$/ac")
                .numbers("10 of 100 above", "$/ac")
                .words("beats baseline")
                .words("is best")
                .numbers("shortfall", "$/ac")
                .words("status");
        for (WeighedProgram program : advice.programs()) {
            table.row(
                    (program.name().equals(advice.advised())
                                    ? "▸ "
                                    : advice.leading().contains(program.name()) ? "≈ " : "  ")
                            + program.name(),
                    Numbers.fixed(program.costUsdPerAcre(), 2),
                    whole(program.meanMarginUsdPerAcre()),
                    whole(program.margin().low()),
                    whole(program.margin().middle()),
                    whole(program.margin().high()),
                    program.baseline() ? "is the baseline" : advice.odds(program.chanceBeatsBaseline()),
                    advice.odds(program.chanceBest()),
                    whole(program.shortfallUsdPerAcre()),
                    program.standing().word());
        }
        return table;
    }

    private static void ranges(Paper paper, List<AdviceRange> ranges) {
        if (ranges.isEmpty()) {
            return;
        }
        paper.heading("The range over which this holds");
        ranges.stream().filter(AdviceRange::turns).forEach(range -> paper.prose("  ", range.says()));
        String steady = ranges.stream()
                .filter(range -> !range.turns())
                .map(AdviceRange::label)
                .collect(Collectors.joining("; "));
        if (!steady.isEmpty()) {
            paper.prose(
                    "  ",
                    "By itself, within its plausible range, none of these changes which program is best: " + steady
                            + ".");
        }
    }

    private static void matters(Paper paper, FieldAdvice advice) {
        paper.heading("What is worth knowing");
        if (advice.evpiUsdPerAcre() < WORTH_SAYING) {
            paper.prose("  ", "Nothing that could be found out beforehand would change the choice.");
        } else {
            paper.prose(
                    "  ",
                    "Knowing everything before deciding is worth at most " + Numbers.dollars(advice.evpiUsdPerAcre(), 2)
                            + "/ac.");
        }
        advice.whatMatters().stream()
                .filter(knowing -> knowing.usdPerAcre() >= WORTH_SAYING)
                .forEach(knowing -> paper.prose("  ", knowing.says()));
        advice.samples().forEach(sample -> paper.prose("  ", sample.says()));
    }
}
