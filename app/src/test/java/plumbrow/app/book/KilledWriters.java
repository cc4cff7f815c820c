package plumbrow.app.book;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/**
 * Programs of their own that write into one book at once and are killed in the midst of it (SIGKILL, where the system has it).
 * Each says on a line of its own what it tries and what was answered with done, so that afterwards the book can be held against
 * every answer.
 */
final class KilledWriters {
    static final int YEAR = 2027;
    private static final String FIELD = "North 80";
    private static final String END = " .";
    private static final Pattern SPOKEN = Pattern.compile("(try|done|refused|failed) [a-z]+ [0-9-]+ \\.");

    private final Path book;
    private final int writers;
    private final long seed;

    KilledWriters(Path book, int writers, long seed) {
        this.book = book;
        this.writers = writers;
        this.seed = seed;
    }

    /**
     * What one writer said.
     *
     * @param lines "try keep k-1-5", "done keep k-1-5", "refused import i-0-2", in order
     */
    record Said(List<String> lines, int kills) {
        long done() {
            return lines.stream().filter(line -> line.startsWith("done")).count();
        }
    }

    /** Lets the writers go on, killed and started again, until each was answered so often with done. */
    List<Said> run(int doneEach) throws Exception {
        List<Said> said = new ArrayList<>();
        List<Thread> threads = new ArrayList<>();
        List<Exception> faults = new ArrayList<>();
        for (int writer = 0; writer < writers; writer++) {
            int number = writer;
            Thread thread = new Thread(() -> {
                try {
                    Said one = written(number, doneEach);
                    synchronized (said) {
                        said.add(one);
                    }
                } catch (IOException | InterruptedException fault) {
                    synchronized (said) {
                        faults.add(fault);
                    }
                }
            });
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
        for (Exception fault : faults) {
            throw fault;
        }
        return said;
    }

    private Said written(int writer, int doneEach) throws IOException, InterruptedException {
        Random random = new Random(seed * 31 + writer);
        List<String> lines = new ArrayList<>();
        int kills = 0;
        int done = 0;
        for (int life = 0; done < doneEach; life++) {
            int until = Math.min(doneEach - done, 3 + random.nextInt(20));
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-cp",
                            System.getProperty("java.class.path"),
                            KilledWriters.class.getName(),
                            book.toString(),
                            String.valueOf(writer),
                            String.valueOf(life),
                            String.valueOf(random.nextLong()))
                    .redirectErrorStream(true)
                    .start();
            int now = 0;
            String noise = "";
            try (BufferedReader said = process.inputReader()) {
                for (String line = said.readLine(); line != null; line = said.readLine()) {
                    // A line cut off by the kill says nothing, and neither do other voices.
                    if (!SPOKEN.matcher(line).matches()) {
                        noise = line;
                        continue;
                    }
                    lines.add(line.substring(0, line.length() - END.length()));
                    now += line.startsWith("done") ? 1 : 0;
                    if (now == until && process.isAlive()) {
                        // By its handle: the process itself would close what it said, too.
                        process.toHandle().destroyForcibly();
                        kills++;
                        until = -1;
                    }
                }
            }
            process.waitFor();
            if (now == 0) {
                throw new IOException("a writer did nothing: " + noise);
            }
            done += now;
        }
        return new Said(lines, kills);
    }

    /**
     * One writer: goes on until it is killed. It changes the season whole (keep, drop) and row by row (edit, mark), takes its own
     * changes of rows back and forth (undo, redo), logs, and keeps and corrects application records; the first brings seasons in too, as a workbook that was written out does.
     */
    public static void main(String[] arguments) {
        String life = arguments[1] + "-" + arguments[2] + "-";
        new Writer(Book.open(Path.of(arguments[0])), arguments[1].equals("0"), new Random(Long.parseLong(arguments[3])))
                .goOn(life);
    }

    private static final class Writer {
        private final Book book;
        private final boolean imports;
        private final Random random;
        private final List<String> kept = new ArrayList<>();
        private final List<String> rows = new ArrayList<>();
        /** Numbers of changes that stand and may be taken back, undos among them. */
        private final List<Integer> standing = new ArrayList<>();

        private Writer(Book book, boolean imports, Random random) {
            this.book = book;
            this.imports = imports;
            this.random = random;
        }

