package plumbrow.app.command.said;

import plumbrow.advice.calendar.SeasonCalendar;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.calendar.TrialWords;
import plumbrow.advice.calendar.Window;
import plumbrow.advice.gates.Standing;
import plumbrow.documents.picture.SeasonPicture;
import plumbrow.science.figure.Numbers;

/** The season of a program in words. */
public final class SeasonWords {
    private SeasonWords() {}

    public static String of(SeasonTrial trial) {
        SeasonCalendar calendar = trial.calendar();
        Paper paper = new Paper();
        paper.heading(trial.field() + ", " + trial.program() + ": " + TrialWords.sentence(trial));
        paper.prose(TrialWords.gates(trial) + " Yield "
                + Numbers.fixed(trial.now().meanYieldBuPerAcre(), 1) + " bu/ac, cost "
                + Numbers.dollars(trial.now().costUsdPerAcre(), 2) + "/ac, on " + Numbers.fixed(trial.draws(), 0)
                + " simulated seasons.");
        trial.stops()
                .forEach(finding -> paper.prose(
                        "  " + finding.standing().word() + "  ",
                        finding.subject() + ": " + finding.says() + " " + finding.clears()));
        paper.gap().prose(SeasonPicture.says(calendar));
        if (calendar.followed()) {
            paper.heading("The days");
            calendar.days().forEach(line -> paper.prose("  ", line));
        }
        windows(paper, calendar);
        paper.heading("Hours fit for spraying").prose("  ", calendar.hours().says());
        return paper.text();
    }

    private static void windows(Paper paper, SeasonCalendar calendar) {
        paper.heading("When each pass may be made, all others left where they are");
        for (SeasonCalendar.Mark pass : calendar.passes()) {
            paper.prose("  ", pass.words() + (pass.date() == null ? "; no day planned" : ", planned " + pass.date()));
            calendar.windows().stream()
                    .filter(window -> window.pass() == pass.pass())
                    .forEach(window -> paper.prose("    ", said(window)));
        }
    }

    private static String said(Window window) {
        String days = window.from() + (window.from().equals(window.to()) ? "" : " to " + window.to());
        return days + ": "
                + (window.standing() == Standing.CLEAR
                        ? "no check bars it"
                        : window.standing().word() + ", " + window.reason());
    }
}
