package plumbrow.documents;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file could not be written. The message is one sentence for the person who asked for it. */
public final class FileTrouble extends RuntimeException {
    private FileTrouble(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    static FileTrouble writing(Path file, IOException cause) {
        return new FileTrouble("The file " + file + " could not be written: " + reason(cause) + ".", cause);
    }

    private static String reason(IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return "its folder does not exist";
        }
        if (cause instanceof AccessDeniedException) {
            return "its folder may not be written to";
        }
        if (cause instanceof FileSystemException file && file.getReason() != null) {
            return file.getReason();
        }
        return cause.getMessage() == null ? "the disk refused it" : cause.getMessage();
    }
}
