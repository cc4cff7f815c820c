package plumbrow.app.binder;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.fieldplan.FieldPlans;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.Book;
import plumbrow.app.book.Choice;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.shelf.ShelfPapers;
import plumbrow.app.weather.Decided;
import plumbrow.documents.binder.AdviceSheet;
import plumbrow.documents.binder.Binder;

/** Binders out of a book for the commands, with its choices, weather, papers and record. */
public final class Binders implements AutoCloseable {
    /** Draws by which it is told what to tell next: enough to put it in order. */
    private static final int NEXT_DRAWS = 4_000;

    private final DeskBook book;
    private final ShelfPapers papers;

    private Binders(DeskBook book) {
        this.book = book;
        this.papers = new ShelfPapers(book);
    }

    /** Over a book, until it is closed. */
    public static Binders open(Path file) {
        return new Binders(new DeskBook(Book.open(file)));
    }

    /** The advice of some fields alone. */
    public static Advice of(Advice advice, List<Field> fields) {
        return new Advice(
                advice.year(),
                advice.asOf(),
                advice.adviser(),
                advice.draws(),
                advice.seed(),
                advice.fields().stream()
                        .filter(field -> fields.contains(field.field()))
                        .toList());
    }

    /** Fields by the grower of their farm, in the order of the season. */
    public static Map<String, List<Field>> byGrower(Season season, List<Field> fields) {
        return fields.stream()
                .collect(Collectors.groupingBy(
                        field -> season.farm(field.farm()).map(Farm::grower).orElse(""),
                        LinkedHashMap::new,
                        Collectors.toList()));
    }

    /** The file of a grower beside others: "binder-j-halvorsrud.pdf"; with a number where two would be called alike. */
    public static Path named(Path out, String grower, List<Path> taken) {
        String name = String.valueOf(out.getFileName());
        int dot = name.lastIndexOf('.');
        String plain =
                grower.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "-").replaceAll("^-|-$", "");
        String start = name.substring(0, dot) + "-" + (plain.isEmpty() ? "no-grower" : plain);
        Path file = out.resolveSibling(start + name.substring(dot));
        for (int number = 2; taken.contains(file); number++) {
            file = out.resolveSibling(start + "-" + number + name.substring(dot));
        }
        return file;
    }

    /** Writes the pages of one grower's fields. */
    public void pages(Season season, Advice advice, boolean annex, Path file) {
        List<FieldPlan> plans = plans(season, advice);
        Binder.write(
                new Binder.Contents(
                        season,
                        plans,
                        papers.cards(season, Binder.products(season, plans), season.asOf()),
                        annex ? new Binder.Annex(advice, book::weather) : null,
                        book.head().text()),
                file);
    }

    /** Writes the spreadsheet of one grower's fields. */
    public void sheet(Season season, Advice advice, Path file) {
        AdviceSheet.write(season, advice, file);
    }

    private List<FieldPlan> plans(Season season, Advice advice) {
        FieldPlans plans = new FieldPlans(season);
        List<Choice> choices = book.choices(season.year());
        OwnSeasons own = OwnSeasons.of(season);
        WeighingOptions few = WeighingOptions.DEFAULT.withDraws(NEXT_DRAWS);
        DrawSource drawn = new DrawSource(few.draws(), few.seed());
        return advice.fields().parallelStream()
                .map(of -> plans.of(
                        of.field(),
                        Decided.decision(season, of.field(), choices),
                        of,
                        "",
                        Optional.of(Adviser.next(own.of(of.field()), few, drawn))))
                .toList();
    }

    @Override
    public void close() {
        papers.destroy();
        book.close();
    }
}
