package plumbrow.app.book;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcOperations;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.lookback.Decided;
import plumbrow.advice.lookback.Expectation;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.lookback.LookBack;
import plumbrow.advice.names.UnknownName;
import plumbrow.advice.names.UnknownNames;
import plumbrow.advice.nextseason.BeginAsked;
import plumbrow.advice.nextseason.NextSeason;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.season.Season;
import plumbrow.documents.confirm.ConfirmedSeason;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.LabelFile;
import plumbrow.documents.confirm.ReadOnLabel;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.documents.weather.WeatherRead;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.RowGoneException;
import plumbrow.documents.workbook.edit.SeasonEdit;

/**
 * The one file that holds an adviser's seasons and what was chosen in them. A book may be read from many threads and
 * programs at once; those who write wait for one another. What was put in comes out equal, in the same order, numbers
 * to the bit.
 *
 * <p>Every method says in a {@link BookException} of one plain sentence what it can't do; then nothing has changed.
 */
public final class Book implements AutoCloseable {
    private final Database database;

    Book(Database database) {
        this.database = database;
    }

    /** Makes a new, empty book. A file of that name must not exist. */
    public static Book create(Path newFile) {
        return new Book(SqliteFile.create(newFile));
    }

    /** Opens a book; one of an older form is brought up to date. */
    public static Book open(Path file) {
        return new Book(SqliteFile.open(file));
    }

    /** The file or address of the book. */
    public String name() {
        return database.name();
    }

    /** The harvest years in the book, earliest first. */
    public List<Integer> seasons() {
        return database.read(sql -> new SeasonRows(sql).years());
    }

    /** The season of a harvest year with what was confirmed on labels, where the book has one. */
    public Optional<Season> season(int year) {
        return database.read(sql -> new SeasonRows(sql).season(year).map(written -> confirmed(sql, written)));
    }

    /** The season of the latest harvest year with what was confirmed on labels, where the book has any. */
    public Optional<Season> latestSeason() {
        return database.read(sql -> latest(sql).map(written -> confirmed(sql, written)));
    }

    /** What is another text once {@link #latestSeason} may answer otherwise; asks for no row of the season. */
    public String version() {
        return database.read(sql -> new SeasonRows(sql).version());
    }

    /**
     * The latest season at one moment.
     *
     * @param written as it was put in
     * @param season the same with what was confirmed on labels
     */
    public record Latest(Season written, Season season) {}

    /** The latest season both ways, read once. */
    public Optional<Latest> latest() {
        return database.read(sql -> latest(sql).map(written -> new Latest(written, confirmed(sql, written))));
    }

    /** The latest season as it was put in, without what was confirmed on labels. */
    public Optional<Season> latestWritten() {
        return database.read(Book::latest);
    }

    private static Optional<Season> latest(JdbcOperations sql) {
        SeasonRows rows = new SeasonRows(sql);
        List<Integer> years = rows.years();
        return years.isEmpty() ? Optional.empty() : rows.season(years.get(years.size() - 1));
    }

    private static Season confirmed(JdbcOperations sql, Season written) {
        JdbcClient client = JdbcClient.create(sql);
        List<LabelDecision> decisions = new LabelDecisionRows(client).all();
        List<ReadOnLabel> read = new LabelReadingRows(client).all();
        return decisions.isEmpty() && read.isEmpty()
                ? written
                : ConfirmedSeason.over(written, files(new PaperRows(client).all()), decisions, read);
    }

    private static List<LabelFile> files(List<StoredPaper> papers) {
        return papers.stream()
                .map(stored -> new LabelFile(stored.paper(), stored.sha256()))
                .toList();
    }

    /**
     * Notes what stands clearly on a label that the book keeps, in the place of what was read on it before. It is no record and
     * enters nothing; where it is what was noted, nothing is written.
     */
    public void note(String sha256, List<ReadOnLabel> read) {
        List<ReadOnLabel> noted = database.read(sql -> new LabelReadingRows(JdbcClient.create(sql))
                .all().stream().filter(one -> one.sha256().equals(sha256)).toList());
        if (!noted.equals(read)) {
            database.write(sql -> {
                new LabelReadingRows(JdbcClient.create(sql)).replace(sha256, read);
                new SeasonRows(sql).touch();
                return read;
            });
        }
    }

