package plumbrow.documents.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Makes a hostile spreadsheet file of a good one by changing its parts. */
final class ZipParts {
    private ZipParts() {}

    /** Writes the content of one part. */
    @FunctionalInterface
    interface Part {
        void write(OutputStream out) throws IOException;
    }

    /** A copy in which one part, or a new one, has other content. */
    static void replace(Path from, Path to, String name, Part content) throws IOException {
        try (ZipFile in = new ZipFile(from.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
            Enumeration<? extends ZipEntry> parts = in.entries();
            while (parts.hasMoreElements()) {
                ZipEntry part = parts.nextElement();
                if (!part.getName().equals(name)) {
                    out.putNextEntry(new ZipEntry(part.getName()));
                    try (InputStream data = in.getInputStream(part)) {
                        data.transferTo(out);
                    }
                }
            }
            out.putNextEntry(new ZipEntry(name));
            content.write(out);
        }
    }

    /** A copy in which the text of one part is changed. */
    static void edit(Path from, Path to, String name, UnaryOperator<String> change) throws IOException {
        String text;
        try (ZipFile in = new ZipFile(from.toFile());
                InputStream data = in.getInputStream(in.getEntry(name))) {
            text = new String(data.readAllBytes(), StandardCharsets.UTF_8);
        }
        replace(from, to, name, out -> out.write(change.apply(text).getBytes(StandardCharsets.UTF_8)));
    }
}
