package plumbrow.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongFunction;
import plumbrow.advice.weighing.NumpySide;
import plumbrow.advice.weighing.Round;
import plumbrow.science.weedseason.SeasonLoss;
import plumbrow.science.weedseason.WeedSeason;

/** The weed season of one field against the same season in NumPy, round by round in turn, and by draws and weeds alone. */
public final class SeasonDuel {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final double SAME_PCT = 1e-8;
    private static final double TARGET_MS = 1000;
    private static final int WARM_UP_ROUNDS = 5;
    private static final int ROUNDS = 11;
    private static final ToLongFunction<Round> PROCESSOR = Round::processorNs;

    private SeasonDuel() {}

    /** Runs it; arguments: python, script of the other side, a folder for the draws, the file to write the section to. */
    public static void main(String[] arguments) throws IOException {
        StringBuilder text = new StringBuilder(
                "| draws | weeds | engine ms | NumPy ms | times faster | engine wall ms |\n|--:|--:|--:|--:|--:|--:|\n");
        StringBuilder notes = new StringBuilder("\n");
        duel(arguments, 10_000, text, notes);
        for (int[] size : new int[][] {{1_000, 4}, {10_000, 4}, {100_000, 4}, {10_000, 2}, {10_000, 1}}) {
            alone(size[0], size[1], text);
        }
        Files.writeString(Path.of(arguments[3]), text.append(notes).toString());
    }

    private static void duel(String[] arguments, int draws, StringBuilder text, StringBuilder notes)
            throws IOException {
        double[][] columns = SeasonField.columns(draws);
        List<WeedSeason> programs = SeasonField.programs(4);
        Path folder = Path.of(arguments[2]);
        Files.createDirectories(folder);
        write(folder.resolve("celsius.f8"), SeasonField.celsius());
        write(folder.resolve("columns.f8"), columns);
        write(folder.resolve("losses.f8"), losses(programs, columns, draws));
        try (NumpySide numpy = new NumpySide(arguments[0], Path.of(arguments[1]), folder, draws, 1)) {
            if (!(numpy.difference() <= SAME_PCT)) {
                throw new IllegalStateException(
                        "The two sides differ by " + numpy.difference() + " points; nothing was timed.");
            }
            List<Round> ours = new ArrayList<>();
            List<Round> theirs = new ArrayList<>();
            for (int i = 0; i < WARM_UP_ROUNDS + ROUNDS; i++) {
                Round other = numpy.round();
                Round own = round(programs, columns, draws);
                if (i >= WARM_UP_ROUNDS) {
                    theirs.add(other);
                    ours.add(own);
                }
            }
            double own = Round.median(ours, PROCESSOR) / 1e6;
            double other = Round.median(theirs, PROCESSOR) / 1e6;
            double wall = Round.median(ours, Round::wallNs) / 1e6;
            text.append(row(draws, 4, own, String.format(Locale.ROOT, "%.0f | **%.1f**", other, other / own), wall));
            notes.append(String.format(
                    Locale.ROOT,
                    "- %,d draws: largest difference of a loss %.1e points; NumPy %s in blocks of %,d; target: **%s**.%n",
                    draws,
                    numpy.difference(),
                    numpy.version(),
                    numpy.block(),
                    own <= TARGET_MS ? "met" : "missed"));
        }
    }

    private static void alone(int draws, int weeds, StringBuilder text) {
        double[][] columns = SeasonField.columns(draws);
        List<WeedSeason> programs = SeasonField.programs(weeds);
        List<Round> rounds = new ArrayList<>();
        for (int i = 0; i < WARM_UP_ROUNDS; i++) {
            rounds.add(round(programs, columns, draws));
        }
        double wall = Round.median(rounds, Round::wallNs) / 1e6;
        text.append(row(draws, weeds, Round.median(rounds, PROCESSOR) / 1e6, "– | –", wall));
    }

    private static String row(int draws, int weeds, double own, String other, double wall) {
        return String.format(Locale.ROOT, "| %,d | %d | %.0f | %s | %.0f |%n", draws, weeds, own, other, wall);
    }

    private static Round round(List<WeedSeason> programs, double[][] columns, int draws) {
        long wall = System.nanoTime();
        long processor = THREADS.getCurrentThreadCpuTime();
        losses(programs, columns, draws);
        return new Round(System.nanoTime() - wall, THREADS.getCurrentThreadCpuTime() - processor);
    }

    private static double[][] losses(List<WeedSeason> programs, double[][] columns, int draws) {
        return programs.stream()
                .map(program -> SeasonLoss.of(program, columns, draws).lossPct())
                .toArray(double[][]::new);
    }

    private static void write(Path file, double[]... rows) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            for (double[] row : rows) {
                ByteBuffer bytes =
                        ByteBuffer.allocate(row.length * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
                bytes.asDoubleBuffer().put(row);
                out.write(bytes.array());
            }
        }
    }
}
