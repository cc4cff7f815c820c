package plumbrow.app.desk.calendar;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.desk.DeskBook;

/** What is worked out already for the season at hand: on few draws while a pass moves, on all of them else. */
public final class Trials {
    private static final int ROUGH_DRAWS = 1_000;

    private final DeskBook book;

    public Trials(DeskBook book) {
        this.book = book;
    }

    private record Known(Season season, String weather, SeasonTrials rough, SeasonTrials full) {}

    private final AtomicReference<@Nullable Known> known = new AtomicReference<>();

    /** The season last looked at: while a mark moves the book is not read at every step, but when it is let go. */
    Optional<Season> lastSeen() {
        return Optional.ofNullable(known.get()).map(Known::season);
    }

    SeasonTrials full(Season season) {
        return of(season).full();
    }

    SeasonTrials rough(Season season) {
        return of(season).rough();
    }

    private Known of(Season season) {
        Known now = known.get();
        String weather = book.weatherVersion();
        if (now == null || !now.season().equals(season) || !now.weather().equals(weather)) {
            now = new Known(
                    season,
                    weather,
                    new SeasonTrials(season, WeighingOptions.DEFAULT.withDraws(ROUGH_DRAWS), book::weather),
                    new SeasonTrials(season, WeighingOptions.DEFAULT, book::weather));
            known.set(now);
        }
        return now;
    }
}
