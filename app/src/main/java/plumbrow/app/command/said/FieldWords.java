package plumbrow.app.command.said;

import java.util.List;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.BreakEven;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.Knowing;
import plumbrow.advice.weighing.Odds;
import plumbrow.advice.weighing.SampleWorth;
import plumbrow.advice.weighing.WeighedCourse;
import plumbrow.science.figure.Numbers;

/** The advice for fields said in text: what to do, how sure that is, what stands in the way, what would change it. */
public final class FieldWords {
    private FieldWords() {}

    public static String advice(Advice advice) {
        Paper paper = new Paper();
        advice.fields().forEach(field -> field(paper, field));
        return paper.gap()
                .prose(advice.year() + " season as of " + advice.asOf() + ", advised by " + advice.adviser() + ". "
                        + Numbers.fixed(advice.draws(), 0) + " draws from seed " + advice.seed()
                        + ". All money is the operator's, in $/ac of the field.")
                .text();
    }

    private static void field(Paper paper, FieldAdvice advice) {
        paper.heading(advice.field().name() + ": " + advice.sentence());
        paper.prose(advice.reason());
        paper.prose(advice.doubt());
        paper.gap().table(courses(advice));
        FindingWords.across(paper, advice);
        turns(paper, advice.breakEvens());
        matters(paper, advice);
        advice.cautions().forEach(caution -> paper.gap().prose("Mind: ", caution));
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
        if (!breakEvens.isEmpty()) {
            paper.heading("What would turn it");
            breakEvens.forEach(turn -> paper.prose("  ", turn.says()));
        }
    }

    private static void matters(Paper paper, FieldAdvice advice) {
        List<Knowing> worth = advice.whatMatters();
        if (worth.isEmpty() && advice.samples().isEmpty()) {
            return;
        }
        paper.heading("What is worth knowing");
        paper.prose(
                "  ",
                "Knowing everything before deciding is worth at most "
                        + Numbers.dollars(advice.worthOfKnowingAllUsdPerAcre(), 2) + " an acre.");
        worth.forEach(knowing -> paper.prose("  ", knowing.says()));
        advice.samples().stream().map(SampleWorth::says).forEach(says -> paper.prose("  ", says));
    }

    private static String whole(double usdPerAcre) {
        return Numbers.fixed(usdPerAcre, 0);
    }
}
