package plumbrow.advice.weighing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongFunction;
import plumbrow.bench.BenchSeason;

/**
 * The kernel against the same arithmetic in NumPy, round by round in turn, so that whatever else the machine does falls
 * on both.
 */
public final class KernelDuel {
    private static final double SAME_USD = 1e-9;
    private static final double TARGET = 3;
    private static final int WARM_UP_ROUNDS = 15;
    private static final int ROUNDS = 31;
    private static final int DRAWS_PER_ROUND = 1_000_000;

    private final String python;
    private final Path script;
    private final Path folder;
    private final StringBuilder rows = new StringBuilder();
    private final StringBuilder notes = new StringBuilder();
    private double lowestRatio = Double.POSITIVE_INFINITY;

    private KernelDuel(String python, Path script, Path folder) {
        this.python = python;
        this.script = script;
        this.folder = folder;
    }

    /** Runs it; arguments: python, script of the other side, a folder for the draws, the file to write the section to. */
    public static void main(String[] arguments) throws IOException {
        KernelDuel duel = new KernelDuel(arguments[0], Path.of(arguments[1]), Path.of(arguments[2]));
        for (int draws : new int[] {1_000, 10_000, 100_000}) {
            duel.run(draws);
        }
        Files.writeString(Path.of(arguments[3]), duel.section());
    }

    private void run(int draws) throws IOException {
        KernelSide kernel = new KernelSide(BenchSeason.of(1), draws);
        Path here = folder.resolve(String.valueOf(draws));
        kernel.export(here);
        int repeats = DRAWS_PER_ROUND / draws;
        try (NumpySide numpy = new NumpySide(python, script, here, draws, repeats)) {
            if (!(numpy.difference() <= SAME_USD)) {
                throw new IllegalStateException(
                        "The two sides differ by " + numpy.difference() + " $/ac; nothing was timed.");
            }
            List<Round> ours = new ArrayList<>();
            List<Round> theirs = new ArrayList<>();
            for (int i = 0; i < WARM_UP_ROUNDS + ROUNDS; i++) {
                Round other = numpy.round();
                Round own = kernel.round(repeats);
                if (i >= WARM_UP_ROUNDS) {
                    theirs.add(other);
                    ours.add(own);
                }
            }
            row(draws, repeats, ours, theirs);
            note(kernel, numpy, draws);
        }
    }

    private void row(int draws, int repeats, List<Round> ours, List<Round> theirs) {
        ToLongFunction<Round> processor = Round::processorNs;
        double ratio = Round.median(theirs, processor) / Round.median(ours, processor);
        lowestRatio = Math.min(lowestRatio, ratio);
        rows.append(String.format(
                Locale.ROOT,
                "| %,d | %.3f | %.3f | **%.1f** | %.1f | %.3f | %.3f | %.1f |%n",
                draws,
                Round.median(ours, processor) / repeats / 1e6,
                Round.median(theirs, processor) / repeats / 1e6,
                ratio,
                Round.lowest(theirs, processor) / Round.lowest(ours, processor),
                Round.median(ours, Round::wallNs) / repeats / 1e6,
                Round.median(theirs, Round::wallNs) / repeats / 1e6,
                Round.median(theirs, Round::wallNs) / Round.median(ours, Round::wallNs)));
    }

    private void note(KernelSide kernel, NumpySide numpy, int draws) {
        notes.append(String.format(
                Locale.ROOT,
                "- %,d draws: %d inputs, %d programs; largest difference of a margin %.1e $/ac; NumPy %s in blocks of %,d (whole columns: %.2f times as long).%n",
                draws,
                kernel.inputs(),
                kernel.programs(),
                numpy.difference(),
                numpy.version(),
                numpy.block(),
                numpy.wholeColumns()));
    }

    private String section() {
        return "| draws | kernel ms | NumPy ms | times faster | by the lowest | kernel wall ms | NumPy wall ms | by the wall |\n"
                + "|--:|--:|--:|--:|--:|--:|--:|--:|\n"
                + rows
                + "\n"
                + String.format(
                        Locale.ROOT,
                        "- Target: at least %.0f times faster at every size: **%s** (%.1f at the least).%n",
                        TARGET,
                        lowestRatio >= TARGET ? "met" : "missed",
                        lowestRatio)
                + notes;
    }
}
