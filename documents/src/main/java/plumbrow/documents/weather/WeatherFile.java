package plumbrow.documents.weather;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a weather file, whichever kind it is. */
public final class WeatherFile {
    private static final long MOST_BYTES = 60_000_000;

    private WeatherFile() {}

    /**
     * The hours or days of a file.
     *
     * @throws WeatherTrouble with a sentence, where it can't be read
     */
    public static WeatherRead read(Path file, WeatherAsked asked) {
        return read(String.valueOf(file.getFileName()), bytes(file), asked);
    }

    /** The file whole. */
    public static byte[] bytes(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                throw new WeatherTrouble("There is no file " + file + ".");
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new WeatherTrouble("The file " + file + " is larger than 60 MB; split it by years.");
            }
            return Files.readAllBytes(file);
        } catch (IOException fault) {
            throw new WeatherTrouble("The file " + file + " could not be read.");
        }
    }

    /** The hours or days of a file's bytes. */
    public static WeatherRead read(String name, byte[] bytes, WeatherAsked asked) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException notText) {
            throw new WeatherTrouble(
                    "The file " + name + " is no text in UTF-8; expected a CSV, ISD-Lite, GHCN-Daily or"
                            + " forecast file. A file that ends in .gz must be unpacked first.");
        }
        String tidy = text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (tidy.isBlank()) {
            throw new WeatherTrouble("The file " + name + " is empty; expected hours or days of weather.");
        }
        String first = tidy.stripLeading().lines().findFirst().orElse("");
        if (first.startsWith("{")) {
            return ForecastJson.read(tidy, asked, name);
        } else if (IsdLite.looksLike(first)) {
            return IsdLite.read(tidy, asked, name);
        } else if (LocalClimate.looksLike(first)) {
            return LocalClimate.read(tidy, asked, name);
        } else if (asked.columns().isEmpty() && DailyRecords.looksLike(first)) {
            return DailyRecords.read(tidy, asked, name);
        }
        return PlainCsv.read(tidy, asked, name);
    }
}
