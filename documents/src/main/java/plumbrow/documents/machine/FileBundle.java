package plumbrow.documents.machine;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files that belong together, as a zip or as a folder; a path in it has "/" between its parts. */
public final class FileBundle {
    /** The same files give the same zip to the byte; zips know no day before this. */
    private static final LocalDateTime UNDATED = LocalDateTime.of(1980, 1, 1, 0, 0);

    private FileBundle() {}

    public static byte[] zip(Map<String, byte[]> files) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(UNDATED);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    /** Writes them into a folder that is not there yet or empty, whole or not at all. */
    public static void folder(Map<String, byte[]> files, Path folder) throws IOException {
        Path whole = folder.toAbsolutePath().normalize();
        Path parent = whole.getParent();
        if (parent == null) {
            throw new IOException("no folder to write into");
        }
        Path draft = Files.createTempDirectory(parent, ".task-data");
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path at = draft.resolve(file.getKey());
                Files.createDirectories(at.getParent());
                Files.write(at, file.getValue());
            }
            Files.deleteIfExists(whole);
            move(draft, whole);
        } finally {
            remove(draft);
        }
    }

    /** Writes a file, whole or not at all. */
    public static void file(byte[] content, Path file) throws IOException {
        Path whole = file.toAbsolutePath().normalize();
        Path draft = Files.createTempFile(whole.getParent(), ".task-data", ".part");
        try {
            Files.write(draft, content);
            move(draft, whole);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException other) {
            Files.move(from, to);
        }
    }

    private static void remove(Path draft) throws IOException {
        if (!Files.exists(draft)) {
            return;
        }
        try (Stream<Path> inside = Files.walk(draft)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }
}
