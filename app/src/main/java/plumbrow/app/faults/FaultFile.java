package plumbrow.app.faults;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Optional;

/**
 * Where the details of an unforeseen fault go, once, so that no person has to read them on the screen: the file named by
 * the system property {@code plumbrow.log}, else {@code .plumbrow/plumbrow.log} in the person's home.
 *
 * <p>It can't fill a disk: a full file is put aside under a number, the oldest of those is given up, and one entry has an
 * end.
 */
public final class FaultFile {
    /** A file that is longer than this is put aside before the next entry. */
    static final long FULL_BYTES = 1L << 20;

    /** Files put aside that are kept: {@code plumbrow.log.1} is the latest of them. */
    static final int KEPT = 3;

    /** What is longer is cut off. */
    static final int LONGEST_ENTRY = 20_000;

    private FaultFile() {}

    /** Adds a fault to the file; empty where even that was not possible. */
    public static Optional<Path> add(String what, Throwable fault) {
        StringWriter details = new StringWriter();
        fault.printStackTrace(new PrintWriter(details, true));
        return addText(what + "\n" + details);
    }

    static Optional<Path> addText(String text) {
        return addText(file(), text);
    }

    static synchronized Optional<Path> addText(Path file, String text) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            if (Files.exists(file) && Files.size(file) >= FULL_BYTES) {
                putAside(file);
            }
            Files.writeString(
                    file,
                    Clock.systemUTC().instant() + " " + cut(text.stripTrailing()) + "\n",
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
            return Optional.of(file);
        } catch (IOException unwritable) {
            return Optional.empty();
        }
    }

    private static String cut(String text) {
        return text.length() <= LONGEST_ENTRY
                ? text
                : text.substring(0, LONGEST_ENTRY) + "\n… " + (text.length() - LONGEST_ENTRY) + " more signs cut off";
    }

    private static void putAside(Path file) throws IOException {
        for (int number = KEPT; number > 1; number--) {
            Path newer = aside(file, number - 1);
            if (Files.exists(newer)) {
                Files.move(newer, aside(file, number), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.move(file, aside(file, 1), StandardCopyOption.REPLACE_EXISTING);
    }

    private static Path aside(Path file, int number) {
        return file.resolveSibling(file.getFileName() + "." + number);
    }

    static Path file() {
        String named = System.getProperty("plumbrow.log", "");
        return named.isEmpty()
                ? Path.of(System.getProperty("user.home", "."), ".plumbrow", "plumbrow.log")
                : Path.of(named);
    }
}
