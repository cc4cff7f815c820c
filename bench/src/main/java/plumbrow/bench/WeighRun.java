package plumbrow.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;

/** Times whole weighings and writes the section of the results. */
public final class WeighRun {
    private static final double TARGET_MS = 3000;

    private final StringBuilder rows = new StringBuilder();

    private WeighRun() {}

    /** Runs it all; the one argument is the file to write the section to. */
    public static void main(String[] arguments) throws RunnerException, IOException {
        WeighRun run = new WeighRun();
        Weighings two = run.time(14, 10_000, 2);
        Weighings one = run.time(14, 10_000, 1);
        Weighings fewDraws = run.time(14, 1_000, 2);
        Weighings manyDraws = run.time(14, 100_000, 2);
        Weighings fewFields = run.time(7, 10_000, 2);
        Weighings manyFields = run.time(28, 10_000, 2);
        String section = "| fields | programs | draws | threads | median ms | lowest ms | highest ms | processor ms |\n"
                + "|--:|--:|--:|--:|--:|--:|--:|--:|\n"
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

    private static String target(Weighings two) {
        return String.format(
                Locale.ROOT,
                "- Target: 14 fields × 5 programs × 10,000 draws on two threads in less than %,.0f ms: **%s** (%,.0f ms).%n",
                TARGET_MS,
                two.wall().median() < TARGET_MS ? "met" : "missed",
                two.wall().median());
    }

    private static String growth(String what, Weighings more, Weighings less) {
        return String.format(
                Locale.ROOT,
                "- %s: %.2f times the time by the medians, %.2f by the lowest, %.2f by the processor.%n",
                what,
                more.wall().median() / less.wall().median(),
                more.wall().lowest() / less.wall().lowest(),
                more.processorMs() / less.processorMs());
    }

    private Weighings time(int fields, int draws, int threads) throws RunnerException {
        boolean large = draws > 10_000;
        RunResult result = new Runner(new OptionsBuilder()
                        .include("WeighingBenchmark")
                        .param("fields", String.valueOf(fields))
                        .param("draws", String.valueOf(draws))
                        .param("threads", String.valueOf(threads))
                        .warmupIterations(large ? 4 : 15)
                        .measurementIterations(large ? 5 : 15)
                        .forks(2)
                        .jvmArgs("-Xmx1g")
                        .addProfiler(ProcessorTime.class)
                        .build())
                .runSingle();
        Result<?> processor =
                Objects.requireNonNull(result.getSecondaryResults().get(ProcessorTime.LABEL));
        Statistics wall = result.getPrimaryResult().getStatistics();
        Weighings weighings = new Weighings(
                new Times(wall.getPercentile(50), wall.getMin(), wall.getMax()),
                processor.getStatistics().getPercentile(50));
        rows.append(String.format(
                Locale.ROOT,
                "| %d | %d | %,d | %d | %.0f | %.0f | %.0f | %.0f |%n",
                fields,
                BenchSeason.of(fields).programs().size(),
                draws,
                threads,
                weighings.wall().median(),
                weighings.wall().lowest(),
                weighings.wall().highest(),
                weighings.processorMs()));
        return weighings;
    }

    private record Weighings(Times wall, double processorMs) {}
}
