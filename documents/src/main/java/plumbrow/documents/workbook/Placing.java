package plumbrow.documents.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.documents.workbook.file.CsvFolder;
import plumbrow.documents.workbook.sheet.Sheets;

/** Puts a file or folder into place once it is whole, so that a half-written one is never seen. */
final class Placing {
    private Placing() {}

    /** Writes the content of a new file or folder. */
    @FunctionalInterface
    interface Content {
        void write(Path target) throws IOException;
    }

    static void file(Path target, Content content) {
        if (Files.isDirectory(target)) {
            throw fault(target, "a folder of this name", "a file name that is free");
        }
        place(target, content);
    }

    static void folder(Path target, Content content) {
        if (Files.exists(target) && !Files.isDirectory(target)) {
            throw fault(target, "a file of this name", "a name that ends in .xlsx, or a folder");
        }
        Optional<String> stranger = stranger(target);
        if (stranger.isPresent()) {
            throw fault(target, stranger.get() + " in this folder", "a new folder, or one that holds only a workbook");
        }
        place(target, folder -> content.write(Files.createDirectory(folder)));
    }

    private static void place(Path target, Content content) {
        Path whole = target.toAbsolutePath().normalize();
        Path name = whole.getFileName();
        Path parent = whole.getParent();
        if (name == null || parent == null || !Files.isDirectory(parent)) {
            throw fault(target, "no folder to write it into", "a folder that exists");
        }
        try {
            Path workshop = Files.createTempDirectory(parent, ".plumbrow-");
            try {
                Path made = workshop.resolve(name);
                content.write(made);
                exchange(made, whole, workshop.resolve("before"));
            } finally {
                delete(workshop);
            }
        } catch (IOException failed) {
            WorkbookFaults fault =
                    fault(target, "a place that cannot be written to", "a folder with room that Plumbrow may write");
            fault.initCause(failed);
            throw fault;
        }
    }

    private static void exchange(Path made, Path target, Path before) throws IOException {
        if (!Files.isDirectory(target)) {
            Files.move(made, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return;
        }
        Files.move(target, before, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(made, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failed) {
            Files.move(before, target, StandardCopyOption.ATOMIC_MOVE);
            throw failed;
        }
    }

    /** Something in the folder that is no part of a workbook and would be lost. */
    private static Optional<String> stranger(Path folder) {
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> !ours(name))
                    .sorted()
                    .findFirst();
        } catch (IOException unreadable) {
            throw fault(folder, "a folder that cannot be read", "one that Plumbrow may read");
        }
    }

    private static boolean ours(String name) {
        String tidy = name.toLowerCase(Locale.ROOT);
        return CsvFolder.shapeFiles().contains(tidy)
                || (tidy.endsWith(".csv")
                        && Sheets.named(tidy.substring(0, tidy.length() - 4)).isPresent());
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }

    private static WorkbookFaults fault(Path target, String found, String expected) {
        return new WorkbookFaults(List.of(new Fault(String.valueOf(target.getFileName()), 0, "", found, expected)));
    }
}
