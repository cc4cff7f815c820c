package plumbrow.documents.workbook.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import plumbrow.documents.workbook.form.Objections;

/** Text in UTF-8, with or without a byte order mark; anything else is refused rather than guessed. */
final class Utf8 {
    private static final String WANTED = "text saved as UTF-8; in the spreadsheet program choose \"CSV UTF-8\"";

    private Utf8() {}

    static Optional<String> decode(String place, byte[] bytes, Objections objections) {
        if (bytes.length >= 2 && ((bytes[0] & 0xff) >= 0xfe) && ((bytes[1] & 0xff) >= 0xfe)) {
            objections.at(place, 1, "", "text saved as UTF-16", WANTED);
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            String line = text.substring(text.lastIndexOf('\n') + 1);
            String before = line.substring(Math.max(0, line.length() - 20));
            objections.at(place, row(text), "", "a character that is not UTF-8 after \"" + before + "\"", WANTED);
            return Optional.empty();
        }
        if (text.indexOf('\0') >= 0) {
            objections.at(place, row(text.substring(0, text.indexOf('\0'))), "", "a character without meaning", WANTED);
            return Optional.empty();
        }
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    private static int row(String textBefore) {
        return 1 + (int) textBefore.chars().filter(c -> c == '\n').count();
    }
}
