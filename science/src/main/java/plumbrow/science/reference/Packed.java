package plumbrow.science.reference;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPInputStream;

/** The files that stand beside this package: the only ones that science reads. */
final class Packed {
    private Packed() {}

    static byte[] bytes(String file) {
        try (InputStream stream = Packed.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("The file " + file + " is not in Plumbrow.");
            }
            return stream.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The text of a file that is packed with gzip. */
    static String unzipped(String file) {
        try (InputStream stream = new GZIPInputStream(new ByteArrayInputStream(bytes(file)))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static String text(String file) {
        return new String(bytes(file), StandardCharsets.UTF_8);
    }
}