    /** Writes down what a person decided about values of labels that the book keeps: all or none. */
    public void decide(List<LabelDecision> decisions) {
        decide(labels -> decisions);
    }

    /** All about labels at one moment. */
    public record Labels(List<StoredPaper> papers, Optional<Season> written, List<LabelDecision> decisions) {}

    /**
     * Writes down what a person decides about values of labels, seen as they are while nobody else can write: all or none.
     *
     * @param deciding may refuse by an exception of its own, which comes out as it is
     * @throws BookException where a value would name what nobody knows, such as a county
     */
    public void decide(Function<Labels, List<LabelDecision>> deciding) {
        writing(own -> sql -> {
            JdbcClient client = JdbcClient.create(sql);
            LabelDecisionRows rows = new LabelDecisionRows(client);
            Labels labels = new Labels(new PaperRows(client).all(), latest(sql), rows.all());
            List<LabelDecision> decided = own.ask(() -> deciding.apply(labels));
            Optional<Season> before = labels.written().map(written -> confirmed(sql, written));
            decided.forEach(rows::add);
            before.ifPresent(season -> refuseUnknown(
                    UnknownNames.added(season, confirmed(sql, labels.written().orElseThrow()))));
            return decided;
        });
    }

    /** All that was decided about labels, in order. */
    public List<LabelDecision> decisions() {
        return database.read(sql -> new LabelDecisionRows(JdbcClient.create(sql)).all());
    }

    /** As {@link #put(Season, Instant)}, where nobody says when. */
    public LogLine.Merged put(Season season) {
        return put(season, null);
    }

    /**
     * Puts a season in the place of whatever the book has for its year, whole or not at all. Choices stay, and so does the
     * log: lines of the season that are new come to it.
     *
     * @param at the moment, where it is to be written beside the lines of the log
     */
    public LogLine.Merged put(Season season, @Nullable Instant at) {
        return bring(season, at, true).log();
    }

    /**
     * What bringing a season in did.
     *
     * @param replaced whether the book had a season of that year
     * @param log what it did to the log
     * @param gone what had been changed in the book since a season of that year was last brought in and is not as it was, in
     *     words
     */
    public record Brought(boolean replaced, LogLine.Merged log, List<String> gone) {}

    /**
     * Puts a season in the place of whatever the book has for its year, as {@link #put(Season, Instant)}, but not over what
     * was changed in the book since a season of that year was last brought in.
     *
     * @param over let such changes go all the same
     * @throws MeanwhileException where the season lacks such changes; nothing has changed then
     */
    public Brought bring(Season season, @Nullable Instant at, boolean over) {
        return bring(new By(null, "", By.Way.WORKBOOK, at), season, over);
    }

    /** As {@link #bring(Season, Instant, boolean)}, by somebody whom the history of changes names. */
    public Brought bring(By by, Season season, boolean over) {
        return bring(by, season, coming -> {
            if (!coming.gone().isEmpty() && !over) {
                throw new MeanwhileException("Season " + season.year()
                        + " was changed in the book since a workbook was last brought in, and this one has it otherwise: "
                        + String.join("; ", coming.gone()) + ". Nothing was changed.");
            }
        });
    }

    /**
     * What bringing a season in would change.
     *
     * @param replaces whether the book holds a season of that year
     * @param rows the rows that would be otherwise; lines of the log that the season lacks stay and are not among them; none where
     *     the book holds no season of that year
     * @param gone what was changed in the book since a season of that year was last brought in and would not be as it is, in
     *     words
     */
    public record Incoming(boolean replaces, List<RowChange> rows, List<String> gone) {}

    /** What bringing a season in would change; nothing is changed. */
    public Incoming incoming(Season season) {
        return database.read(sql -> incoming(sql, season));
    }

