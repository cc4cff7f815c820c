package plumbrow.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;
import plumbrow.advice.season.Season;

/** Times whole weighings and writes the section of the results. */
public final class WeighRun {
    private static final double TARGET_MS = 3000;

    private final StringBuilder rows = new StringBuilder();

    private WeighRun() {}

    /** Runs it all; the one argument is the file to write the section to. */
    public static void main(String[] arguments) throws RunnerException, IOException {
        WeighRun run = new WeighRun();
        Timing two = run.time(14, 10_000, 2);
        Timing one = run.time(14, 10_000, 1);
        Timing fewDraws = run.time(14, 1_000, 2);
        Timing manyDraws = run.time(14, 100_000, 2);
        Timing fewFields = run.time(7, 10_000, 2);
        Timing manyFields = run.time(28, 10_000, 2);
        String section = "| fields | courses | draws | threads | median ms | lowest ms | highest ms |\n"
                + "|--:|--:|--:|--:|--:|--:|--:|\n"
                + run.rows
                + "\n"
                + target(two)
                + growth("One thread instead of two", one, two)
                + growth("10,000 draws instead of 1,000", two, fewDraws)
                + growth("100,000 draws instead of 10,000", manyDraws, two)
                + growth("14 fields instead of 7", two, fewFields)
                + growth("28 fields instead of 14", manyFields, two);
        Files.writeString(Path.of(arguments[0]), section);
    }

    private static String target(Timing two) {
        return String.format(
                Locale.ROOT,
                "- Target: 14 fields × 5 courses × 10,000 draws on two threads in less than %,.0f ms: **%s** (%,.0f ms).%n",
                TARGET_MS,
                two.medianMs() < TARGET_MS ? "met" : "missed",
                two.medianMs());
    }

    private static String growth(String what, Timing more, Timing less) {
        return String.format(
                Locale.ROOT,
                "- %s: %.2f times the time by the medians, %.2f by the lowest.%n",
                what,
                more.medianMs() / less.medianMs(),
                more.lowestMs() / less.lowestMs());
    }

    private Timing time(int fields, int draws, int threads) throws RunnerException {
        int rounds = draws > 10_000 ? 5 : 15;
        RunResult result = new Runner(new OptionsBuilder()
                        .include("WeighingBenchmark")
                        .param("fields", String.valueOf(fields))
                        .param("draws", String.valueOf(draws))
                        .param("threads", String.valueOf(threads))
                        .warmupIterations(draws > 10_000 ? 3 : 8)
                        .measurementIterations(rounds)
                        .forks(2)
                        .jvmArgs("-Xmx1g")
                        .build())
                .runSingle();
        Statistics all = result.getPrimaryResult().getStatistics();
        Timing timing = new Timing(all.getPercentile(50), all.getMin(), all.getMax());
        Season season = BenchSeason.of(fields);
        rows.append(String.format(
                Locale.ROOT,
                "| %d | %d | %,d | %d | %.0f | %.0f | %.0f |%n",
                fields,
                season.courses().size(),
                draws,
                threads,
                timing.medianMs(),
                timing.lowestMs(),
                timing.highestMs()));
        return timing;
    }

    private record Timing(double medianMs, double lowestMs, double highestMs) {}
}
