package plumbrow.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Optional;

/**
 * Where the details of an unforeseen fault go, once, so that no person has to read them on the screen: the file named by
 * the system property {@code plumbrow.log}, else {@code .plumbrow/plumbrow.log} in the person's home.
 */
public final class FaultFile {
    private FaultFile() {}

    /** Adds a fault to the file; empty where even that was not possible. */
    public static Optional<Path> add(String what, Throwable fault) {
        StringWriter details = new StringWriter();
        fault.printStackTrace(new PrintWriter(details, true));
        return addText(what + "\n" + details);
    }

    static Optional<Path> addText(String text) {
        Path file = file();
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Files.writeString(
                    file,
                    Clock.systemUTC().instant() + " " + text.stripTrailing() + "\n",
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
            return Optional.of(file);
        } catch (IOException unwritable) {
            return Optional.empty();
        }
    }

    private static Path file() {
        String named = System.getProperty("plumbrow.log", "");
        return named.isEmpty()
                ? Path.of(System.getProperty("user.home", "."), ".plumbrow", "plumbrow.log")
                : Path.of(named);
    }
}
