package plumbrow.documents.ocr;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.OpticalReader;
import plumbrow.documents.paper.OpticalWord;
import plumbrow.documents.paper.PaperTrouble;

/**
 * The program tesseract (version 4 or 5, English) as a process for each page: the picture goes in as PGM on its input, words with
 * boxes and confidences come out as tab-separated lines. It writes no file.
 */
public class Tesseract implements OpticalReader {
    /** How to get it. */
    public static final String INSTALL =
            "Scanned pages are read where the program tesseract is installed: on Debian or Ubuntu “sudo apt-get install"
                    + " tesseract-ocr”, on Fedora “sudo dnf install tesseract”, on macOS “brew install tesseract”, on Windows the"
                    + " installer from the project's page. Then take the file in again; until then somebody has to type what it"
                    + " says.";

    private static final Duration LONGEST = Duration.ofSeconds(25);
    private static final int MOST_BYTES = 8 << 20;

    private final @Nullable Path program;
    private final Duration longest;

    public Tesseract() {
        this(find().orElse(null), LONGEST);
    }

    Tesseract(@Nullable Path program, Duration longest) {
        this.program = program;
        this.longest = longest;
    }

    /** Where it is installed on this machine; empty where it isn't. */
    public static Optional<Path> find() {
        String path = System.getenv("PATH");
        return Stream.of((path == null ? "" : path).split(java.io.File.pathSeparator, -1))
                .filter(folder -> !folder.isEmpty())
                .flatMap(folder -> Stream.of("tesseract", "tesseract.exe").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    @Override
    public boolean ready() {
        return program != null;
    }

    @Override
    public String lacking() {
        return program == null ? INSTALL : "";
    }

    @Override
    public void page(int number) {
        // Nobody waits.
    }

    @Override
    public List<OpticalWord> words(BufferedImage page, int dotsPerInch) {
        if (program == null) {
            throw new PaperTrouble(INSTALL);
        }
        try {
            ProcessBuilder builder = new ProcessBuilder(
                            program.toString(),
                            "stdin",
                            "stdout",
                            "--dpi",
                            String.valueOf(dotsPerInch),
                            "-l",
                            "eng",
                            "tsv")
                    .redirectError(ProcessBuilder.Redirect.DISCARD);
            builder.environment().put("OMP_THREAD_LIMIT", "1");
            return asked(builder.start(), page);
        } catch (IOException refused) {
            throw new PaperTrouble("The program tesseract, which reads scanned pages, did not start.", refused);
        }
    }

    private List<OpticalWord> asked(Process process, BufferedImage page) {
        AtomicBoolean late = new AtomicBoolean();
        Thread clock = new Thread(() -> {
            try {
                if (!process.waitFor(longest.toMillis(), TimeUnit.MILLISECONDS)) {
                    late.set(true);
                    process.destroyForcibly();
                }
            } catch (InterruptedException done) {
                Thread.currentThread().interrupt();
            }
        });
        clock.setDaemon(true);
        clock.start();
        try (InputStream from = process.getInputStream()) {
            try (OutputStream to = new BufferedOutputStream(process.getOutputStream())) {
                write(page, to);
            } catch (IOException closed) {
                // It ended before it had read all: what it says, or that it says nothing, is judged below.
            }
            byte[] said = from.readNBytes(MOST_BYTES);
            if (said.length == MOST_BYTES || !process.waitFor(longest.toMillis(), TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
            }
            if (late.get() || process.exitValue() != 0) {
                throw new PaperTrouble(
                        late.get()
                                ? "reading took longer than " + longest.toSeconds() + " seconds"
                                : "tesseract could make nothing of it (it needs its English data, package"
                                        + " tesseract-ocr-eng)");
            }
            return TesseractLines.read(new String(said, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new PaperTrouble(
                    late.get() ? "reading took longer than " + longest.toSeconds() + " seconds" : "tesseract broke off",
                    broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new PaperTrouble("reading was stopped", stopped);
        } finally {
            process.destroyForcibly();
            clock.interrupt();
        }
    }

    /** As a portable grey map: a line of text and a byte for each dot. */
    private static void write(BufferedImage page, OutputStream to) throws IOException {
        to.write(("P5\n" + page.getWidth() + " " + page.getHeight() + "\n255\n").getBytes(StandardCharsets.US_ASCII));
        Raster dots = page.getRaster();
        int[] row = new int[page.getWidth()];
        byte[] bytes = new byte[page.getWidth()];
        for (int y = 0; y < page.getHeight(); y++) {
            dots.getSamples(0, y, page.getWidth(), 1, 0, row);
            for (int x = 0; x < row.length; x++) {
                bytes[x] = (byte) row[x];
            }
            to.write(bytes);
        }
    }
}
