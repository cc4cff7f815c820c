package plumbrow.app.desk;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.lookback.Decided;
import plumbrow.advice.lookback.Expectation;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.lookback.LookBack;
import plumbrow.advice.nextseason.BeginAsked;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.book.Choice;
import plumbrow.app.book.LogLine;
import plumbrow.app.book.RecordHead;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.book.TypedValue;
import plumbrow.app.book.WeatherOnFile;
import plumbrow.app.rows.NextSeasonSummary;
import plumbrow.app.weather.WeatherIntake;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.ReadOnLabel;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.documents.weather.WeatherAsked;
import plumbrow.documents.workbook.edit.RowChange;

/** The book as the desk sees it: its latest season, and the log of decisions. Safe for several threads. */
public final class DeskBook implements AutoCloseable {
    private final Book book;
    private final Object reading = new Object();
    private volatile Seen seen = new Seen("", null, null);

    /** What was read, and what the book was then. */
    private record Seen(
            String version,
            @Nullable Season season,
            @Nullable Season written) {}

    public DeskBook(Book book) {
        this.book = book;
    }

    /**
     * The latest season. Another process may import one meanwhile, so the book is asked each time whether it is still the
     * same; only then is it read anew. Parts that have not changed are the same instances as before. Empty in an empty book.
     */
    public Optional<Season> season() {
        return Optional.ofNullable(current().season());
    }

    /** The latest season as it was put in, without what was confirmed on labels. */
    public Optional<Season> written() {
        return Optional.ofNullable(current().written());
    }

    private Seen current() {
        Seen known = seen;
        String version = book.version();
        if (known.version().equals(version)) {
            return known;
        }
        synchronized (reading) {
            known = seen;
            if (known.version().equals(version)) {
                return known;
            }
            // What is read may be newer than the version, never older: then it is read once more.
            Optional<Book.Latest> latest = book.latest();
            Season season =
                    shared(known.season(), latest.map(Book.Latest::season).orElse(null));
            Seen read = new Seen(
                    version,
                    season,
                    shared(season, latest.map(Book.Latest::written).orElse(null)));
            seen = read;
            return read;
        }
    }

    /** The season read, with those parts of the known one that are equal. */
    private static @Nullable Season shared(@Nullable Season known, @Nullable Season read) {
        if (known == null || read == null) {
            return read;
        }
        if (known.equals(read)) {
            return known;
        }
        return new Season(
                read.year(),
                read.asOf(),
                read.adviser(),
                shared(known.farms(), read.farms()),
                shared(known.fields(), read.fields()),
                shared(known.history(), read.history()),
                known.shelf().equals(read.shelf()) ? known.shelf() : read.shelf(),
                known.pests().equals(read.pests()) ? known.pests() : read.pests(),
                shared(known.programs(), read.programs()),
                shared(known.assumptions(), read.assumptions()),
                known.ground().equals(read.ground()) ? known.ground() : read.ground(),
                known.work().equals(read.work()) ? known.work() : read.work());
    }

    private static <R> List<R> shared(List<R> known, List<R> read) {
        return known.equals(read) ? known : read;
    }

    /** Puts a season in the place of whatever the book has for its year, but not over what was changed here since. */
    public void bring(Season season, Instant at) {
        book.bring(season, at, false);
    }

    /** Puts a changed season in the place of the latest one, whole or not at all; one change at a time. */
    public void change(UnaryOperator<Season> change) {
        book.change(change);
    }

    /** The same for a change that looks at more than the season as it was put in. */
    public void changeHeld(Function<Book.Held, Season> change) {
        book.changeHeld(change);
    }

    /** The same, by somebody whom the history of changes names; the number of the change, where anything was changed. */
    public Optional<Integer> changeHeld(By by, Function<Book.Held, Season> change) {
        return book.changeHeld(by, change);
    }

    /** The same, for a change that may take programs out: one that somebody chose stays. */
    public Optional<Integer> changeHeldKeepingChosen(By by, Function<Book.Held, Season> change) {
        return book.changeHeld(by, held -> {
            Season after = change.apply(held);
            held.demandChosen(after);
            return after;
        });
    }

    /** Changes rows of the latest season, all of them or none; the number of the change, where anything was changed. */
    public Optional<Integer> edit(By by, List<RowChange> rows) {
        return book.edit(by, rows);
    }

    /** Begins a season in an empty book. */
    public void begin(By by, Season first) {
        book.begin(by, first);
    }

    /** The harvest years in the book, earliest first. */
    public List<Integer> seasons() {
        return book.seasons();
    }

    /** What the next season would take over; nothing is changed. */
    public NextSeasonSummary nextSeason(BeginAsked asked) {
        return NextSeasonSummary.of(book.next(asked), book.papers(), false);
    }

    /**
     * Begins the season after the latest one.
     *
     * @param last the latest season, as it was put in, that somebody looked at; null where nobody looked
     */
    public NextSeasonSummary beginNext(By by, BeginAsked asked, @Nullable Season last) {
        return NextSeasonSummary.of(book.beginNext(by, asked, last), book.papers(), true);
    }

    /** What bringing a season in would change; nothing is changed. */
    public Book.Incoming incoming(Season season) {
        return book.incoming(season);
    }

    /** Puts a season in the place of that of its year, as a workbook does, as far as somebody agrees to what it changes. */
    public Book.Brought bring(By by, Season season, Consumer<Book.Incoming> agreeing) {
        return book.bring(by, season, agreeing);
    }

