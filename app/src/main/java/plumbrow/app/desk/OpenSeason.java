package plumbrow.app.desk;

import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;

/** The season a page is about, or why there is none. */
public final class OpenSeason {
    private OpenSeason() {}

    public static Season of(DeskBook book) {
        return book.season().orElseThrow(NoSeasonException::new);
    }

    public static Field field(Season season, String name) {
        return season.field(name)
                .orElseThrow(() -> new NotHereException(
                        "There is no field called “" + shortened(name) + "” in " + season.year() + "."));
    }

    private static String shortened(String name) {
        return name.length() > 60 ? name.substring(0, 57) + "…" : name;
    }
}
