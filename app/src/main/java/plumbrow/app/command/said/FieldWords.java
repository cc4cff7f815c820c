package plumbrow.app.command.said;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plumbrow.advice.weighing.BreakEven;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.Odds;
import plumbrow.advice.weighing.WeighedCourse;
import plumbrow.science.figure.Numbers;

/** The advice for one field: what to do, how sure that is, what stands in the way, what would change it. */
final class FieldWords {
    /** Less than this is not told apart from nothing [$/ac]. */
    private static final double WORTH_SAYING = 0.05;

    private FieldWords() {}

    /** Adds a field to the paper; the cautions said elsewhere are left out. */
    static void add(Paper paper, FieldAdvice advice, Set<String> saidElsewhere) {
        paper.heading(advice.field().name() + ": " + advice.sentence());
        paper.prose(advice.reason());
        paper.prose(advice.doubt());
        paper.gap().table(courses(advice));
        advice.courses().stream()
                .map(WeighedCourse::weeds)
                .filter(weeds -> !weeds.isEmpty())
                .forEach(weeds -> paper.prose("  ", weeds));
        FindingWords.across(paper, advice);
        turns(paper, advice.breakEvens());
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

    private static TextTable courses(FieldAdvice advice) {
        TextTable table = TextTable.empty()
                .words("Course")
                .numbers("cost", "$/ac")
                .numbers("mean", "$/ac")
                .numbers("1 in 10 below", "$/ac")
                .numbers("middle", "$/ac")
                .numbers("1 in 10 above", "$/ac")
                .words("beats baseline")
                .numbers("worst tenth", "$/ac")
                .words("standing");
        for (WeighedCourse course : advice.courses()) {
            table.row(
                    (course.name().equals(advice.advised()) ? "▸ " : "  ") + course.name(),
                    Numbers.fixed(course.costUsdPerAcre(), 2),
                    whole(course.meanMarginUsdPerAcre()),
                    whole(course.margin().low()),
                    whole(course.margin().middle()),
                    whole(course.margin().high()),
                    course.baseline() ? "is the baseline" : Odds.words(course.chanceBeatsBaseline()),
                    whole(course.shortfallUsdPerAcre()),
                    course.standing().word());
        }
        return table;
    }

    private static void turns(Paper paper, List<BreakEven> breakEvens) {
        if (breakEvens.isEmpty()) {
            return;
        }
        paper.heading("What would turn it");
        breakEvens.stream().filter(turn -> turn.value() != null).forEach(turn -> paper.prose("  ", turn.says()));
        String never = breakEvens.stream()
                .filter(turn -> turn.value() == null)
                .map(BreakEven::label)
                .collect(Collectors.joining("; "));
        if (!never.isEmpty()) {
            paper.prose("  ", "Nothing within the plausible range of these turns it: " + never + ".");
        }
    }

    private static void matters(Paper paper, FieldAdvice advice) {
        paper.heading("What is worth knowing");
        if (advice.worthOfKnowingAllUsdPerAcre() < WORTH_SAYING) {
            paper.prose("  ", "Nothing that could be found out beforehand would change the choice.");
        } else {
            paper.prose(
                    "  ",
                    "Knowing everything before deciding is worth at most "
                            + Numbers.dollars(advice.worthOfKnowingAllUsdPerAcre(), 2) + "/ac.");
        }
        advice.whatMatters().stream()
                .filter(knowing -> knowing.usdPerAcre() >= WORTH_SAYING)
                .forEach(knowing -> paper.prose("  ", knowing.says()));
        advice.samples().forEach(sample -> paper.prose("  ", sample.says()));
    }
}