    private static Incoming incoming(JdbcOperations sql, Season season) {
        Optional<Season> before = new SeasonRows(sql).season(season.year());
        List<String> gone = new ArrayList<>();
        List<RowChange> rows = new ArrayList<>();
        before.ifPresent(held -> {
            gone.addAll(new DeskChangeRows(JdbcClient.create(sql)).lost(held, season));
            gone.addAll(new ChangeRows(sql).lost(held, season));
            ChangeRows.differences(held, season).stream()
                    .filter(row -> !row.table().equals(LOG) || row.before() == null)
                    .forEach(rows::add);
        });
        return new Incoming(before.isPresent(), List.copyOf(rows), List.copyOf(gone));
    }

    private static final String LOG = "log";

    /**
     * As {@link #bring(By, Season, boolean)}, as far as somebody agrees to what it would change.
     *
     * @param agreeing may refuse by an exception of its own, which comes out as it is; nothing is changed then
     */
    public Brought bring(By by, Season season, Consumer<Incoming> agreeing) {
        return writing(own -> sql -> {
            SeasonRows rows = new SeasonRows(sql);
            Optional<Season> before = rows.season(season.year());
            Incoming coming = incoming(sql, season);
            own.ask(() -> {
                agreeing.accept(coming);
                return coming;
            });
            List<String> gone = coming.gone();
            rows.replace(season);
            new DeskChangeRows(JdbcClient.create(sql)).forget(season.year());
            LogLine.Merged log = new LogRows(JdbcClient.create(sql)).merge(season, by.at());
            Season now = rows.season(season.year()).orElseThrow();
            if (before.isEmpty() || !before.get().equals(now)) {
                new ChangeRows(sql).add(before.orElse(null), now, by, null);
            }
            return new Brought(before.isPresent(), log, gone);
        });
    }

    /**
     * The book at one moment, while nobody else can write.
     *
     * @param written the latest season as it was put in
     * @param season the same with what was confirmed on labels
     * @param choices what was chosen for its year, in the order of choosing
     */
    public record Held(Season written, Season season, List<Choice> choices) {
        /**
         * Refuses to go on from a season that is no longer the book's.
         *
         * @param seen the season, with what was confirmed on labels, that somebody looked at
         * @param what what is not done then, as the end of a sentence
         */
        public void demand(Season seen, String what) {
            if (!season.equals(seen)) {
                throw new MeanwhileException(
                        "The season in the book has changed since it was looked at; " + what + ".");
            }
        }

        /** Refuses to let a program go that somebody chose: choices stay, and one speaks of it. */
        public void demandChosen(Season after) {
            for (Choice choice : choices) {
                boolean was = has(written, choice);
                if (was && !has(after, choice)) {
                    throw new MeanwhileException("The program '" + choice.program() + "' of " + choice.field()
                            + " was chosen by " + choice.who() + "; choices stay, and so does what they speak of.");
                }
            }
        }

        private static boolean has(Season season, Choice choice) {
            return season.programs(choice.field()).stream()
                    .anyMatch(program -> program.name().equals(choice.program()));
        }
    }

    /**
     * Changes the latest season as it was put in, whole or not at all. What was confirmed on labels is no part of it and is
     * not written into it. Nobody else changes the book meanwhile; where the season stays equal, nothing is written.
     *
     * @param change may refuse by an exception of its own, which comes out as it is
     * @throws BookException where the book holds no season yet
     */
    public void change(UnaryOperator<Season> change) {
        changeHeld(held -> change.apply(held.written()));
    }

    /** As {@link #change}, for a change that looks at more than the season as it was put in. */
    public void changeHeld(Function<Held, Season> change) {
        changeHeld(By.unsaid(Instant.now()), change);
    }

    /**
     * As {@link #changeHeld(Function)}, by somebody whom the history of changes names.
     *
     * @return the number of the change in the history; empty where nothing was changed
     */
    public Optional<Integer> changeHeld(By by, Function<Held, Season> change) {
        return writing(own -> sql -> {
            Held held = held(sql);
            return write(sql, held, own.ask(() -> change.apply(held)), by, null);
        });
    }

