package plumbrow.app.command.said;

import plumbrow.advice.gates.Standing;
import plumbrow.advice.today.Today;
import plumbrow.documents.binder.StandingCautions;
import plumbrow.science.figure.Numbers;

/** A day in words. */
public final class TodayWords {
    private TodayWords() {}

    public static String of(Today today) {
        Paper paper = new Paper();
        paper.heading(today.day() + ": " + today.sentence());
        if (today.nearest() != null) {
            paper.prose("The nearest planned work is on " + today.nearest() + ".");
        }
        if (!today.due().isEmpty()) {
            paper.heading("Due");
            today.due().forEach(due -> paper.prose("  ", due.field() + ": " + line(due)));
        }
        if (!today.waits().isEmpty()) {
            paper.heading("Waits");
            today.waits()
                    .forEach(wait -> paper.prose(
                            "  ",
                            wait.field() + ": " + wait.what() + " until " + wait.until() + ". " + wait.why() + "."));
        }
        if (!today.machines().isEmpty()) {
            paper.heading("By sprayer");
            today.machines().forEach(machine -> paper.prose("  ", machine(machine)));
        }
        paper.heading("Call");
        StandingCautions.WHO_TO_CALL.subList(0, 3).forEach(line -> paper.prose("  ", line));
        paper.gap().prose("The current label is the law. Read it on the container before anything is mixed or put on.");
        return paper.text();
    }

    /** One trip in a line. */
    public static String line(Today.Due due) {
        StringBuilder line = new StringBuilder(due.what()).append(", ").append(planned(due));
        if (!due.hours().isEmpty()) {
            line.append("; ").append(due.hours());
        }
        Double needed = due.neededHours();
        if (needed != null) {
            line.append(", the job takes ").append(Numbers.fixed(needed, 1)).append(" h");
        }
        if (due.standing() == Standing.BARRED) {
            line.append("; barred that day: ").append(due.standingSays());
        }
        Long left = due.daysLeft();
        if (left != null) {
            line.append("; window closes in ").append(left).append(left == 1 ? " day" : " days");
        }
        if (!due.odds().isEmpty()) {
            line.append("; ").append(due.odds());
        }
        return line.append(due.chosen() ? "" : "; not decided, this is the baseline")
                .append('.')
                .toString();
    }

    /** "planned for Jun 5, 4 days late". */
    public static String planned(Today.Due due) {
        long late = due.daysLate();
        return "planned " + due.planned()
                + (late == 0 ? ", today" : late > 0 ? ", " + days(late) + " late" : ", in " + days(-late));
    }

    private static String days(long count) {
        return count + (count == 1 ? " day" : " days");
    }

    public static String machine(Today.OfMachine machine) {
        return machine.machine() + " (" + machine.farm() + "): " + machine.trips()
                + (machine.trips() == 1 ? " trip" : " trips") + ", " + String.join(", ", machine.fields())
                + (machine.neededHours() == 0 ? "" : "; " + Numbers.fixed(machine.neededHours(), 1) + " h of work")
                + (machine.fitHours() == null
                        ? "; fit hours unknown"
                        : "; " + machine.fitHours() + (machine.fitHours() == 1 ? " fit hour" : " fit hours")
                                + " that day");
    }
}
