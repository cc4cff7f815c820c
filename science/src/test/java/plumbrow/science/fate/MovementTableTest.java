package plumbrow.science.fate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.Example;

@DisplayName("The movement table row by row, fate-and-wildlife.md section 3.1")
class MovementTableTest {

    @Test
    @DisplayName("3.1 score, rating and class of 67 actives; every row that differs is listed")
    void everyRow() {
        List<String> rows = rows();
        assertThat(rows).hasSize(67);
        List<String> differing = new ArrayList<>();
        for (String row : rows) {
            // A name may hold a comma in its quotes; the numbers behind it never do.
            String[] cells = row.replaceFirst("^\"([^\"]*),([^\"]*)\"", "$1$2").split(",", -1);
            double score = LeachingScore.of(Double.parseDouble(cells[1]), Double.parseDouble(cells[3]));
            boolean same = Math.abs(score - Double.parseDouble(cells[4])) <= Example.lastDigit(cells[4])
                    && LeachingBand.movementRating(score).equals(cells[5])
                    && LeachingBand.fourClass(score).equals(cells[6]);
            if (!same) {
                differing.add(row + " found " + score + " " + LeachingBand.movementRating(score) + ", "
                        + LeachingBand.fourClass(score));
            }
        }
        assertThat(differing).isEmpty();
    }

    private static List<String> rows() {
        try (InputStream file = Objects.requireNonNull(
                MovementTableTest.class.getResourceAsStream("movement-table.csv"), "movement-table.csv")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("common_name"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