    private static Optional<Integer> write(
            JdbcOperations sql, Held held, Season changed, By by, @Nullable Integer takesBack) {
        Season written = held.written();
        if (changed.equals(written)) {
            return Optional.empty();
        }
        refuseUnknown(UnknownNames.added(written, changed));
        new SeasonRows(sql).replace(changed);
        new DeskChangeRows(JdbcClient.create(sql)).note(written, changed);
        new LogRows(JdbcClient.create(sql)).merge(changed, by.at());
        return Optional.of(new ChangeRows(sql).add(written, changed, by, takesBack));
    }

    /**
     * Changes rows of the latest season, all of them or none.
     *
     * @return the number of the change in the history; empty where nothing was changed
     * @throws EditFaults with all that speaks against it, in the words of a workbook's faults
     * @throws MeanwhileException where a row is no longer as it was seen
     */
    public Optional<Integer> edit(By by, List<RowChange> rows) {
        return changeHeld(by, held -> edited(held, rows));
    }

    private static Season edited(Held held, List<RowChange> rows) {
        try {
            Season after = SeasonEdit.of(held.written(), rows);
            held.demandChosen(after);
            return after;
        } catch (RowGoneException gone) {
            throw new MeanwhileException(gone.getMessage() + " Nothing was changed.");
        }
    }

    /**
     * Begins a season where the book holds none.
     *
     * @throws MeanwhileException where it holds one by now
     */
    public void begin(By by, Season first) {
        database.write(sql -> {
            SeasonRows rows = new SeasonRows(sql);
            if (!rows.years().isEmpty()) {
                throw new MeanwhileException("The book holds a season by now; nothing was changed.");
            }
            refuseUnknown(UnknownNames.of(first));
            rows.replace(first);
            return new ChangeRows(sql).add(null, first, by, null);
        });
    }

    /** What the next season would be, seen from the seasons that the book holds; nothing is changed. */
    public NextSeason next(BeginAsked asked) {
        return database.read(sql -> next(sql, asked));
    }

    private static NextSeason next(JdbcOperations sql, BeginAsked asked) {
        SeasonRows rows = new SeasonRows(sql);
        Season last = latest(sql).orElseThrow(() -> new BookException("The book holds no season yet."));
        List<Season> earlier = rows.years().stream()
                .filter(year -> year < last.year())
                .flatMap(year -> rows.season(year).stream())
                .toList();
        Map<String, Double> yields = new HashMap<>(harvested(sql, last));
        yields.putAll(asked.yields());
        return NextSeason.of(last, earlier, new BeginAsked(asked.year(), asked.asOf(), asked.crops(), yields));
    }

    /**
     * Begins the season after the latest one, whole or not at all. The latest one, its log, choices and changes stay as they are.
     *
     * @param seen the latest season, as it was put in, that somebody looked at; null where nobody looked
     * @throws IllegalArgumentException where the year, the day or a crop can't be
     * @throws MeanwhileException where the latest season is another by now
     */
    public NextSeason beginNext(By by, BeginAsked asked, @Nullable Season seen) {
        return writing(own -> sql -> {
            NextSeason next = own.ask(() -> next(sql, asked));
            Season last = latest(sql).orElseThrow();
            if (seen != null && !seen.equals(last)) {
                throw new MeanwhileException("Season " + last.year()
                        + " has changed since it was looked at; look again at what comes along. Nothing was begun.");
            }
            refuseUnknown(UnknownNames.added(last, next.season()));
            new SeasonRows(sql).replace(next.season());
            new ChangeRows(sql).add(null, next.season(), by, null);
            return next;
        });
    }

    /**
     * Takes a season that was begun out again, as long as nothing was done in it. The one before it is the latest again.
     *
     * @throws MeanwhileException where something was changed, chosen or harvested in it
     */
    private static int unbegin(JdbcOperations sql, Season begun, SeasonChange change, By by) {
        int year = begun.year();
        SeasonRows rows = new SeasonRows(sql);
        boolean first = rows.years().stream().noneMatch(other -> other < year);
        if (change.way() == By.Way.WORKBOOK || first) {
            throw new BookException("Change " + change.number() + " brought the season in; it can't be taken back.");
        }
        boolean touched = new ChangeRows(sql).all(year).stream().anyMatch(later -> later.number() > change.number())
                || !new ChoiceRows(JdbcClient.create(sql)).all(year).isEmpty()
                || new HarvestRows(JdbcClient.create(sql)).all().stream().anyMatch(one -> one.year() == year);
        if (touched) {
            throw new MeanwhileException(
                    "Season " + year
                            + " has been worked in since it was begun; it can't be taken back as a whole. Take its changes back one by one.");
        }
        rows.remove(year);
        return new ChangeRows(sql).add(null, begun, new By(by.who(), by.why(), By.Way.UNDO, by.at()), change.number());
    }

