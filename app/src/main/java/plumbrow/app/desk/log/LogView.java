package plumbrow.app.desk.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.app.book.LogLine;
import plumbrow.app.log.LogEntry;
import plumbrow.app.log.StrikeEntry;

/**
 * What the page of the log shows.
 *
 * @param lines latest first
 * @param entry the line being typed
 * @param striking number of the line that could not be struck; 0 where none was tried
 * @param strike what was typed to strike it
 */
public record LogView(Season season, List<LogLine> lines, LogEntry entry, int striking, StrikeEntry strike) {
    private static final StrikeEntry NOTHING = new StrikeEntry("", "", "");

    static LogView of(Season season, List<LogLine> lines, LogEntry entry) {
        return of(season, lines, entry, 0, NOTHING);
    }

    static LogView of(Season season, List<LogLine> lines, LogEntry entry, int striking, StrikeEntry strike) {
        List<LogLine> latest = new ArrayList<>(lines);
        Collections.reverse(latest);
        return new LogView(season, latest, entry, striking, strike);
    }

    public List<String> fields() {
        return season.fields().stream().map(Field::name).toList();
    }

    /** What goes on a field beside plain seed. */
    public List<String> products() {
        return season.shelf().products().stream()
                .filter(product -> product.kind() != ProductKind.SEED)
                .map(Product::name)
                .toList();
    }

    public List<String> units() {
        return Arrays.stream(FarmUnit.values())
                .map(unit -> unit.symbol() + "/ac")
                .toList();
    }

    public StrikeEntry strike(LogLine line) {
        return line.number() == striking ? strike : NOTHING;
    }
}
