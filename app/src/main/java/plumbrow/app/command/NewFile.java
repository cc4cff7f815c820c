package plumbrow.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The name under which a command may write something new. */
final class NewFile {
    private NewFile() {}

    /** Refuses a name that is taken, so that nobody's workbook is written over; an empty folder is free. */
    static void demandFree(Path file) {
        if (Files.exists(file) && !emptyFolder(file)) {
            throw new BadInputException(file + " is there already; give a name that is not taken.");
        }
    }

    private static boolean emptyFolder(Path file) {
        if (!Files.isDirectory(file)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(file)) {
            return inside.findAny().isEmpty();
        } catch (IOException unreadable) {
            return false;
        }
    }
}
