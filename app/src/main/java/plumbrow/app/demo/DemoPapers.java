package plumbrow.app.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.binder.PlainPaper;

/** Invented safety sheets and a label for products of the demo, as PDFs; one sheet in two revisions, one of them old. */
public final class DemoPapers {
    private static final List<String> NAMES =
            List.of("ironweir-4l-sheet", "ironweir-4l-label", "hartsedge-g-sheet-2022", "hartsedge-g-sheet-2026");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 1);

    private DemoPapers() {}

    /**
     * Writes them into a folder.
     *
     * @param folder made where it is not there; files of the same names in it are not overwritten
     * @return the files
     * @throws java.nio.file.FileAlreadyExistsException where one of them is there already
     */
    public static List<Path> writeTo(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<Path> files = new ArrayList<>();
        for (String name : NAMES) {
            Path file = folder.resolve(name + ".pdf");
            Files.write(file, pdf(name), java.nio.file.StandardOpenOption.CREATE_NEW);
            files.add(file);
        }
        return files;
    }

    /** One of them as a PDF. */
    static byte[] pdf(String name) {
        try (InputStream packed = DemoPapers.class.getResourceAsStream("/demo/papers/" + name + ".txt")) {
            if (packed == null) {
                throw new IllegalStateException("the demo lacks the paper " + name);
            }
            return PlainPaper.print(new String(packed.readAllBytes(), StandardCharsets.UTF_8), DAY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
