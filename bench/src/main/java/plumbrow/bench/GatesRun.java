package plumbrow.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/** Times all gates over large farms, one program of ten passes a field, and writes the section of the results. */
public final class GatesRun {
    private static final double TARGET_S = 20;
    private static final int ROUNDS = 5;

    private GatesRun() {}

    /** Runs it all; the one argument is the file to write the section to. */
    public static void main(String[] arguments) throws IOException {
        StringBuilder rows = new StringBuilder("""
                | fields | passes | findings | median s | lowest s | highest s |
                |--:|--:|--:|--:|--:|--:|
                """);
        time(1_000, new StringBuilder());
        time(1_000, rows);
        double fewer = time(5_000, rows);
        double all = time(10_000, rows);
        String section = rows
                + String.format(
                        Locale.ROOT,
                        "%n- Target: 10,000 fields × 10 passes × %d gates on two threads in less than %.0f s: **%s** (%.2f s).%n"
                                + "- 10,000 fields instead of 5,000: %.2f times the time.%n",
                        Gates.all().size(),
                        TARGET_S,
                        all < TARGET_S ? "met" : "missed",
                        all,
                        all / fewer);
        Files.writeString(Path.of(arguments[0]), section);
    }

    /** The median of rounds [s]; each round looks the season's rows up anew. */
    private static double time(int fields, StringBuilder rows) {
        Season season = BenchSeason.large(fields);
        double[] seconds = new double[ROUNDS];
        long findings = 0;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            findings = findings(season);
            seconds[round] = (System.nanoTime() - start) / 1e9;
        }
        Arrays.sort(seconds);
        rows.append(String.format(
                Locale.ROOT,
                "| %,d | 10 | %,d | %.2f | %.2f | %.2f |%n",
                fields,
                findings,
                seconds[ROUNDS / 2],
                seconds[0],
                seconds[ROUNDS - 1]));
        return seconds[ROUNDS / 2];
    }

    /** All findings, on the threads of the machine. */
    private static long findings(Season season) {
        Gates gates = Gates.of(season);
        List<Field> fields = season.fields();
        List<Program> programs = season.programs();
        return IntStream.range(0, fields.size())
                .parallel()
                .mapToLong(i -> gates.check(fields.get(i), programs.get(i)).size())
                .sum();
    }
}
