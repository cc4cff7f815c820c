package plumbrow.app.book;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.TransactionSystemException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** The database's error codes as sentences for a person. */
final class SqliteFaults {
    private static final String FULL = "The disk is full; nothing was changed in the book ";

    private SqliteFaults() {}

    static BookException sentence(String file, Throwable fault) {
        // A database that gave up a transaction by itself has none left to roll back; why it did so stands beside that.
        if (fault instanceof TransactionSystemException gaveUp && gaveUp.getApplicationException() != null) {
            return sentence(file, gaveUp.getApplicationException());
        }
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof BookException told) {
                return told;
            }
            if (cause instanceof SQLiteException sqlite) {
                return new BookException(sentence(file, sqlite.getResultCode(), sqlite.getMessage()), fault);
            }
        }
        return new BookException("The book " + file + " can't be used; something unexpected is in the way.", fault);
    }

    /** Whether the file, its folder or its disk takes nothing, which keeps nobody from reading. */
    static boolean ofTheDisk(BookException fault) {
        for (Throwable cause = fault.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite) {
                return Set.of(8, 10, 13, 14).contains(sqlite.getResultCode().code & 0xFF);
            }
        }
        return false;
    }

    /** The extended codes carry the plain code in their last eight bits. */
    private static String sentence(String file, SQLiteErrorCode code, @Nullable String message) {
        if (code == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE) {
            return FULL + file + ".";
        }
        return switch (code.code & 0xFF) {
            case 5, 6 -> "The book " + file + " is in use by another program; let that finish, then try again.";
            case 8 ->
                "The book " + file + " or its folder is write-protected; it can be read, but nothing was written.";
            case 10 -> "The disk failed while the book " + file + " was in use; check the disk and its backup.";
            case 11 -> "The book " + file + " is damaged; take the latest backup.";
            case 13 -> FULL + file + ".";
            case 14 ->
                Files.isReadable(Path.of(file))
                        ? "The book " + file
                                + " can be read, but nothing was written: its disk or folder is write-protected."
                        : "The book " + file
                                + " can't be opened; the file or its folder may not be used by this person.";
            case 19 -> constraint(file, message == null ? "" : message);
            case 26 -> file + " is not a book.";
            default -> "The book " + file + " can't be used (database code " + code.code + ").";
        };
    }

    private static String constraint(String file, String message) {
        if (message.contains("FOREIGN KEY")) {
            return "A row names a farm, field, product, program, pass or person that the season doesn't hold; nothing was changed in "
                    + file + ".";
        }
        if (message.contains("UNIQUE")) {
            return "A name stands twice where it must stand once (" + column(message) + "); nothing was changed in "
                    + file + ".";
        }
        if (message.contains("a paper once kept")
                || message.contains("a link of the chain")
                || message.contains("line of the log")) {
            return "What was written down for good stays as it was; nothing was changed in " + file + ".";
        }
        if (message.contains("typed from a paper stays")) {
            return "What was typed from a paper stays as it was; type it once more.";
        }
        if (message.contains("stays as it was")) {
            return "A choice once written down stays as it was; write down another one.";
        }
        return "A value doesn't fit the book (" + column(message) + "); nothing was changed in " + file + ".";
    }

    /** What stands after the last colon: "UNIQUE constraint failed: farm.season, farm.name)". */
    private static String column(String message) {
        return message.substring(message.lastIndexOf(':') + 1)
                .replace(")", "")
                .replaceAll("\\w+\\.season,", "")
                .replace('_', ' ')
                .strip();
    }
}
