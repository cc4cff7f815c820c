package plumbrow.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Locale;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.WeighingOptions;

/** Times whole weighings of fields whose weeds are followed day by day: by fields, draws and weeds. */
public final class FollowedRun {
    private static final int WARM_UP_ROUNDS = 4;
    private static final int ROUNDS = 7;
    private static final double FIELD_TARGET_MS = 1000;
    private static final double FARM_TARGET_MS = 20_000;

    private final StringBuilder rows = new StringBuilder();

    private FollowedRun() {}

    /** Runs it all; the one argument is the file to which the section is added. */
    public static void main(String[] arguments) throws IOException {
        FollowedRun run = new FollowedRun();
        Round one = run.time(1, 4, 10_000, 1, ROUNDS);
        run.time(1, 4, 1_000, 1, ROUNDS);
        run.time(1, 4, 100_000, 1, 3);
        run.time(1, 2, 10_000, 1, ROUNDS);
        run.time(1, 1, 10_000, 1, ROUNDS);
        run.time(15, 4, 10_000, 2, 3);
        run.time(30, 4, 10_000, 2, 3);
        Round farm = run.time(60, 4, 10_000, 2, 3);
        String text =
                "\nWhole weighings, weeds followed day by day, six programs a field: draws, gates, break-evens and worth"
                        + " of knowing in it.\n\n"
                        + "| fields | weeds | draws | threads | wall ms | processor ms |\n|--:|--:|--:|--:|--:|--:|\n"
                        + run.rows
                        + "\n"
                        + target("One field, 4 weeds, 10,000 draws on one thread", one, FIELD_TARGET_MS)
                        + target("60 fields on two threads", farm, FARM_TARGET_MS);
        Files.writeString(Path.of(arguments[0]), text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private static String target(String what, Round round, double ms) {
        return String.format(
                Locale.ROOT,
                "- %s in at most %,.0f ms: **%s** (%,.0f ms).%n",
                what,
                ms,
                round.wallMs() <= ms ? "met" : "missed",
                round.wallMs());
    }

    private Round time(int fields, int weeds, int draws, int threads, int rounds) {
        Season season = FollowedSeason.of(fields, weeds);
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(draws).withThreads(threads);
        for (int i = 0; i < (fields == 1 ? WARM_UP_ROUNDS : 1); i++) {
            once(season, options);
        }
        Round[] all = new Round[rounds];
        Arrays.setAll(all, i -> once(season, options));
        double wall = median(Arrays.stream(all).mapToDouble(Round::wallMs).toArray());
        double processor =
                median(Arrays.stream(all).mapToDouble(Round::processorMs).toArray());
        rows.append(String.format(
                Locale.ROOT, "| %d | %d | %,d | %d | %.0f | %.0f |%n", fields, weeds, draws, threads, wall, processor));
        return new Round(wall, processor);
    }

    private static Round once(Season season, WeighingOptions options) {
        com.sun.management.OperatingSystemMXBean system =
                (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long processor = system.getProcessCpuTime();
        long wall = System.nanoTime();
        Adviser.advise(season, options, (done, all) -> {});
        return new Round((System.nanoTime() - wall) / 1e6, (system.getProcessCpuTime() - processor) / 1e6);
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }

    private record Round(double wallMs, double processorMs) {}
}
