package plumbrow.documents.binder;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.calendar.Window;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.documents.picture.SeasonPicture;

/** The season of the advised program on paper: the picture, what it shows, and the days on which a pass may not be made. */
final class SeasonPages {
    private static final int PICTURE_PX = 690;

    private SeasonPages() {}

    /** The advised program day by day, else the baseline; empty where the field's weeds can't be followed. */
    static Optional<SeasonTrial> of(SeasonTrials seasons, FieldAdvice field) {
        String advised = field.advised();
        String program = advised == null ? field.baseline() : advised;
        boolean there = seasons.season().field(field.field().name()).isPresent()
                && seasons.season().programs(field.field().name()).stream()
                        .anyMatch(known -> known.name().equals(program));
        if (!there || !seasons.followed(field.field())) {
            return Optional.empty();
        }
        return Optional.of(seasons.whole(field.field(), program, List.of()));
    }

    static void write(Html html, SeasonTrial trial) {
        SeasonPicture picture = SeasonPicture.of(trial.calendar(), PICTURE_PX);
        html.open("div", "picture");
        html.element("h2", "The season, day by day: " + trial.program());
        html.element("p", trial.calendar().finding());
        html.picture(picture.svg(), picture.says()).close("div");
        html.element(
                "p",
                "quiet",
                "Every input at its mean. Full line: no check bars the pass on that day, all others left where they are. Dashed:"
                        + " something about that day is unknown. Hatched: barred. A short bar beside a mark: days by which the"
                        + " sprayer is late on average.");
        html.list(trial.calendar().days());
        List<String> barred = trial.calendar().windows().stream()
                .filter(window -> window.standing() == Standing.BARRED)
                .map(SeasonPages::words)
                .toList();
        if (!barred.isEmpty()) {
            html.element("p", "Barred days:");
            html.list(barred);
        }
    }

    private static String words(Window window) {
        return "Pass " + window.pass() + ", " + window.from()
                + (window.from().equals(window.to()) ? "" : " to " + window.to()) + ": " + window.reason();
    }
}
