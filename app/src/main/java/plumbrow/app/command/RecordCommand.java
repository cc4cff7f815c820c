package plumbrow.app.command;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.field.Field;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.program.Done;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordCheck;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.command.said.RecordWords;
import plumbrow.app.json.Json;
import plumbrow.app.log.StrikeEntry;
import plumbrow.app.machine.MachineRecord;
import plumbrow.app.records.RecordAnswer;
import plumbrow.app.records.RecordEntry;
import plumbrow.app.records.RecordFilter;
import plumbrow.app.records.RecordStart;
import plumbrow.app.weather.Decided;
import plumbrow.documents.WholeFile;
import plumbrow.documents.apart.ApartReader;
import plumbrow.documents.binder.RecordExport;
import plumbrow.documents.binder.RecordPaper;
import plumbrow.documents.binder.RecordSheets;
import plumbrow.documents.machine.log.MachineWork;

/** Application records: written down, corrected, voided, held to the record duties, and given out. */
@Command(
        name = "record",
        description =
                "Writes down what was really applied, whole; says what the rules of that day ask for and it lacks.",
        footer = {
            "",
            "  plumbrow record add field=\"South Slough\" date=2026-05-04 start=08:10 end=11:40 acres=60 \\",
            "      product_1=\"Ironweir 4L\" rate_1=1 rate_unit_1=qt/ac applicator=\"S. Lind\" role=private",
            "  plumbrow record add field=\"South Slough\" program=\"Two passes\" pass=2 start=08:10 end=11:40 --card",
            "",
            "Exit: 0 good, 1 where a record lacks what a rule asks for, 2 bad input or something is asked back."
        })