    private static Map<String, Double> harvested(JdbcOperations sql, Season season) {
        Map<String, Double> yields = new HashMap<>();
        new HarvestRows(JdbcClient.create(sql))
                .all().stream()
                        .filter(one -> one.year() == season.year() && one.whole())
                        .forEach(one -> season.field(one.field())
                                .ifPresent(
                                        field -> yields.put(field.name(), one.standardYieldBuPerAcre(field.crop()))));
        return yields;
    }

    /** Writes down what was harvested; of several lines about one program of a field and year the last counts. */
    public void harvest(Harvest harvest) {
        database.write(sql -> {
            Season season = new SeasonRows(sql)
                    .season(harvest.year())
                    .orElseThrow(() -> new BookException("The book has no season " + harvest.year() + "."));
            if (season.programs(harvest.field()).stream()
                    .noneMatch(one -> one.name().equals(harvest.program()))) {
                throw new BookException("The season " + harvest.year() + " has no program '" + harvest.program()
                        + "' for the field '" + harvest.field() + "'.");
            }
            new HarvestRows(JdbcClient.create(sql)).add(harvest);
            return harvest;
        });
    }

    /** All that was harvested, in the order of writing. */
    public List<Harvest> harvests() {
        return database.read(sql -> new HarvestRows(JdbcClient.create(sql)).all());
    }

    /** Every change of a season, in the order of writing. */
    public List<SeasonChange> changes(int year) {
        return database.read(sql -> new ChangeRows(sql).all(year));
    }

    /**
     * Takes a change of the latest season back, or an undo of one, as long as its rows are as it left them. What others changed
     * since stays.
     *
     * @return the number of the undo in the history
     * @throws EditFaults where the season without it would break a rule
     * @throws MeanwhileException where its rows were changed since, or it is taken back already
     */
    public int undo(int number, By by) {
        return writing(own -> sql -> {
            Held held = held(sql);
            SeasonChange change = new ChangeRows(sql).one(held.written().year(), number);
            if (change.takenBack()) {
                throw new MeanwhileException("Change " + number + " is taken back already.");
            }
            if (change.rows().isEmpty()) {
                return unbegin(sql, held.written(), change, by);
            }
            List<RowChange> back = new ArrayList<>(change.rows());
            Collections.reverse(back);
            Season without = own.ask(
                    () -> edited(held, back.stream().map(RowChange::inverse).toList()));
            By.Way way = change.way() == By.Way.UNDO ? By.Way.REDO : By.Way.UNDO;
            return write(sql, held, without, new By(by.who(), by.why(), way, by.at()), number)
                    .orElseThrow(() -> new BookException("Change " + number + " left nothing to take back."));
        });
    }

    private static Held held(JdbcOperations sql) {
        Season written = latest(sql).orElseThrow(() -> new BookException("The book holds no season yet."));
        return new Held(written, confirmed(sql, written), new ChoiceRows(JdbcClient.create(sql)).all(written.year()));
    }

    /** Writes with the help of somebody whose own refusals come out as they are. */
    private <T> T writing(Function<Asking, Function<JdbcOperations, T>> changes) {
        Asking own = new Asking();
        try {
            return database.write(changes.apply(own));
        } catch (BookException fault) {
            throw own.refusal == null ? fault : own.refusal;
        }
    }

    /** A change brings in no name that refers to nothing; what stood there before stays until it is put right. */
    private static void refuseUnknown(List<UnknownName> unknown) {
        if (!unknown.isEmpty()) {
            throw new BookException("Nothing was changed. "
                    + unknown.stream().map(UnknownName::sentence).collect(Collectors.joining(" ")));
        }
    }

