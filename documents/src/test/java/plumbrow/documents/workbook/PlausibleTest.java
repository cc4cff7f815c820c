package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName(
        "Values that are hardly true are asked about; a fault that many rows have is told once, with its count, and first")
class PlausibleTest {
    @TempDir
    Path parent;

    private Path folder = Path.of("");

    @BeforeEach
    void write() {
        folder = parent.resolve("season");
        WorkbookWriter.write(Fixture.season(), folder);
    }

    @Test
    void seedsThatNobodyPlants() {
        CsvCells.put(folder, "passes", 2, "rate", "99999");
        assertThat(questions())
                .anySatisfy(question -> assertThat(question)
                        .startsWith(
                                "Question: pass 1 of Trait alone on East 80 plants 99,999 thousand seeds on each acre;")
                        .contains("no more than 60 thousand"));
    }

    @Test
    void usualSeedsAreNotAskedAbout() {
        CsvCells.put(folder, "passes", 2, "rate", "60");
        assertThat(questions()).noneSatisfy(question -> assertThat(question).contains("thousand seeds"));
    }

    /** 1,999 h / 24 = 83.3 days. */
    @Test
    void anIntervalOfMonths() {
        CsvCells.put(folder, "terms", 2, "rei_hours", "1999");
        assertThat(questions())
                .contains(
                        "Question: the restricted-entry interval (REI) of Ridge 12 on corn is 1,999 h, which is 83 days; "
                                + "labels print 0 to 168 h. Look at the label again.");
        CsvCells.put(folder, "terms", 2, "rei_hours", "168");
        assertThat(questions()).noneSatisfy(question -> assertThat(question).contains("REI"));
    }

    /** 1.4 g/mL × 8.345404 lb/gal per g/mL = 11.68 lb/gal. */
    @Test
    void moreActiveThanAGallonWeighs() {
        CsvCells.put(folder, "actives", 2, "pounds", "19.9");
        assertThat(questions())
                .anySatisfy(question -> assertThat(question)
                        .startsWith("Question: Ridge 12 holds 19.9 lb of bifenthrin in a gallon;")
                        .contains("a gallon of water weighs 8.3 lb"));
        CsvCells.put(folder, "actives", 2, "pounds", "11.6");
        assertThat(questions()).noneSatisfy(question -> assertThat(question).contains("in a gallon"));
    }

    @Test
    void moreActiveThanProduct() {
        CsvCells.put(folder, "actives", 3, "pounds", "1.2");
        assertThat(questions()).anySatisfy(question -> assertThat(question).contains("more than all of it"));
    }

    @Test
    @DisplayName("the fixture's fields lie in the Atlantic, and that is asked")
    void anOutlineOutsideTheCountry() {
        assertThat(questions())
                .anySatisfy(question -> assertThat(question)
                        .startsWith(
                                "Question: the outline of East 80 lies outside the United States, at longitude −43.6 and "
                                        + "latitude 42")
                        .contains("Was it drawn on the right place?"));
    }

    /** Illinois lies between 88 and 91 degrees west: with latitude first its longitude still is a latitude. */
    @Test
    void latitudeBeforeLongitude() throws IOException {
        Path file = folder.resolve("boundaries.geojson");
        Files.writeString(
                file,
                "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"field\":\"East 80\"},"
                        + "\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[[40.0,-89.0],[40.0,-88.99],[40.01,-88.99],"
                        + "[40.01,-89.0],[40.0,-89.0]]]}}]}");
        CsvCells.put(folder, "fields", 2, "acres", "");
        CsvCells.put(folder, "fields", 3, "acres", "118");
        CsvCells.put(folder, "fields", 4, "acres", "118");
        assertThat(questions())
                .anySatisfy(question -> assertThat(question)
                        .contains("outside the United States, at longitude 40 and latitude −8")
                        .contains("With the two exchanged it would lie in")
                        .contains("County, IL: outlines give the longitude first"));
    }

    @Test
    void countiesOfALabelLimit() {
        CsvCells.put(folder, "label_limits", 2, "kind", "only in counties");
        CsvCells.put(folder, "label_limits", 2, "value", "IA: Adams; IA: Adems; Pike; XX: Pike; IL: Faribault");
        assertThat(faults().faults())
                .extracting(Fault::expected)
                .anySatisfy(expected -> assertThat(expected).contains("did you mean Adams"))
                .anySatisfy(expected -> assertThat(expected).contains("with their states, such as IA: Adams, not Pike"))
                .anySatisfy(expected -> assertThat(expected).contains("postal code of a state"))
                .anySatisfy(expected -> assertThat(expected).contains("for IL: Faribault a county of IL"))
                .hasSize(4);
    }

    @Test
    void aCountyOfAnotherState() {
        CsvCells.put(folder, "also_in", 2, "county", "Faribault");
        assertThat(faults().lines())
                .containsExactly(
                        "also_in.csv, row 2, column county: found \"Faribault\", expected a county of IA as the census "
                                + "spells it; Faribault is a county of MN.");
    }

    @Test
    void manyRowsOfOneCauseAreOneLineAndComeFirst() throws IOException {
        String rows = IntStream.range(1951, 2026)
                .mapToObj(year -> String.format(Locale.ROOT, "Est 80,%d,corn%n", year))
                .collect(Collectors.joining());
        Files.writeString(folder.resolve("history.csv"), "field,year,crop\n" + rows);
        CsvCells.put(folder, "fields", 2, "ph", "70");
        List<String> lines = faults().lines();
        assertThat(lines)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("history.csv, row 2, column field: found \"Est 80\"")
                        .contains("The same in "));
        assertThat(lines.get(0)).contains("The same in ").contains("more rows");
        assertThat(lines).hasSizeLessThan(20);
    }

    private List<String> questions() {
        List<String> told = new ArrayList<>();
        WorkbookReader.read(folder, told::add);
        return told;
    }

    private WorkbookFaults faults() {
        return catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(folder));
    }
}
