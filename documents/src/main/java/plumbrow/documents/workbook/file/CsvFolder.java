package plumbrow.documents.workbook.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import plumbrow.documents.workbook.form.Grid;
import plumbrow.documents.workbook.form.Objections;

/** A folder with one CSV file for each sheet, and shapes in files beside them. */
public final class CsvFolder {
    static final String ENDING = ".csv";

    private CsvFolder() {}

    /** The grids of the folder's CSV files; files of other kinds are none of ours. */
    public static List<Grid> read(Path folder, Predicate<String> wanted, Objections objections) throws IOException {
        List<Grid> grids = new ArrayList<>();
        for (Path file : files(folder)) {
            String name = fileName(file);
            String sheet = name.substring(0, name.length() - ENDING.length());
            if (wanted.test(sheet)) {
                text(file, objections)
                        .map(text -> CsvText.grid(sheet, name, text, objections))
                        .ifPresent(grids::add);
            } else {
                grids.add(new Grid(sheet, name, List.of(), List.of()));
            }
        }
        if (grids.isEmpty()) {
            objections.at(fileName(folder), 0, "", "no CSV files", "a folder with a CSV file for each sheet");
        }
        for (GeoFile shapes : GeoFile.READ) {
            grids = shaped(folder, shapes, grids, objections);
        }
        return grids;
    }

    /** The files of shapes that a written folder has. */
    public static List<String> shapeFiles() {
        return GeoFile.WRITTEN.stream().map(GeoFile::name).toList();
    }

    private static List<Grid> shaped(Path folder, GeoFile shapes, List<Grid> grids, Objections objections) {
        Path file = folder.resolve(shapes.name());
        if (!Files.isRegularFile(file)) {
            return grids;
        }
        Optional<String> text = text(file, objections);
        return text.isEmpty() ? grids : new ShapeJoin(shapes, objections).join(grids, text.get());
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> fileName(file).toLowerCase(Locale.ROOT).endsWith(ENDING))
                    .sorted()
                    .toList();
        }
    }

    private static Optional<String> text(Path file, Objections objections) {
        try {
            if (Files.size(file) > Limits.FILE_BYTES) {
                objections.at(fileName(file), 0, "", (Files.size(file) >> 20) + " MB", "a file of a few MB at most");
                return Optional.empty();
            }
            return Utf8.decode(fileName(file), Files.readAllBytes(file), objections);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static String fileName(Path path) {
        Path name = path.toAbsolutePath().normalize().getFileName();
        return name == null ? path.toString() : name.toString();
    }
}