final class RecordCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";
    private static final String BOOK = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.";

    private final Screen screen;

    RecordCommand(Screen screen) {
        this.screen = screen;
    }

    /** Which records. */
    static final class Which {
        @Option(names = "--field", paramLabel = "NAME", description = "Only of this field.")
        private @Nullable String field;

        @Option(names = "--applicator", paramLabel = "NAME", description = "Only by this applicator.")
        private @Nullable String applicator;

        @Option(names = "--product", paramLabel = "NAME", description = "Only with this product.")
        private @Nullable String product;

        @Option(names = "--from", paramLabel = "DAY", description = "From this day on.")
        private @Nullable String from;

        @Option(names = "--to", paramLabel = "DAY", description = "Up to this day.")
        private @Nullable String to;

        RecordFilter filter(List<KeptRecord> records, Optional<Season> season) {
            Map<String, String> asked = new LinkedHashMap<>();
            put(asked, "field", field);
            put(asked, "applicator", applicator);
            put(asked, "product", product);
            put(asked, "from", from);
            put(asked, "to", to);
            try {
                return RecordFilter.of(asked, records, season);
            } catch (IllegalArgumentException wrong) {
                throw new BadInputException(String.valueOf(wrong.getMessage()));
            }
        }

        private static void put(Map<String, String> asked, String key, @Nullable String value) {
            if (value != null) {
                asked.put(key, value);
            }
        }
    }

    @Override
    public void run() {
        throw new BadInputException(
                "Say what to do with records: add, list, show NUMBER, check, correct NUMBER, void NUMBER, or export FILE.");
    }

    @Command(name = "list", description = "Every record in the order of writing, corrected and void ones among them.")
    int list(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Mixin Which which,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            List<KeptRecord> records = book.records();
            List<KeptRecord> asked = which.filter(records, book.latestSeason()).in(records);
            Season season = season(book, file);
            screen.say(
                    json
                            ? Json.of(asked.stream()
                                    .map(one -> RecordAnswer.of(season, one))
                                    .toList())
                            : RecordWords.list(season, asked));
        }
        return Exit.GOOD;
    }

    @Command(name = "show", description = "One record whole, with when the field may be entered and what it lacks.")
    int show(
            @Parameters(paramLabel = "NUMBER", description = "The record.") int number,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            RecordAnswer answer = RecordAnswer.of(season(book, file), one(book, number));
            screen.say(json ? Json.of(answer) : RecordWords.one(answer, one(book, number)));
        }
        return Exit.GOOD;
    }

    @Command(
            name = "check",
            description = "What records lack by the rules of their day, and by when they must be written.")
    int check(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Mixin Which which,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            List<KeptRecord> records = book.records();
            Season season = season(book, file);
            List<KeptRecord> asked = which.filter(records, book.latestSeason()).in(records).stream()
                    .filter(KeptRecord::counts)
                    .toList();
            List<RecordCheck> checks =
                    asked.stream().map(one -> RecordCheck.of(season, one)).toList();
            screen.say(json ? Json.of(checks) : RecordWords.checks(asked, checks));
            return checks.stream().anyMatch(one -> one.incomplete() || one.late()) ? Exit.NOT_ADVISED : Exit.GOOD;
        }
    }

    @Command(name = "add", description = "Writes a record down, from KEY=VALUE pairs.")
    int add(
            @Parameters(arity = "0..*", paramLabel = "KEY=VALUE", description = "What the record says.") @Nullable
                    List<String> pairs,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(
                            names = "--card",
                            description = "Begin with what the load card of that field, program and pass says.")
                    boolean card,
            @Option(
                            names = "--machine",
                            paramLabel = "FILE",
                            description =
                                    "Then what a machine wrote down: task data in a .zip or folder, or a .csv of points.")
                    @Nullable
                    Path machine,
            @Option(
                            names = "--columns",
                            paramLabel = "KEY=HEADING",
                            split = ",",
                            description = "Headings of that table that are of another name, such as width_ft=SWATH.")
                    @Nullable
                    Map<String, String> columns,
            @Option(names = "--task", paramLabel = "NAME", description = "Which task, where the file holds several.")
                    @Nullable
                    String task,
            @Option(names = "--sure", paramLabel = "KEYS", description = "What was asked back and is so; all for all.")
                    @Nullable
                    String sure,
            @Option(names = "--who", paramLabel = "NAME", description = "Who writes it down; else the applicator.")
                    @Nullable
                    String who,
            @Option(names = "--json", description = JSON) boolean json) {
        Map<String, String> typed = typed(pairs, sure);
        try (Book book = Book.open(file)) {
            Season season = season(book, file);
            Map<String, String> boxes = new LinkedHashMap<>();
            if (card) {
                boxes.putAll(card(book, season, typed));
            }
            if (machine != null) {
                MachineRecord found = machine(book, season, typed, machine, columns == null ? Map.of() : columns, task);
                found.notes().forEach(note -> screen.complain("Mind: " + note));
                boxes = found.over(boxes);
            }
            boxes.putAll(typed);
            RecordEntry entry = ready(RecordEntry.read(season, boxes, List.of(), Instant.now()), "written down");
            String by = who == null ? boxes.get("applicator") : who;
            KeptRecord kept = book.record(
                    Objects.requireNonNull(entry.record()), new By(by, "", By.Way.COMMAND, null), Instant.now());
            said(json, "Written down. ", season(book, file), kept);
        }
        return Exit.GOOD;
    }

    @Command(name = "correct", description = "Writes a record down in the place of a wrong one; the wrong one stays.")
    int correct(
            @Parameters(index = "0", paramLabel = "NUMBER", description = "The wrong record.") int number,
            @Parameters(index = "1..*", paramLabel = "KEY=VALUE", description = "What is otherwise.") @Nullable
                    List<String> pairs,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--sure", paramLabel = "KEYS", description = "What was asked back and is so; all for all.")
                    @Nullable
                    String sure,
            @Option(names = "--who", paramLabel = "NAME", description = "Who corrects it.") @Nullable String who,
            @Option(names = "--why", paramLabel = "TEXT", description = "What was wrong.") @Nullable String why,
            @Option(names = "--json", description = JSON) boolean json) {
        StrikeEntry said = said(who, why, "corrected");
        try (Book book = Book.open(file)) {
            Season season = season(book, file);
            KeptRecord wrong = one(book, number);
            Map<String, String> boxes = RecordStart.of(wrong);
            boxes.putAll(typed(pairs, sure));
            List<Done> lines = wrong.record().lines();
            RecordEntry entry = ready(RecordEntry.read(season, boxes, lines, Instant.now()), "corrected");
            KeptRecord kept = book.correct(
                    number,
                    Objects.requireNonNull(entry.record()),
                    new By(said.who(), said.why(), By.Way.COMMAND, null),
                    Instant.now());
            said(json, "Corrected. ", season(book, file), kept);
        }
        return Exit.GOOD;
    }

    @Command(name = "void", description = "Says that a record never was so; it stays and no longer counts.")
    int voided(
            @Parameters(paramLabel = "NUMBER", description = "The record.") int number,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--who", paramLabel = "NAME", description = "Who says so.") @Nullable String who,
            @Option(names = "--why", paramLabel = "TEXT", description = "Why.") @Nullable String why,
            @Option(names = "--json", description = JSON) boolean json) {
        StrikeEntry said = said(who, why, "voided");
        try (Book book = Book.open(file)) {
            one(book, number);
            KeptRecord kept =
                    book.voidRecord(number, new By(said.who(), said.why(), By.Way.COMMAND, null), Instant.now());
            said(json, "Void. ", season(book, file), kept);
        }
        return Exit.GOOD;
    }

    @Command(name = "export", description = "Writes records for an inspector: a name that ends in .csv, .xlsx or .pdf.")
    int export(
            @Parameters(paramLabel = "FILE", description = "The file to write.") Path out,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Mixin Which which) {
        String name = out.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".csv") && !name.endsWith(".xlsx") && !name.endsWith(".pdf")) {
            throw new BadInputException(
                    "The file's name is '" + out + "'; expected one that ends in .csv, .xlsx or .pdf.");
        }
        try (Book book = Book.open(file)) {
            List<KeptRecord> records = book.records();
            RecordFilter filter = which.filter(records, book.latestSeason());
            RecordExport export = new RecordExport(
                    season(book, file),
                    filter.in(records),
                    filter.words(),
                    book.head().text(),
                    LocalDate.now(ZoneId.systemDefault()));
            byte[] content = name.endsWith(".csv")
                    ? RecordSheets.csv(export)
                    : name.endsWith(".xlsx") ? RecordSheets.xlsx(export) : RecordPaper.pdf(export);
            WholeFile.write(out, to -> to.write(content));
            screen.say((export.records().size() == 1
                            ? "1 record"
                            : export.records().size() + " records") + " written to " + out + ". Head of the record: "
                    + export.head());
        }
        return Exit.GOOD;
    }

    private void said(boolean json, String first, Season season, KeptRecord kept) {
        RecordAnswer answer = RecordAnswer.of(season, kept);
        screen.say(json ? Json.of(answer) : first + RecordWords.one(answer, kept));
    }

    private static StrikeEntry said(@Nullable String who, @Nullable String why, String what) {
        StrikeEntry entry = StrikeEntry.read(
                Map.of("who", Objects.requireNonNullElse(who, ""), "why", Objects.requireNonNullElse(why, "")));
        if (!entry.fault().isEmpty()) {
            throw new BadInputException("The record was not " + what + ". " + entry.fault());
        }
        return entry;
    }

    private static RecordEntry ready(RecordEntry entry, String what) {
        if (!entry.faults().isEmpty()) {
            throw new BadInputException("The record was not " + what + ". " + entry.complaint());
        }
        if (!entry.ready()) {
            throw new BadInputException("The record was not " + what + " yet; asked back: " + entry.complaint()
                    + " Where it is so, add --sure "
                    + String.join(
                            ",",
                            entry.questions().stream()
                                    .map(one -> one.key())
                                    .distinct()
                                    .toList())
                    + ".");
        }
        return entry;
    }

    private static MachineRecord machine(
            Book book,
            Season season,
            Map<String, String> typed,
            Path file,
            Map<String, String> columns,
            @Nullable String task) {
        Field field = FromBook.fields(season, List.of(typed.getOrDefault(RecordEntry.FIELD, "")))
                .get(0);
        SprayTrip trip = null;
        if (typed.containsKey(RecordEntry.PASS)) {
            try {
                trip = Decided.trip(
                        season,
                        field,
                        book.choices(season.year()),
                        typed.get(RecordEntry.PROGRAM),
                        Decided.passNumber(typed.get(RecordEntry.PASS)),
                        false);
            } catch (IllegalArgumentException fault) {
                throw new BadInputException(String.valueOf(fault.getMessage()));
            }
        }
        List<MachineWork> works;
        try (ApartReader reader = new ApartReader()) {
            works = reader.machineWork(file, columns).works();
        }
        List<MachineWork> meant = works.stream()
                .filter(one -> task == null || one.task().equals(task))
                .toList();
        if (meant.size() != 1) {
            throw new BadInputException(file.getFileName() + " holds "
                    + (meant.isEmpty() ? "no task of that name" : meant.size() + " tasks") + "; expected one of "
                    + works.stream().map(MachineWork::task).distinct().collect(Collectors.joining(", "))
                    + ", named with --task.");
        }
        return MachineRecord.of(season, field, trip, meant.get(0));
    }

    private static Map<String, String> card(Book book, Season season, Map<String, String> typed) {
        String name = typed.getOrDefault(RecordEntry.FIELD, "");
        Field field = FromBook.fields(season, List.of(name)).get(0);
        try {
            SprayTrip trip = Decided.trip(
                    season,
                    field,
                    book.choices(season.year()),
                    typed.get(RecordEntry.PROGRAM),
                    Decided.passNumber(typed.get(RecordEntry.PASS)),
                    false);
            return RecordStart.of(
                    season, trip, LoadCards.of(season, trip, null), LocalDate.now(ZoneId.systemDefault()));
        } catch (IllegalArgumentException fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
    }

    private static Map<String, String> typed(@Nullable List<String> pairs, @Nullable String sure) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String pair : pairs == null ? List.<String>of() : pairs) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new BadInputException("Found '" + pair + "'; expected KEY=VALUE, such as acres=60.");
            }
            String key = pair.substring(0, equals).strip().replace('-', '_').toLowerCase(Locale.ROOT);
            if (typed.put(key, pair.substring(equals + 1)) != null) {
                throw new BadInputException("'" + key + "' is given twice.");
            }
        }
        if (sure != null) {
            typed.put(RecordEntry.SURE, sure);
        }
        return typed;
    }

    private static KeptRecord one(Book book, int number) {
        return book.records().stream()
                .filter(record -> record.number() == number)
                .findFirst()
                .orElseThrow(() -> new BadInputException("There is no record " + number + "."));
    }

    private static Season season(Book book, Path file) {
        return book.latestSeason()
                .orElseThrow(() -> new BadInputException("The book " + file + " holds no season yet."));
    }
}
