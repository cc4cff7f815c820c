package plumbrow.science.reference;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether the files are the ones that were reviewed: SHA-256, in the file SHA256SUMS beside them. */
final class Checksums {
    static final String FILE = "SHA256SUMS";

    private Checksums() {}

    /** File names with their sums, as the usual tool writes them: the sum, two blanks, the name. */
    static Map<String, String> read(String text) {
        Map<String, String> sums = new LinkedHashMap<>();
        text.lines().filter(line -> line.contains("  ")).forEach(line -> {
            int gap = line.indexOf("  ");
            sums.put(line.substring(gap + 2), line.substring(0, gap));
        });
        return sums;
    }

    static void check(Map<String, String> sums, String file, String text, List<Trouble> troubles) {
        String expected = sums.getOrDefault(file, "");
        String found = sum(text);
        if (expected.isEmpty()) {
            troubles.add(new Trouble(FILE, 0, "", "no sum for " + file, "one line for every file"));
        } else if (!expected.equals(found)) {
            troubles.add(new Trouble(file, 0, "", "SHA-256 " + found, expected + ", the sum of the reviewed file"));
        }
    }

    static String sum(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