    /**
     * Names in the seasons that refer to nothing, so that their rows count as nothing: a sentence each. Seasons of before
     * that was refused may have some.
     */
    public List<String> unknownNames() {
        List<String> sentences = new ArrayList<>();
        for (int year : seasons()) {
            season(year)
                    .ifPresent(season -> UnknownNames.of(season)
                            .forEach(name -> sentences.add("Season " + year + ": " + name.sentence())));
        }
        return sentences;
    }

    /** Asks somebody else in the midst of a transaction, and remembers by which exception he refused. */
    private static final class Asking {
        private @Nullable RuntimeException refusal;

        <T> T ask(Supplier<T> question) {
            try {
                return question.get();
            } catch (RuntimeException refused) {
                refusal = refused;
                throw refused;
            }
        }
    }

    /** Every line of the log, those that were voided among them, in the order of writing. */
    public List<LogLine> log() {
        return database.read(sql -> new LogRows(JdbcClient.create(sql)).all());
    }

    /** Writes a line down at the end of the log. */
    public LogLine log(Done done, Instant at) {
        return database.write(sql -> new LogRows(JdbcClient.create(sql)).add(done, at));
    }

    /** Writes down which planned pass a line of the log was; of several answers the last counts. */
    public LogLine sayPass(int line, MeantPass meant, String who, Instant when) {
        return database.write(sql -> new LogRows(JdbcClient.create(sql)).say(line, meant, who, when));
    }

    /** Strikes a line of the log that was wrong. It stays, and no longer counts. */
    public void strike(int number, LogLine.Strike strike) {
        database.write(sql -> {
            new LogRows(JdbcClient.create(sql)).strike(number, strike);
            return strike;
        });
    }

    /** Every application record, those that no longer count among them, in the order of writing. */
    public List<KeptRecord> records() {
        return database.read(sql -> new RecordRows(JdbcClient.create(sql)).all());
    }

    /**
     * Writes an application record down for good: its lines of the log with it, and its amounts off the stock of the latest season.
     *
     * @param by who writes it down, and by which door
     * @throws BookException where the book holds no season yet
     */
    public KeptRecord record(ApplicationRecord record, By by, Instant at) {
        return database.write(sql -> {
            RecordRows rows = new RecordRows(JdbcClient.create(sql));
            return rows.one(record(sql, record, null, by, at));
        });
    }

    /**
     * Writes a record down in the place of one that was wrong. The wrong one stays and no longer counts; what it took from the stock goes
     * back.
     *
     * @param by who corrects it, and why
     * @throws BookException where there is no such record, or it no longer counts
     */
    public KeptRecord correct(int number, ApplicationRecord record, By by, Instant at) {
        return database.write(sql -> {
            RecordRows rows = new RecordRows(JdbcClient.create(sql));
            KeptRecord wrong = rows.strike(number, new LogLine.Strike(who(sql, by), by.why(), at));
            stock(sql, StockOfRecords.back(rows.taken(wrong)), number, by, at);
            return rows.one(record(sql, record, number, by, at));
        });
    }

    /** Says that a record never was so. It stays and no longer counts; what it took from the stock goes back. */
    public KeptRecord voidRecord(int number, By by, Instant at) {
        return database.write(sql -> {
            RecordRows rows = new RecordRows(JdbcClient.create(sql));
            String who = who(sql, by);
            KeptRecord wrong = rows.strike(number, new LogLine.Strike(who, by.why(), at));
            rows.addVoid(number, new KeptRecord.Voided(who, by.why(), at));
            stock(sql, StockOfRecords.back(rows.taken(wrong)), number, by, at);
            return rows.one(number);
        });
    }

    private static int record(
            JdbcOperations sql, ApplicationRecord record, @Nullable Integer corrects, By by, Instant at) {
        RecordRows rows = new RecordRows(JdbcClient.create(sql));
        Season written = held(sql).written();
        List<RecordRows.Taken> taken = StockOfRecords.taken(written, record);
        int number = rows.add(record, taken, corrects, corrects == null ? null : by.why(), who(sql, by), at);
        stock(sql, StockOfRecords.off(taken), number, by, at);
        return number;
    }

