package plumbrow.app.rows;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.nextseason.NextSeason;
import plumbrow.advice.nextseason.Stock;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.app.book.StoredPaper;
import plumbrow.documents.card.SheetAge;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.science.figure.Numbers;

/**
 * What the next season takes over and what has to be asked again, for a page, a command and a program.
 *
 * @param begun whether it is in the book, or only looked at
 * @param turns what each field carried and is to carry
 * @param stock what the log left in the shed
 * @param oldPrices prices that came along, in words
 * @param oldPapers papers past their age, in words
 * @param look what has to be looked at
 */
public record NextSeasonSummary(
        int year,
        LocalDate asOf,
        boolean begun,
        List<FieldTurn> turns,
        List<Stock> stock,
        List<String> oldPrices,
        List<String> oldPapers,
        List<String> look) {
    public NextSeasonSummary {
        turns = List.copyOf(turns);
        stock = List.copyOf(stock);
        oldPrices = List.copyOf(oldPrices);
        oldPapers = List.copyOf(oldPapers);
        look = List.copyOf(look);
    }

    /**
     * A field from one season to the next.
     *
     * @param was what it carried
     * @param yieldBuPerAcre what it brought; null where nobody has written it down
     * @param programsOf the season that its programs come from; null where it has none yet
     */
    public record FieldTurn(
            String field,
            String was,
            @Nullable Double yieldBuPerAcre,
            String crop,
            String why,
            @Nullable Integer programsOf,
            int programs) {
        /** "the 3 programs of 2026", or that they are to be entered. */
        public String from() {
            return programsOf == null || programs == 0
                    ? "programs to be entered"
                    : programs + (programs == 1 ? " program of " : " programs of ") + programsOf;
        }
    }

    public static NextSeasonSummary of(NextSeason next, List<StoredPaper> papers, boolean begun) {
        Season season = next.season();
        return new NextSeasonSummary(
                season.year(),
                season.asOf(),
                begun,
                next.turns().stream()
                        .map(turn -> new FieldTurn(
                                turn.field(),
                                turn.was().crop(),
                                turn.was().yieldBuPerAcre(),
                                turn.crop().word(),
                                turn.why(),
                                turn.programsOf(),
                                season.programs(turn.field()).size()))
                        .toList(),
                next.stock(),
                next.old().stream()
                        .map(old -> old.what() + " (" + old.of() + ")")
                        .toList(),
                oldPapers(season, papers),
                next.cautions());
    }

    private static List<String> oldPapers(Season season, List<StoredPaper> papers) {
        List<String> old = new ArrayList<>();
        for (StoredPaper stored : papers) {
            FiledPaper paper = stored.paper();
            LocalDate dated = paper.dated();
            if (paper.kind() == FiledPaper.Kind.SAFETY_SHEET && dated != null && SheetAge.old(dated, season.asOf())) {
                old.add("Safety sheet of " + (paper.product().isEmpty() ? paper.fileName() : paper.product()) + ", "
                        + dated + ": more than " + SheetAge.YEARS + " years old");
            }
        }
        LocalDate yearBefore = season.asOf().minusYears(1);
        season.shelf().products().stream()
                .filter(product -> product.registration() != null)
                .forEach(product -> {
                    Optional<LocalDate> held =
                            season.shelf().labels().care(product.name()).map(ProductCare::confirmed);
                    if (held.isEmpty()) {
                        old.add("Label of " + product.name() + ": nobody has held the book against it");
                    } else if (held.get().isBefore(yearBefore)) {
                        old.add("Label of " + product.name() + ": held against the book last on " + held.get());
                    }
                });
        return old;
    }

    /** The same in lines of text. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(
                begun
                        ? "Season " + year + " is begun, as of " + asOf + "."
                        : "Season " + year + " would begin, as of " + asOf + "; nothing was changed.");
        lines.add("Fields:");
        turns.forEach(turn -> lines.add("  " + turn.field() + ": " + turn.was()
                + (turn.yieldBuPerAcre() == null ? "" : " (" + shown(turn.yieldBuPerAcre()) + " bu/ac)") + " → "
                + turn.crop() + " (" + turn.why() + "), " + turn.from()));
        add(
                lines,
                "In the shed, as the log left it:",
                stock.stream().map(NextSeasonSummary::shed).toList());
        add(lines, "Prices of an earlier season, marked until somebody confirms or changes them:", oldPrices);
        add(lines, "Papers past their age:", oldPapers);
        add(lines, "Look at this:", look);
        return lines;
    }

    /** "Undersod G: 400 lb → 120 lb". */
    public static String shed(Stock one) {
        return one.product() + ": " + one.before().text() + " → "
                + (one.after() == null ? "look in the shed" : one.after().text());
    }

    private static String shown(double value) {
        return Numbers.plain(Math.rint(value * 10) / 10);
    }

    private static void add(List<String> lines, String head, List<String> more) {
        if (!more.isEmpty()) {
            lines.add(head);
            more.forEach(line -> lines.add("  " + line));
        }
    }
}
