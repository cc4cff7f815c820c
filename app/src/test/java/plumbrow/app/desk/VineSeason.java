package plumbrow.app.desk;

import plumbrow.advice.season.Season;
import plumbrow.app.demo.DemoBook;

/** The demo's season, and a field and program of it whose weeds are followed day by day. */
final class VineSeason {
    static final String FIELD = "Vine Bottom";
    static final String PROGRAM = "Before and after";

    private VineSeason() {}

    static Season season() {
        return DemoBook.season();
    }
}
