package plumbrow.advice.calendar;

import java.util.List;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.ProgramTrial;

/**
 * What becomes of a program when passes are moved: numbers, findings and days. Nothing is stored.
 *
 * @param draws of the assumptions, the same for all that is compared, from {@code seed}
 * @param now the program as changed
 * @param kept the program as the book has it
 * @param overKept the change against the program as kept
 * @param overBaseline the change against the field's baseline
 * @param standing the worst of the findings
 * @param renumbered whether a pass was moved past another; findings then speak of passes in their new order
 * @param calendar its days
 */
public record SeasonTrial(
        String field,
        String program,
        boolean changed,
        int draws,
        long seed,
        ProgramTrial.Numbers now,
        ProgramTrial.Numbers kept,
        ProgramTrial.Against overKept,
        ProgramTrial.Against overBaseline,
        Standing standing,
        List<Finding> findings,
        boolean renumbered,
        SeasonCalendar calendar) {
    public SeasonTrial {
        findings = List.copyOf(findings);
    }

    /** What bars it or must be looked up. */
    public List<Finding> stops() {
        return findings.stream()
                .filter(finding -> !finding.standing().advisable())
                .toList();
    }

    /** The same with the days on which the gates let each pass be made. */
    SeasonTrial with(List<Window> windows) {
        return new SeasonTrial(
                field,
                program,
                changed,
                draws,
                seed,
                now,
                kept,
                overKept,
                overBaseline,
                standing,
                findings,
                renumbered,
                calendar.with(windows));
    }
}
