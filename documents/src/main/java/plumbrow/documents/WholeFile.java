package plumbrow.documents;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

/** Writes a file whole or not at all: beside its place first, then moved there. */
public final class WholeFile {
    private WholeFile() {}

    /** What fills the file. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Writes the file, in place of an older one of that name.
     *
     * @throws FileTrouble if it can't be written; the older one is then still as it was
     */
    public static void write(Path file, Content content) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder == null || Files.isDirectory(file)) {
                throw new FileSystemException(file.toString(), null, "it is a folder");
            }
            if (!Files.isDirectory(folder)) {
                throw new NoSuchFileException(folder.toString());
            }
            // Not createTempFile: its files are for their owner only, and these papers are handed on.
            Path beside = folder.resolve(".plumbrow-" + UUID.randomUUID() + ".part");
            try {
                try (OutputStream out =
                        new BufferedOutputStream(Files.newOutputStream(beside, StandardOpenOption.CREATE_NEW))) {
                    content.writeTo(out);
                }
                move(beside, file);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw FileTrouble.writing(file, e);
        }
    }

    /**
     * Writes files into a folder that is not there yet or empty, all or none.
     *
     * @param files by their paths in it, with "/" between parts
     * @throws FileTrouble if they can't be written; no folder is then left
     */
    public static void writeFolder(Path folder, Map<String, byte[]> files) {
        try {
            Path parent = folder.toAbsolutePath().normalize().getParent();
            if (parent == null || !Files.isDirectory(parent)) {
                throw new NoSuchFileException(String.valueOf(parent));
            }
            Path beside = parent.resolve(".plumbrow-" + UUID.randomUUID() + ".part");
            try {
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    Path at = beside.resolve(file.getKey());
                    Files.createDirectories(at.getParent());
                    Files.write(at, file.getValue());
                }
                Files.deleteIfExists(folder);
                move(beside, folder);
            } finally {
                remove(beside);
            }
        } catch (IOException e) {
            throw FileTrouble.writing(folder, e);
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> inside = Files.walk(folder)) {
                for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(path);
                }
            }
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
