package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the reader refuses. */
class CsvTest {
    private static final List<String> COLUMNS = List.of("a", "b");

    private final List<Trouble> troubles = new ArrayList<>();

    private List<Row> rows(String text) {
        return Csv.rows("own.csv", text, COLUMNS, troubles);
    }

    private String sentence() {
        assertThat(troubles).hasSize(1);
        return troubles.get(0).sentence();
    }

    @Test
    void cellsAreFoundByColumnAndRow() {
        List<Row> rows = rows("\uFEFFa,b\n1,\"two, \"\"2\"\"\"\n\n3 , 4\n");
        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).text("b")).isEqualTo("two, \"2\"");
        assertThat(rows.get(1).text("a")).isEqualTo("3");
        assertThat(rows.get(1).number()).isEqualTo(4);
        assertThat(troubles).isEmpty();
    }

    @Test
    void anotherHeader() {
        assertThat(rows("a;b\n1;2\n")).isEmpty();
        assertThat(sentence()).isEqualTo("own.csv row 1: found 'a;b'; expected the columns a,b.");
    }

    @Test
    void columnsInAnotherOrder() {
        assertThat(rows("b,a\n1,2\n")).isEmpty();
        assertThat(sentence()).contains("found 'b,a'");
    }

    @Test
    void nothingAtAll() {
        assertThat(rows("")).isEmpty();
        assertThat(sentence()).contains("found 'nothing'");
    }

    @Test
    void tooFewAndTooManyCells() {
        assertThat(rows("a,b\n1\n1,2\n1,2,3\n")).hasSize(1);
        assertThat(troubles.stream().map(Trouble::sentence))
                .containsExactly(
                        "own.csv row 2: found '1 cells'; expected 2 cells parted by commas.",
                        "own.csv row 4: found '3 cells'; expected 2 cells parted by commas.");
    }

    @Test
    void aQuoteThatNeverEnds() {
        rows("a,b\n1,\"2\n");
        assertThat(sentence()).contains("row 2").contains("quote");
    }
}
