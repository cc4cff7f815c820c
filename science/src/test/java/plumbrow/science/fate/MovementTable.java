package plumbrow.science.fate;

import static plumbrow.science.figure.Status.COMPUTED;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import plumbrow.science.checks.CheckList;

/** The 67 actives of movement-table.csv: half-life and Koc of the federal table, score and ratings by its bands. */
final class MovementTable {
    private MovementTable() {}

    /** Each row as a check of the leaching score. */
    static void rows(CheckList checks) {
        for (String row : read()) {
            // A name may hold a comma in its quotes; the numbers behind it never do.
            String[] cells = row.replaceFirst("^\"([^\"]*),([^\"]*)\"", "$1;$2").split(",", -1);
            checks.from("movement-table.csv, " + cells[0].replace(';', ','), COMPUTED)
                    .figure(
                            "leaching-score",
                            "half_life_d=%s koc_ml_g=%s | score=%s movement_rating=%s class=%s"
                                    .formatted(cells[1], cells[3], cells[4], cells[5], cells[6]));
        }
    }

    private static List<String> read() {
        try (InputStream file = Objects.requireNonNull(
                MovementTable.class.getResourceAsStream("movement-table.csv"), "movement-table.csv")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("common_name"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