    private static String who(JdbcOperations sql, By by) {
        String who = by.who();
        return who == null ? held(sql).written().adviser() : who;
    }

    /** Changes what is on hand as part of writing a record; the history of changes says so. */
    private static void stock(JdbcOperations sql, UnaryOperator<Season> change, int record, By by, Instant at) {
        Held held = held(sql);
        write(
                sql,
                held,
                change.apply(held.written()),
                new By(by.who(), "application record " + record, by.way(), at),
                null);
    }

    /**
     * Writes down a choice that rests on a weighing, if the season that was weighed is still the book's latest.
     *
     * @throws MeanwhileException where it is not; nothing is written then
     */
    public void choose(Choice choice, Season weighed) {
        choose(choice, weighed, List.of());
    }

    /**
     * As {@link #choose(Choice, Season)}, with what is expected of every program now, so that it can be looked back on.
     *
     * @param expected of the weighing that the choice rests on
     */
    public void choose(Choice choice, Season weighed, List<Expectation> expected) {
        database.write(sql -> {
            held(sql).demand(weighed, "nothing was recorded");
            ChoiceRows rows = new ChoiceRows(JdbcClient.create(sql));
            rows.add(choice);
            rows.expect(expected);
            return choice;
        });
    }

    /** Every choice of every year with what was expected then, in the order of choosing. */
    public List<Decided> decided() {
        return database.read(sql -> new ChoiceRows(JdbcClient.create(sql)).decided());
    }

    /** The seasons in which something was harvested, looked back on. */
    public LookBack lookBack() {
        List<Harvest> harvests = harvests();
        List<Season> seasons = seasons().stream()
                .filter(year -> harvests.stream().anyMatch(one -> one.year() == year))
                .flatMap(year -> season(year).stream())
                .toList();
        return LookBack.of(seasons, decided(), harvests);
    }

    /** Writes a choice down at the end of the log. Its field and program must stand in the book's season of that year. */
    public void choose(Choice choice) {
        database.write(sql -> {
            ChoiceRows rows = new ChoiceRows(JdbcClient.create(sql));
            rows.demandProgram(choice);
            rows.add(choice);
            return choice;
        });
    }

    /** What was chosen for a harvest year, in the order of choosing. */
    public List<Choice> choices(int year) {
        return database.read(sql -> new ChoiceRows(JdbcClient.create(sql)).all(year));
    }

    /**
     * Keeps a paper whole. A file that the book has already is not kept twice, whatever its name.
     *
     * @param paper what was read on it; its number is given by the book
     * @return the paper as kept, and whether it was there already
     */
    public Kept keep(FiledPaper paper, byte[] content, Instant at) {
        String sha256 = PaperRows.sha256(content);
        return database.write(sql -> {
            PaperRows rows = new PaperRows(JdbcClient.create(sql));
            boolean already = rows.withContent(sha256).isPresent();
            if (!already) {
                rows.add(paper, content, at);
            }
            return new Kept(rows.one(rows.withContent(sha256).orElseThrow()).orElseThrow(), already);
        });
    }

    /** A paper that was brought in. */
    public record Kept(StoredPaper stored, boolean already) {}

    /** Every paper, in the order in which they came. */
    public List<StoredPaper> papers() {
        return database.read(sql -> new PaperRows(JdbcClient.create(sql)).all());
    }

    /** The file of a paper, where the book has it. */
    public Optional<byte[]> paperFile(int number) {
        return database.read(sql -> new PaperRows(JdbcClient.create(sql)).content(number));
    }

    /** Writes down what somebody typed from a page. */
    public void type(List<TypedValue> values) {
        database.write(sql -> {
            PaperRows rows = new PaperRows(JdbcClient.create(sql));
            values.forEach(rows::type);
            return values;
        });
    }

    /**
     * Writes down what a person puts right on a paper, seen as it is while nobody else can write.
     *
     * @param mending of all that was put right before; may refuse by an exception of its own, which comes out as it is
     */
    public void mend(Function<List<Mend>, Mend> mending) {
        writing(own -> sql -> {
            MendRows rows = new MendRows(JdbcClient.create(sql));
            List<Mend> before = rows.all();
            Mend mend = own.ask(() -> mending.apply(before));
            rows.add(mend);
            new SeasonRows(sql).touch();
            return mend;
        });
    }

