package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Outlines of a folder that come from an earth browser. */
class KmlOutlinesTest {
    private static final String EAST = """
            <Placemark><name> East 80 </name><Style/><Polygon><extrude>0</extrude><outerBoundaryIs><LinearRing><coordinates>
              -43.6,42.0,0 -43.5952,42.0,0 -43.5952,42.0072,0
              -43.6,42.0072,0 -43.6,42.0,0
            </coordinates></LinearRing></outerBoundaryIs><innerBoundaryIs><LinearRing><coordinates>
              -43.598,42.002 -43.5974,42.002 -43.5974,42.0024 -43.598,42.0024 -43.598,42.002
            </coordinates></LinearRing></innerBoundaryIs></Polygon></Placemark>""";
    private static final String PIN = """
            <Placemark><name>gate</name><Point><coordinates>-43.6,42.0</coordinates></Point></Placemark>""";

    @TempDir
    Path parent;

    private Path folder = Path.of("");

    @BeforeEach
    void write() throws IOException {
        folder = parent.resolve("season");
        WorkbookWriter.write(Fixture.season(), folder);
        Files.delete(folder.resolve("boundaries.geojson"));
        CsvCells.put(folder, "fields", 3, "acres", "20");
    }

    @Test
    void aPlacemarkWithAnAreaIsAField() throws IOException {
        kml("<Folder><name>farm</name>" + PIN + EAST + "</Folder>");
        assertThat(WorkbookReader.read(folder).fields().get(0).boundary()).isEqualTo(Fixture.outline());
        assertThat(WorkbookReader.read(folder).fields().get(1).boundary()).isNull();
    }

    @Test
    void severalPiecesAreOneField() throws IOException {
        String piece = EAST.substring(EAST.indexOf("<Polygon>"), EAST.indexOf("</Placemark>"));
        kml("<Placemark><name>East 80</name><MultiGeometry>" + piece + piece.replace("-43.", "-42.")
                + "</MultiGeometry></Placemark>");
        CsvCells.put(folder, "fields", 2, "acres", "");
        var field = WorkbookReader.read(folder).fields().get(0);
        assertThat(field.boundary())
                .isNotNull()
                .satisfies(outline -> assertThat(outline.polygons()).hasSize(2));
        assertThat(field.acres()).isBetween(2 * 75.0, 2 * 80.0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            East 80 | West 80 | boundaries.kml, column field: found "West 80", expected a field of the fields sheet.
            <name> East 80 </name> | <name/> | boundaries.kml, column field: nothing there, expected a field's name at each \
            outline: the property "field" in GeoJSON, the name in KML.
            -43.5952,42.0,0 | -43.5952;42.0 | boundaries.kml: found "something else", expected for East 80 rings of \
            longitude,latitude that end where they begin.
            -43.6,42.0072,0 -43.6,42.0,0 | -43.6,42.0072,0 | boundaries.kml: found "something else", expected for East 80 \
            rings of longitude,latitude that end where they begin.
            -43.6,42.0072,0 -43.6,42.0,0 | 42.0,-143.6 -43.6,42.0,0 | boundaries.kml: found "something else", expected for \
            East 80 longitude and latitude in degrees, in that order, not 42.0, -143.6.
            </Placemark> | </Place> | boundaries.kml: found "something else", expected a KML file without a document type, as \
            an earth browser saves it.
            """)
    void whatIsWrongIsSaid(String before, String after, String sentence) throws IOException {
        kml(EAST.replace(before, after));
        assertThat(sentences()).containsExactly(sentence);
    }

    @Test
    void nothingIsDrawnInFromElsewhere() throws IOException {
        Path secret = Files.writeString(parent.resolve("secret.txt"), "East 80");
        Files.writeString(
                folder.resolve("boundaries.kml"),
                "<!DOCTYPE kml [<!ENTITY name SYSTEM \"" + secret.toUri() + "\">]><kml>"
                        + EAST.replace("East 80", "&name;") + "</kml>");
        assertThat(sentences())
                .containsExactly(
                        "boundaries.kml: found \"something else\", expected a KML file without a document type, as "
                                + "an earth browser saves it.");
    }

    @Test
    void anOutlineInBothFilesIsAFault() throws IOException {
        kml(EAST);
        Files.writeString(
                folder.resolve("boundaries.geojson"),
                "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"field\":\"East 80\"},"
                        + "\"geometry\":{\"type\":\"Point\",\"coordinates\":[0,0]}}]}");
        assertThat(sentences())
                .anyMatch(sentence -> sentence.startsWith("fields.csv, row 2, column boundary")
                        && sentence.endsWith("nothing, since boundaries.kml has a shape of this row too."));
    }

    @Test
    void aFolderWithSuchAFileIsNotWrittenOver() throws IOException {
        kml(EAST);
        assertThatThrownBy(() -> WorkbookWriter.write(Fixture.season(), folder))
                .isInstanceOf(WorkbookFaults.class)
                .hasMessageContaining("boundaries.kml in this folder");
        assertThat(folder.resolve("boundaries.kml")).exists();
    }

    private void kml(String placemarks) throws IOException {
        Files.writeString(
                folder.resolve("boundaries.kml"),
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?><kml xmlns=\"http://www.opengis.net/kml/2.2\"><Document>"
                        + placemarks + "</Document></kml>");
    }

    private List<String> sentences() {
        return catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(folder)).faults().stream()
                .map(Fault::sentence)
                .toList();
    }
}
