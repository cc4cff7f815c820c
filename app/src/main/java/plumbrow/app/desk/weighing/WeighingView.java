package plumbrow.app.desk.weighing;

import java.util.Comparator;
import java.util.List;
import plumbrow.advice.check.Matter;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.AdviceRange;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.app.book.Choice;

/**
 * What the weighing page shows.
 *
 * @param advice the answer, with the assumptions as changed
 * @param form the assumptions in boxes
 * @param choice the decision being typed
 * @param choices decisions recorded for this field, latest first
 * @param rough whether only few draws were taken because the assumptions are being typed
 */
public record WeighingView(
        Season season,
        FieldAdvice advice,
        AssumptionForm form,
        ChoiceForm choice,
        List<Choice> choices,
        boolean rough) {

    static List<Choice> latestFirst(List<Choice> choices, String field) {
        return choices.stream()
                .filter(choice -> choice.field().equals(field))
                .sorted(Comparator.comparing(Choice::when).reversed())
                .toList();
    }

    /** The advice in one sentence, saying so where the assumptions are not the season's. */
    public String sentence() {
        return form.changed() ? "With your changed assumptions: " + advice.sentence() : advice.sentence();
    }

    /** What must be seen to before a program is carried out, one line for each matter, in the order of telling. */
    public List<Matter> open(WeighedProgram program) {
        return Matter.ofFindings(program.findings().stream()
                .map(finding -> new Matter.Told(advice.field().name(), program.name(), finding))
                .toList());
    }

    /** The gates that a program passes. */
    public List<Finding> clear(WeighedProgram program) {
        return program.findings().stream()
                .filter(finding -> finding.standing() == Standing.CLEAR)
                .toList();
    }

    /** The inputs that by themselves make another program the best somewhere in their plausible range. */
    public List<AdviceRange> turning() {
        return advice.ranges().stream().filter(AdviceRange::turns).toList();
    }

    /** The inputs that do not. */
    public List<AdviceRange> steady() {
        return advice.ranges().stream().filter(range -> !range.turns()).toList();
    }
}
