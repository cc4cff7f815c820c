package plumbrow.documents.binder;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.WholeFile;

/**
 * The printed packet of a season: what is advised for each field, its odds, what stands in the way, what would change
 * it, and every line of the arithmetic.
 *
 * <p>Dates in the file are those of the season and not of the clock: the same season and advice give the same pages.
 */
public final class Binder {
    private Binder() {}

    /**
     * Writes the binder as PDF, in place of an older one of that name.
     *
     * @throws FileTrouble if the file can't be written; an older one is then still as it was
     */
    public static void write(Season season, Advice advice, Path pdf) {
        write(season, advice, "", pdf);
    }

    /**
     * As {@link #write(Season, Advice, Path)}, with the head of the book's record on the cover, by which anybody can check later
     * that nothing up to this day was changed.
     *
     * @param recordHead as the book prints it; empty where the season comes from no book
     */
    public static void write(Season season, Advice advice, String recordHead, Path pdf) {
        write(season, advice, recordHead, field -> Optional.empty(), pdf);
    }

    /** The same with the hourly weather of fields, from which the season pictures have their fit hours. */
    public static void write(
            Season season,
            Advice advice,
            String recordHead,
            Function<Field, Optional<HourlyWeather>> weather,
            Path pdf) {
        String pages = Typeface.printable(BinderPages.html(season, advice, recordHead, weather));
        long number = Objects.hash(advice.year(), advice.seed(), pages.hashCode());
        WholeFile.write(
                pdf,
                out -> out.write(PdfPages.print(pages, advice.asOf(), number).file()));
    }
}
