package plumbrow.app.papers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.Book;
import plumbrow.app.book.StoredPaper;
import plumbrow.documents.confirm.ReadOnLabel;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.shelf.FiledPaper;

/** Brings papers into a book, file by file: one that can't be read stops no other. */
public final class Intake {
    private static final int DEEPEST = 8;
    private static final List<String> ENDINGS = List.of(".pdf", ".txt", ".html", ".htm");

    private Intake() {}

    /** Where papers go. */
    @FunctionalInterface
    public interface Keeper {
        Book.Kept keep(FiledPaper paper, byte[] content, Instant at);
    }

    /** Where it is noted what a label says. */
    @FunctionalInterface
    public interface Noter {
        void note(String sha256, List<ReadOnLabel> read);
    }

    /** A book that takes papers in. */
    public record Into(Keeper keeper, Noter noter) {
        public static Into book(Book book) {
            return new Into(book::keep, book::note);
        }

        private Book.Kept keep(ReadPaper read, byte[] content, Instant at) {
            Book.Kept kept = keeper.keep(read.filed(), content, at);
            if (read instanceof ReadPaper.Label label) {
                String sha256 = kept.stored().sha256();
                noter.note(sha256, ReadOnLabel.of(sha256, label.label()));
            }
            return kept;
        }
    }

    /**
     * What became of a file.
     *
     * @param stored the paper in the book; null where it could not be read
     * @param already whether the book had this very file
     * @param trouble why it could not be read; null where it could
     */
    public record Outcome(
            String file,
            @Nullable StoredPaper stored,
            boolean already,
            @Nullable String trouble) {}

    /**
     * The files meant: those named, and of folders every PDF, text and web page in them, in the order of their names.
     *
     * @throws PaperTrouble if one of them is not there or can't be looked into
     */
    public static List<Path> files(List<Path> named) {
        List<Path> files = new ArrayList<>();
        for (Path each : named) {
            if (!Files.isDirectory(each)) {
                files.add(each);
                continue;
            }
            try (Stream<Path> inside = Files.walk(each, DEEPEST)) {
                inside.filter(Intake::readable).sorted().forEach(files::add);
            } catch (IOException | java.io.UncheckedIOException closed) {
                throw new PaperTrouble("The folder " + each + " can't be looked into.", closed);
            }
        }
        return files;
    }

    /** Reads and keeps each file; tells after each how many are done. */
    public static List<Outcome> add(Into book, PaperDesk desk, List<Path> files, Instant at, IntConsumer done) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Path file : files) {
            outcomes.add(add(book, desk, file, at));
            done.accept(outcomes.size());
        }
        return outcomes;
    }

    private static Outcome add(Into book, PaperDesk desk, Path file, Instant at) {
        try {
            ReadPaper read = desk.read(file);
            Book.Kept kept = book.keep(read, Files.readAllBytes(file), at);
            return new Outcome(file.toString(), kept.stored(), kept.already(), null);
        } catch (PaperTrouble trouble) {
            return new Outcome(file.toString(), null, false, String.valueOf(trouble.getMessage()));
        } catch (IOException gone) {
            return new Outcome(file.toString(), null, false, file.getFileName() + " could not be read from the disk.");
        }
    }

    /** The same for a file that came over the wire. */
    public static Outcome add(Into book, PaperDesk desk, byte[] content, String name, Instant at) {
        String plain = PaperDesk.plainName(name);
        try {
            ReadPaper read = desk.read(content, plain);
            Book.Kept kept = book.keep(read, content, at);
            return new Outcome(plain, kept.stored(), kept.already(), null);
        } catch (PaperTrouble trouble) {
            return new Outcome(plain, null, false, String.valueOf(trouble.getMessage()));
        }
    }

    private static boolean readable(Path file) {
        return Files.isRegularFile(file) && readable(String.valueOf(file.getFileName()));
    }

    /** Whether a file of a folder is looked into, by its name. */
    public static boolean readable(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1)
                .toLowerCase(Locale.ROOT);
        return !last.startsWith(".") && ENDINGS.stream().anyMatch(last::endsWith);
    }
}