        private void goOn(String life) {
            for (int number = 0; ; number++) {
                String name = life + number;
                int deed = random.nextInt(20);
                if (deed < 2 && !kept.isEmpty()) {
                    String gone = kept.remove(random.nextInt(kept.size()));
                    told("drop", gone, () -> book.change(season -> without(season, gone)));
                } else if (deed < 4) {
                    told("log", name, () -> book.log(done(name), Instant.EPOCH));
                } else if (deed < 6 && imports) {
                    Season out = book.season(YEAR).orElseThrow();
                    told("import", name, () -> book.bring(with(out, name), Instant.EPOCH, false));
                } else if (deed < 9 && !standing.isEmpty()) {
                    Integer change = standing.remove(random.nextInt(standing.size()));
                    told("back", name, () -> standing.add(book.undo(change, by("back", name))));
                } else if (deed < 11 && !rows.isEmpty()) {
                    String marked = rows.get(random.nextInt(rows.size()));
                    told("mark", name, () -> marked(marked, name));
                } else if (deed < 14) {
                    if (told("edit", name, () -> added(name))) {
                        rows.add(name);
                    }
                } else if (deed > 17) {
                    told("record", name, () -> book.record(record(name), by("record", name), Instant.EPOCH));
                } else if (deed > 15) {
                    told("correct", name, () -> corrected(life.substring(0, life.indexOf('-') + 1), name));
                } else if (told("keep", name, () -> book.change(season -> with(season, name)))) {
                    kept.add(name);
                }
            }
        }

        /** Another record in the place of the last of one's own that counts, if there is one. */
        private void corrected(String own, String name) {
            int wrong = latest(book, own);
            book.correct(wrong, record(name), by("correct", name), Instant.EPOCH);
        }

        private void added(String name) {
            RowChange row = RowChange.add("programs", Map.of("field", FIELD, "program", name, "baseline", "no"));
            book.edit(by("edit", name), List.of(row)).ifPresent(standing::add);
        }

        /** Another note beside a program of one's own, if it is still there. */
        private void marked(String program, String name) {
            SeasonTables tables = SeasonTables.of(book.latestWritten().orElseThrow());
            Sheet<?> programs = Sheets.named("programs").orElseThrow();
            for (int at = 0; at < tables.size(programs); at++) {
                Map<String, String> row = tables.row(programs, at).orElseThrow();
                if (program.equals(row.get("program"))) {
                    Map<String, String> after = new LinkedHashMap<>(row);
                    after.put("note", name);
                    book.edit(by("mark", name), List.of(RowChange.change("programs", at, row, after)))
                            .ifPresent(standing::add);
                    return;
                }
            }
            throw new MeanwhileException("It is not there any more.");
        }
    }

    private static By by(String deed, String name) {
        return new By("writer", deed + " " + name, By.Way.COMMAND, Instant.EPOCH);
    }

    private static boolean told(String deed, String name, Runnable work) {
        System.out.println("try " + deed + " " + name + END);
        try {
            work.run();
            System.out.println("done " + deed + " " + name + END);
            return true;
        } catch (MeanwhileException | EditFaults refused) {
            System.out.println("refused " + deed + " " + name + END);
        } catch (BookException busy) {
            System.out.println("failed " + deed + " " + name + END);
        }
        return false;
    }

    private static Season with(Season season, String name) {
        List<Program> programs = new ArrayList<>(season.programs());
        programs.add(new Program(FIELD, name, false, new RefugePlan(null, null), "", List.of()));
        return season.withPrograms(programs, season.work());
    }

    private static Season without(Season season, String name) {
        return season.withPrograms(
                season.programs().stream()
                        .filter(program -> !program.name().equals(name))
                        .toList(),
                season.work());
    }

    /** The last record of a writer that counts. */
    private static int latest(Book book, String own) {
        return book.records().stream()
                .filter(KeptRecord::counts)
                .filter(record -> record.record()
                        .item(RecordItem.NOTE)
                        .filter(note -> note.startsWith(own))
                        .isPresent())
                .reduce((first, later) -> later)
                .map(KeptRecord::number)
                .orElseThrow(() -> new BookException("no record of this writer yet"));
    }

    private static ApplicationRecord record(String name) {
        return new ApplicationRecord(
                FIELD,
                LocalDate.of(YEAR, 5, 1),
                null,
                null,
                80,
                100,
                List.of(new RecordedProduct(
                        "Stonefly 3G",
                        "00000-1",
                        new Amount(3, FarmUnit.LB),
                        new Amount(240, FarmUnit.LB),
                        Ask.NO,
                        12,
                        null,
                        null,
                        null)),
                Map.of(RecordItem.NOTE, name));
    }

    private static Done done(String name) {
        return new Done(FIELD, LocalDate.of(YEAR, 5, 1), "Stonefly 3G", new Amount(3, FarmUnit.LB), 100, null, name);
    }
}
