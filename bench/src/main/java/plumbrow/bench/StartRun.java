package plumbrow.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Starts the desk and an empty web application in turn, both as extracted jars with an archive of their classes made the
 * same way, and times each from the spawn of java to its first page.
 */
public final class StartRun {
    private static final double TARGET = 1.5;
    private static final int WARM_UP_ROUNDS = 2;
    private static final int ROUNDS = 11;
    private static final List<String> FLAGS = List.of("-Xlog:disable", "-Xlog:all=error:stderr", "-Xmx2g");
    private static final String QUICK_COMPILER = "-XX:TieredStopAtLevel=1";

    private final String java;
    private final Path work;

    private StartRun(String java, Path work) {
        this.java = java;
        this.work = work;
    }

    /**
     * Runs it; arguments: java, the desk's extracted jar, a book, the empty application's extracted jar, the launcher, a
     * folder to work in, the file to write the section to.
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        StartRun run = new StartRun(arguments[0], Path.of(arguments[5]));
        List<String> desk = List.of(arguments[1], "serve", "--book", arguments[2], "--port", Starter.PORT);
        List<String> empty = List.of(arguments[3], "--server.address=127.0.0.1", "--server.port=" + Starter.PORT);
        Starter launched = new Starter(
                "desk, by its launcher",
                Stream.concat(Stream.of(arguments[4]), desk.stream().skip(1)).toList(),
                "/");
        Starter answered = new Starter(
                "desk, by its launcher, until the whole season is weighed", launched.command(), "/api/advice");
        run.archive("desk", desk);
        run.archive("empty", empty);
        List<Starter> all = List.of(
                run.shared("empty", List.of(QUICK_COMPILER), empty),
                run.shared("desk", List.of(QUICK_COMPILER), desk),
                run.shared("empty", List.of(), empty),
                run.shared("desk", List.of(), desk),
                launched,
                answered);
        Files.writeString(Path.of(arguments[6]), section(inTurn(all)));
    }

    /** One run that leaves an archive of every class it used, up to and with the first page. */
    private void archive(String name, List<String> application) throws IOException, InterruptedException {
        Path file = work.resolve(name + ".jsa").toAbsolutePath();
        Files.deleteIfExists(file);
        starter(name, List.of("-XX:ArchiveClassesAtExit=" + file), application).startMs();
        if (!Files.exists(file)) {
            throw new IOException("No archive was made for " + name + ".");
        }
    }

    private Starter shared(String name, List<String> flags, List<String> application) {
        List<String> all = new ArrayList<>(flags);
        all.add("-XX:SharedArchiveFile=" + work.resolve(name + ".jsa").toAbsolutePath());
        String how = flags.isEmpty() ? "" : ", " + String.join(" ", flags);
        return starter(name + how, all, application);
    }

    private Starter starter(String name, List<String> flags, List<String> application) {
        List<String> command = new ArrayList<>();
        command.add(java);
        command.addAll(FLAGS);
        command.addAll(flags);
        command.add("-jar");
        command.addAll(application);
        return new Starter(name, command, "/");
    }

    private static Map<String, Times> inTurn(List<Starter> starters) throws IOException, InterruptedException {
        List<List<Double>> times = new ArrayList<>();
        starters.forEach(starter -> times.add(new ArrayList<>()));
        for (int round = 0; round < WARM_UP_ROUNDS + ROUNDS; round++) {
            for (int i = 0; i < starters.size(); i++) {
                double ms = starters.get(i).startMs();
                if (round >= WARM_UP_ROUNDS) {
                    times.get(i).add(ms);
                }
            }
        }
        Map<String, Times> byName = new LinkedHashMap<>();
        for (int i = 0; i < starters.size(); i++) {
            byName.put(starters.get(i).name(), Times.of(times.get(i)));
        }
        return byName;
    }

    private static String section(Map<String, Times> times) {
        StringBuilder text =
                new StringBuilder("| application | median ms | lowest ms | highest ms |\n|---|--:|--:|--:|\n");
        times.forEach((name, time) -> text.append(String.format(
                Locale.ROOT, "| %s | %.0f | %.0f | %.0f |%n", name, time.median(), time.lowest(), time.highest())));
        text.append('\n');
        text.append(ratio(times, "desk, " + QUICK_COMPILER, "empty, " + QUICK_COMPILER));
        text.append(ratio(times, "desk", "empty"));
        text.append(ratio(times, "desk, by its launcher", "empty"));
        return text.toString();
    }

    private static String ratio(Map<String, Times> times, String ours, String theirs) {
        Times our = times.getOrDefault(ours, Times.NONE);
        Times their = times.getOrDefault(theirs, Times.NONE);
        double ratio = our.median() / their.median();
        return String.format(
                Locale.ROOT,
                "- %s against %s: **%.2f** times by the medians, %.2f by the lowest; target at most %.1f: %s.%n",
                ours,
                theirs,
                ratio,
                our.lowest() / their.lowest(),
                TARGET,
                ratio <= TARGET ? "met" : "missed");
    }
}
