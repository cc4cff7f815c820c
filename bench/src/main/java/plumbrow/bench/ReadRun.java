package plumbrow.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import plumbrow.documents.apart.ApartReader;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperReader;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.section.Sections;

/** Reads a folder of made sheets and has {@code pdftotext -layout} take the text out of the same files, round by round. */
public final class ReadRun {
    private static final double TARGET = 3;
    private static final int WARM_UP_ROUNDS = 2;
    private static final int ROUNDS = 7;

    private final List<Path> files;
    private final List<byte[]> bytes = new ArrayList<>();
    private final String extractor;
    private int pages;

    private ReadRun(List<Path> files, String extractor) throws IOException {
        this.files = files;
        this.extractor = extractor;
        for (Path file : files) {
            byte[] content = Files.readAllBytes(file);
            bytes.add(content);
            pages += SheetReader.read(content, "made").pages();
        }
    }

    /** Runs it; arguments: a folder of PDFs, the program pdftotext, the file to write the section to. */
    public static void main(String[] arguments) throws IOException, InterruptedException, ExecutionException {
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of(arguments[0]))) {
            files = all.filter(file -> file.toString().endsWith(".pdf"))
                    .sorted()
                    .toList();
        }
        ReadRun run = new ReadRun(files, arguments[1]);
        Files.writeString(Path.of(arguments[2]), run.section());
    }

    private String section() throws IOException, InterruptedException, ExecutionException {
        List<Double> values = new ArrayList<>();
        List<Double> words = new ArrayList<>();
        List<Double> extracted = new ArrayList<>();
        List<Double> started = new ArrayList<>();
        for (int round = -WARM_UP_ROUNDS; round < ROUNDS; round++) {
            double sheet = perPage(() -> bytes.forEach(file -> SheetReader.read(file, "made")));
            double paper = perPage(() ->
                    bytes.forEach(file -> PaperReader.read(file, "made", PaperLimits.USUAL, Sections::isHeading)));
            double text = perPage(() -> files.forEach(file -> spawn(extractor, "-layout", file.toString(), "-")));
            double start = perPage(() -> files.forEach(file -> spawn(extractor, "-v")));
            if (round >= 0) {
                values.add(sheet);
                words.add(paper);
                extracted.add(text);
                started.add(start);
            }
        }
        Times theirs = Times.of(extracted);
        StringBuilder text = new StringBuilder(
                "| ms per page | median | lowest | highest | against pdftotext |\n|---|--:|--:|--:|--:|\n");
        text.append(row("Plumbrow, words and values", Times.of(values), theirs));
        text.append(row("Plumbrow, words with their places", Times.of(words), theirs));
        text.append(row("pdftotext -layout, one process a file", theirs, theirs));
        text.append(row("  of that, only starting it", Times.of(started), theirs));
        text.append(String.format(
                Locale.US,
                "%n- %d sheets, %,d pages. Words and values take %.2f times as long as `pdftotext -layout` (aim: at most %.0f)%s.%n",
                files.size(),
                pages,
                Times.of(values).median() / theirs.median(),
                TARGET,
                String.format(
                        Locale.US,
                        ", and %.2f times when the start of its processes is not counted",
                        Times.of(values).median()
                                / (theirs.median() - Times.of(started).median()))));
        text.append("- Through the reading process, two of them on two threads, from their start: ");
        for (int share = 4; share >= 1; share /= 2) {
            int count = files.size() / share;
            text.append(String.format(Locale.US, "%d sheets %.1f s%s", count, apart(count), share == 1 ? ".\n" : ", "));
        }
        return text.toString();
    }

    private static String row(String name, Times times, Times against) {
        return String.format(
                Locale.US,
                "| %s | %.2f | %.2f | %.2f | %.2f |%n",
                name,
                times.median(),
                times.lowest(),
                times.highest(),
                times.median() / against.median());
    }

    private double perPage(Runnable work) {
        long from = System.nanoTime();
        work.run();
        return (System.nanoTime() - from) / 1e6 / pages;
    }

    private static void spawn(String... command) {
        try {
            new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor();
        } catch (IOException refused) {
            throw new UncheckedIOException(refused);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    /** Seconds for some of the files, half of them in each of two reading processes. */
    private double apart(int count) throws InterruptedException, ExecutionException {
        long from = System.nanoTime();
        ExecutorService two = Executors.newFixedThreadPool(2);
        List<Future<?>> halves = new ArrayList<>();
        for (int half = 0; half < 2; half++) {
            int first = half;
            halves.add(two.submit(() -> {
                try (ApartReader reader = new ApartReader()) {
                    for (int i = first; i < count; i += 2) {
                        reader.sheet(files.get(i));
                    }
                }
            }));
        }
        for (Future<?> half : halves) {
            half.get();
        }
        two.shutdown();
        return (System.nanoTime() - from) / 1e9;
    }
}
