package plumbrow.app.book;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;

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

    /** One writer: goes on until it is killed. The first brings seasons in too, as a workbook that was written out does. */
    public static void main(String[] arguments) {
        Path file = Path.of(arguments[0]);
        int writer = Integer.parseInt(arguments[1]);
        String life = writer + "-" + arguments[2] + "-";
        Random random = new Random(Long.parseLong(arguments[3]));
        List<String> kept = new ArrayList<>();
        Book book = Book.open(file);
        for (int number = 0; ; number++) {
            String name = life + number;
            int deed = random.nextInt(10);
            if (deed < 3 && !kept.isEmpty()) {
                String gone = kept.remove(random.nextInt(kept.size()));
                told("undo", gone, () -> book.change(season -> without(season, gone)));
            } else if (deed < 5) {
                told("log", name, () -> book.log(done(name), Instant.EPOCH));
            } else if (deed < 7 && writer == 0) {
                Season out = book.season(YEAR).orElseThrow();
                told("import", name, () -> book.bring(with(out, name), Instant.EPOCH, false));
            } else if (told("keep", name, () -> book.change(season -> with(season, name)))) {
                kept.add(name);
            }
        }
    }

    private static boolean told(String deed, String name, Runnable work) {
        System.out.println("try " + deed + " " + name + END);
        try {
            work.run();
            System.out.println("done " + deed + " " + name + END);
            return true;
        } catch (MeanwhileException changed) {
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

    private static Done done(String name) {
        return new Done(FIELD, LocalDate.of(YEAR, 5, 1), "Stonefly 3G", new Amount(3, FarmUnit.LB), 100, null, name);
    }
}