    /** All that was put right on papers, in order. */
    public List<Mend> mends() {
        return database.read(sql -> new MendRows(JdbcClient.create(sql)).all());
    }

    /** What was typed from a paper, in the order of typing. */
    public List<TypedValue> typed(int paper) {
        return database.read(sql -> new PaperRows(JdbcClient.create(sql)).typed(paper));
    }

    /**
     * Takes a file of hourly weather in. A file that was taken in for the place already is not taken in twice.
     *
     * @return its number, and whether it was there already
     */
    public TakenWeather keepWeather(String name, byte[] content, WeatherRead read, Instant at) {
        String sha256 = PaperRows.sha256(content);
        return database.write(sql -> {
            WeatherRows rows = new WeatherRows(sql);
            Optional<Integer> already = rows.already(read.weather().place(), sha256);
            return new TakenWeather(
                    already.isPresent() ? already.get() : rows.add(name, sha256, read, at), already.isPresent());
        });
    }

    /** A weather file that was taken in. */
    public record TakenWeather(int number, boolean already) {}

    /** Every file of hourly weather, in the order in which they came. */
    public List<WeatherOnFile> weatherFiles() {
        return database.read(sql -> new WeatherRows(sql).files());
    }

    /** What is another text once {@link #weather} may answer otherwise. */
    public String weatherVersion() {
        return database.read(sql -> new WeatherRows(sql).version());
    }

    /** Takes a file of hourly weather out again; whether there was one of that number. */
    public boolean forgetWeather(int number) {
        return database.write(sql -> new WeatherRows(sql).remove(number));
    }

    /** The hourly weather of a field: its own, else its county's. Empty where none is on file. */
    public Optional<HourlyWeather> weather(Field field) {
        return database.read(sql -> {
            WeatherRows rows = new WeatherRows(sql);
            return Stream.of(field.name(), field.state() + ": " + field.county())
                    .map(rows::of)
                    .filter(files -> !files.isEmpty())
                    .map(HourlyWeather::merged)
                    .findFirst();
        });
    }

    /** Copies the whole book as it stands at this moment, while others may go on using it. The file must be new. */
    public void backup(Path newFile) {
        database.copyTo(newFile);
    }

    /** The last link of the chain over all that was written down for good. Whoever keeps it elsewhere can check by it later. */
    public RecordHead head() {
        return database.read(sql -> new ChainRows(JdbcClient.create(sql)).head());
    }

    /** What is wrong with the book, a sentence each; empty where all is well. Looks at every row of every season. */
    public List<String> check() {
        return check(List.of());
    }

    /**
     * As {@link #check()}, and whether the record is still the one that had these heads.
     *
     * @param heads printed on paper or taken from a backup
     */
    public List<String> check(List<RecordHead> heads) {
        List<String> problems = new ArrayList<>(database.problems());
        problems.addAll(database.read(sql -> {
            ChainRows chain = new ChainRows(JdbcClient.create(sql));
            List<String> found = new ArrayList<>(chain.problems());
            heads.forEach(head -> found.addAll(chain.missing(head)));
            return found;
        }));
        for (int year : seasons()) {
            try {
                problems.addAll(database.read(sql -> new SeasonRows(sql).unsealed(year)));
                problems.addAll(database.read(sql -> {
                    SeasonRows rows = new SeasonRows(sql);
                    return rows.season(year).map(rows::lostInReading).orElse(List.of());
                }));
            } catch (BookException unreadable) {
                problems.add("Season " + year + " can't be read. " + unreadable.getMessage());
            }
        }
        try {
            log();
        } catch (BookException unreadable) {
            problems.add("The log can't be read. " + unreadable.getMessage());
        }
        try {
            records();
        } catch (BookException unreadable) {
            problems.add("The application records can't be read. " + unreadable.getMessage());
        }
        problems.addAll(database.read(sql -> new PaperRows(JdbcClient.create(sql)).damaged()));
        return List.copyOf(problems);
    }

    @Override
    public void close() {
        database.close();
    }
}
