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
import plumbrow.app.desk.shown.Part;
import plumbrow.app.log.LogEntry;
import plumbrow.app.log.PassEntry;
import plumbrow.app.log.StrikeEntry;

/**
 * What the page of the log shows.
 *
 * @param part lines, latest first: a page of them, or the one with the line that could not be struck
 * @param entry the line being typed
 * @param striking number of the line that could not be struck, or of which it could not be said which pass it was; 0 where none was
 *     tried
 * @param strike what was typed to strike it
 * @param said which pass it was, as typed
 */
public record LogView(
        Season season, Part<LogLine> part, LogEntry entry, int striking, StrikeEntry strike, PassEntry said) {
    static final StrikeEntry NOTHING = new StrikeEntry("", "", "");

    /** Fields that are offered to choose from; of more the name is typed. */
    private static final int MOST_OFFERED = 300;

    static LogView of(Season season, List<LogLine> lines, LogEntry entry, int page) {
        return of(season, lines, entry, page, 0, NOTHING);
    }

    static LogView of(Season season, List<LogLine> lines, LogEntry entry, int striking, StrikeEntry strike) {
        int later =
                (int) lines.stream().filter(line -> line.number() > striking).count();
        return of(season, lines, entry, later / Part.LINES + 1, striking, strike);
    }

    private static LogView of(
            Season season, List<LogLine> lines, LogEntry entry, int page, int striking, StrikeEntry strike) {
        List<LogLine> latest = new ArrayList<>(lines);
        Collections.reverse(latest);
        return new LogView(season, Part.of(latest, page), entry, striking, strike, PassEntry.BLANK);
    }

    LogView saying(PassEntry entry) {
        return new LogView(season, part, this.entry, striking, strike, entry);
    }

    /** What was typed of which pass a line was. */
    public PassEntry said(LogLine line) {
        return line.number() == striking ? said : PassEntry.BLANK;
    }

    /** Planned passes that a line may have been. */
    public List<PassEntry.Offered> offered(LogLine line) {
        return PassEntry.offered(season, line.done().field(), line.done().product());
    }

    /** Planned passes of the field that is being written of, where it is known. */
    public List<PassEntry.Offered> offered() {
        String field = entry.text(LogEntry.FIELD);
        String product = entry.text(LogEntry.PRODUCT);
        return season.programs(field).stream()
                .flatMap(program -> program.passes().stream()
                        .filter(pass -> pass.product() != null && (product.isEmpty() || product.equals(pass.product())))
                        .map(pass -> new PassEntry.Offered(
                                pass.number() + " of " + program.name(),
                                pass.number() + " of " + program.name() + ": " + pass.product()
                                        + (pass.date() == null ? "" : ", " + pass.date()))))
                .toList();
    }

    public List<LogLine> lines() {
        return part.lines();
    }

    public List<String> fields() {
        return season.fields().size() > MOST_OFFERED
                ? List.of()
                : season.fields().stream().map(Field::name).toList();
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