    /** Every change of a season, in the order of writing. */
    public List<SeasonChange> changes(int year) {
        return book.changes(year);
    }

    /** Takes a change back, or an undo of one. */
    public int undo(int number, By by) {
        return book.undo(number, by);
    }

    /** The decisions recorded for a year, oldest first. */
    public List<Choice> choices(int year) {
        return book.choices(year);
    }

    /** Records a decision that rests on a weighing of the season as it is; nothing recorded is ever altered. */
    public void choose(Choice choice, Season weighed) {
        book.choose(choice, weighed);
    }

    /** Records a decision with what is expected of every program now. */
    public void choose(Choice choice, Season weighed, List<Expectation> expected) {
        book.choose(choice, weighed, expected);
    }

    /** Writes down what was harvested; nothing written is ever altered. */
    public void harvest(Harvest harvest) {
        book.harvest(harvest);
    }

    /** All that was harvested, in the order of writing. */
    public List<Harvest> harvests() {
        return book.harvests();
    }

    /** Every choice of every year with what was expected then. */
    public List<Decided> decided() {
        return book.decided();
    }

    /** The season of a harvest year with what was confirmed on labels. */
    public Optional<Season> season(int year) {
        return book.season(year);
    }

    /** The seasons in which something was harvested, looked back on. */
    public LookBack lookBack() {
        return book.lookBack();
    }

    /** Every line of the log, those that were struck among them, in the order of writing. */
    public List<LogLine> log() {
        return book.log();
    }

    /** Writes down what was put on; nothing written is ever altered. */
    public LogLine log(Done done, Instant at) {
        return book.log(done, at);
    }

    /** Writes down which planned pass a line of the log was. */
    public LogLine sayPass(int line, MeantPass meant, String who, Instant when) {
        return book.sayPass(line, meant, who, when);
    }

    /** Strikes a line of the log; it stays. */
    public void strike(int number, LogLine.Strike strike) {
        book.strike(number, strike);
    }

    /** Every application record, those that no longer count among them. */
    public List<KeptRecord> records() {
        return book.records();
    }

    /** Writes an application record down; nothing written is ever altered. */
    public KeptRecord record(ApplicationRecord record, By by, Instant at) {
        return book.record(record, by, at);
    }

    /** Writes a record down in the place of a wrong one, which stays. */
    public KeptRecord correct(int number, ApplicationRecord record, By by, Instant at) {
        return book.correct(number, record, by, at);
    }

    /** Says that a record never was so; it stays. */
    public KeptRecord voidRecord(int number, By by, Instant at) {
        return book.voidRecord(number, by, at);
    }

    /** Every paper, in the order in which they came. */
    public List<StoredPaper> papers() {
        return book.papers();
    }

    /** The file of a paper. */
    public Optional<byte[]> paperFile(int number) {
        return book.paperFile(number);
    }

    /** Keeps a paper whole; the same file is not kept twice. */
    public Book.Kept keep(FiledPaper paper, byte[] content, Instant at) {
        return book.keep(paper, content, at);
    }

    /** Notes what stands clearly on a label. */
    public void note(String sha256, List<ReadOnLabel> read) {
        book.note(sha256, read);
    }

    /** What was typed from a paper. */
    public List<TypedValue> typed(int paper) {
        return book.typed(paper);
    }

    /** Writes down what somebody typed; nothing written is ever altered. */
    public void type(List<TypedValue> values) {
        book.type(values);
    }

    /** The head of the book's record, by which a later look finds whether anything was changed. */
    public RecordHead head() {
        return book.head();
    }

    /** The hourly weather of a field, where any is on file; read once, until a file is taken in or out. */
    public Optional<HourlyWeather> weather(Field field) {
        String version = weatherVersion();
        Weather known = weather;
        if (!known.version().equals(version)) {
            known = new Weather(version, new ConcurrentHashMap<>());
            weather = known;
        }
        return known.of()
                .computeIfAbsent(field.name() + "|" + field.state() + "|" + field.county(), key -> book.weather(field));
    }

    /** What is another text once {@link #weather} may answer otherwise. */
    public String weatherVersion() {
        return book.weatherVersion();
    }

    private record Weather(String version, ConcurrentMap<String, Optional<HourlyWeather>> of) {}

    private volatile Weather weather = new Weather("", new ConcurrentHashMap<>());

    /** Every file of hourly weather. */
    public List<WeatherOnFile> weatherFiles() {
        return book.weatherFiles();
    }

    /** Takes a weather file in: hours beside the seasons, days into the latest season. */
    public WeatherIntake.Taken takeWeather(String name, byte[] content, WeatherAsked asked, Instant at) {
        return WeatherIntake.take(book, name, content, asked, at);
    }

    /** Writes down what somebody puts right on a paper; nothing written is ever altered. */
    public void mend(Function<List<Mend>, Mend> mending) {
        book.mend(mending);
    }

    /** What was put right on a paper, in order. */
    public List<Mend> mends(String sha256) {
        return book.mends().stream()
                .filter(mend -> mend.sha256().equals(sha256))
                .toList();
    }

    /** All that was decided about labels, in order. */
    public List<LabelDecision> decisions() {
        return book.decisions();
    }

    /** Writes down what somebody decided about a label; nothing written is ever altered. */
    public void decide(Function<Book.Labels, List<LabelDecision>> deciding) {
        book.decide(deciding);
    }

    @Override
    public void close() {
        book.close();
    }
}
