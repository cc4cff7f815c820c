package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.field.Feature;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.LabelBook;

/** One wrong cell in what labels ask, what lies around the fields or who sprays: the fault that follows, and no other. */
class FaultyTermsTest {
    private static final List<String> OPTIONAL = List.of(
            "terms",
            "soil_rates",
            "setbacks",
            "plant_backs",
            "mix_rules",
            "special_labels",
            "care",
            "tolerances",
            "label_limits",
            "surroundings",
            "also_in",
            "land",
            "bulletins",
            "licences",
            "next_crops",
            "resistance",
            "sprays",
            "people",
            "crew",
            "log",
            "stand_counts",
            "machines",
            "work_windows",
            "farm_limits",
            "price_breaks",
            "supplies",
            "sprayers",
            "nozzles",
            "mixing",
            "water_tests",
            "additions",
            "hour_limits");

    @TempDir
    Path parent;

    private Path folder = Path.of("");

    @BeforeEach
    void write() {
        folder = parent.resolve("season");
        WorkbookWriter.write(Fixture.season(), folder);
    }

    /** Sheet, row, column, what is put there, and what is expected; @ names the column that is at fault then. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            stand_counts | 2 | counted | 2026-04-01 | @planted a day no later than counted, which is 2026-04-01
            terms | 2 | product | Ridge 13 | a product of the sheet shelf
            terms | 2 | product | Rigde 12 | a product of the sheet shelf; did you mean Ridge 12?
            terms | 2 | rei_hours | 1.5 | a whole number from 0 to 2000
            terms | 2 | earliest_stage | V9 | no later than latest_stage, which is V6
            terms | 2 | earliest_stage | VC | a stage of corn: PRE, VE, V1 to V22, VT or R1 to R6
            terms | 4 | latest_stage | R1 | a stage of wheat: PRE or a Feekes stage, 1 to 11.4
            terms | 2 | latest_stage | V30 | a growth stage such as V4 or R1, for wheat a Feekes stage such as 8, or \
            PRE before the crop is up; none where the label sets no limit
            terms | 2 | highest_weed_in | four | a number from 0 to 999, or none where the label sets no limit
            terms | 2 | methods | none | at least one way; all of them where the label leaves it open
            terms | 2 | methods | band; bnad | ways of application parted by semicolons, such as ground broadcast; \
            band; "bnad" is not one of: ground broadcast, band, in furrow, directed, spot, aerial, chemigation, on seed
            terms | 2 | coarsest | F | @finest no coarser than coarsest, which is F
            terms | 2 | wind_highest_mph | 2 | @wind_lowest_mph no more than wind_highest_mph, which is 2
            terms | 4 | crop | corn | @latest_stage a stage of corn: PRE, VE, V1 to V22, VT or R1 to R6
            soil_rates | 2 | textures | none | the textures this row is for, or nothing where it is for all
            soil_rates | 2 | forbidden | no | @high_rate a number above 0 and up to 1000000, since the use is not \
            forbidden on this soil
            soil_rates | 3 | low_rate | 6 | no more than high_rate, which is 5
            soil_rates | 3 | ph_from | 7.5 | less than ph_below, which is 7.5
            soil_rates | 3 | organic_matter_below_pct | 2 | @organic_matter_from_pct less than \
            organic_matter_below_pct, which is 2
            soil_rates | 3 | rate_unit | oz/ac | a liquid volume, since Ridge 12 is priced per gal
            setbacks | 2 | distance_ft | -1 | a number from 0 to 100000
            setbacks | 2 | kind | river | one of: stream, ditch, pond, well, sinkhole, tile inlet, dwelling, school, own house, public road, \
            bee yard, sensitive crop, organic field, protected habitat
            plant_backs | 3 | ph_from | 8 | less than ph_below, which is 7.5
            plant_backs | 4 | next_crop | alfalffa | a crop; did you mean alfalfa?
            mix_rules | 3 | partner | Clear Row | another product than the one whose label says so
            mix_rules | 3 | partner | adjuvnt | a product of the sheet shelf, an active ingredient, or a kind of product such as adjuvant; did you mean adjuvant?
            mix_rules | 2 | partner | bifentrin | a product of the sheet shelf, an active ingredient, or a kind of product such as adjuvant; did you mean bifenthrin?
            special_labels | 2 | counties |  | all, or counties parted by semicolons, such as Adams; Pike
            special_labels | 3 | counties | Pike County | all, or counties parted by semicolons, such as Adams; Pike; \
            "Pike County" is not a county's name, without the word County
            special_labels | 2 | until | 2026-04-14 | @from no later than until, which is 2026-04-14
            care | 2 | confirmed | 2026-02-17 | a day not after 2026-02-16, the day of the assumptions
            care | 2 | restricted_use | maybe | one of: yes, no, unknown
            care | 3 | product | Ridge 12 | each product once; row 2 has the same
            surroundings | 3 | kind | house | one of: none, stream, ditch
            surroundings | 3 | nearest_ft |  | a number from 0 to 100000, since there is no shape
            surroundings | 3 | name |  | text of up to 80 characters
            surroundings | 6 | kind | no streams | one of: none, stream, ditch
            special_labels | 3 | until | never | a date written year-month-day, such as 2026-05-04, or none where the label
            also_in | 2 | county | Adams | another county than the one this field has on the sheet fields
            also_in | 2 | county | Pike County | a county's name, without the word County
            next_crops | 2 | planted | 2025-12-31 | a day between 2026-01-01 and 2028-12-31
            next_crops | 3 | use | maybe | one of: next crop, cover crop, if this crop fails
            resistance | 2 | weed | waterhmp | a weed of the sheet weeds; did you mean waterhemp?
            resistance | 2 | group | G | the number of a site-of-action group, such as 9 or 14
            sprays | 2 | pass | 4 | a pass of the program Trait and granule of East 80 on the sheet passes
            sprays | 2 | pass | 3 | a seed, spray or granule pass; this is a tillage pass
            sprays | 2 | program | Traits | a program of East 80 on the sheet programs; did you mean Trait alone?
            sprays | 4 | crop_stage | V4 | a stage of wheat: PRE or a Feekes stage, 1 to 11.4
            sprays | 3 | carrier_gal_ac | 8 | 5, as in row 2, since both go out in one tank
            sprays | 3 | bloom | yes | no, as in row 2, since both go out in one tank
            sprays | 2 | applicator | S. Lindt | a person of the sheet people; did you mean S. Lind?
            people | 3 | person | S. Lind | each person once; row 2 has the same
            log | 2 | date | 2020-12-31 | a day between 2021-01-01 and 2026-12-31
            log | 2 | rate_unit | pt/ac | a weight
            log | 3 | product | Ridge 21 | a product of the sheet shelf
            log | 2 | applicator | S. Lindt | S. Lind, as the sheet people spells it
            """)
    void oneWrongCell(String sheet, int row, String column, @Nullable String value, String expected) {
        CsvCells.put(folder, sheet, row, column, value == null ? "" : value);
        boolean elsewhere = expected.startsWith("@");
        int blank = expected.indexOf(' ');
        String faulty = elsewhere ? expected.substring(1, blank) : column;
        assertThat(sentences())
                .singleElement()
                .asString()
                .startsWith(sheet + ".csv, row ")
                .contains(
                        ", column " + faulty + ": ",
                        "expected " + (elsewhere ? expected.substring(blank + 1) : expected));
    }

    @Test
    void nothingFoundHasNoName() {
        CsvCells.put(folder, "surroundings", 3, "kind", "none");
        assertThat(sentences()).hasSize(3).allMatch(sentence -> sentence.startsWith("surroundings.csv, row 3, column"));
        assertThat(sentences().get(0))
                .isEqualTo(
                        "surroundings.csv, row 3, column name: found \"Ng, A.\", expected nothing, since the kind none "
                                + "says that nothing was found.");
    }

    @Test
    void withoutTheOptionalSheetsAllOfThatIsUnknown() throws IOException {
        for (String sheet : OPTIONAL) {
            Files.delete(folder.resolve(sheet + ".csv"));
        }
        Files.delete(folder.resolve("features.geojson"));
        Season season = WorkbookReader.read(folder);
        assertThat(season.shelf().labels()).isEqualTo(LabelBook.UNREAD);
        assertThat(season.ground()).isEqualTo(Ground.UNKNOWN);
        assertThat(season.work()).isEqualTo(Work.NONE);
        assertThat(season.pests().resistance()).isEmpty();
        assertThat(season.programs()).isEqualTo(Fixture.season().programs());
    }

    @Test
    void aPersonNobodyEntered() throws IOException {
        Files.delete(folder.resolve("people.csv"));
        Files.delete(folder.resolve("licences.csv"));
        assertThat(sentences())
                .containsExactly(
                        "sprays.csv, row 2, column applicator: found \"S. Lind\", expected a person of the sheet "
                                + "people.");
    }

    @Test
    void oneCrew() throws IOException {
        Files.writeString(folder.resolve("crew.csv"), "gear,display\nnone,yes\ngoggles,yes\n");
        assertThat(sentences()).containsExactly("crew.csv: found \"2 rows\", expected at most one row.");
    }

    @Test
    void oneTankIsOneDay() {
        CsvCells.put(folder, "passes", 4, "date", "2026-05-06");
        assertThat(sentences())
                .containsExactly(
                        "sprays.csv, row 3, column tank: found \"planter\", expected a tank of its own: this pass "
                                + "is planned for 2026-05-04, that of row 2 for 2026-05-06.");
    }

    @Test
    void shapesWithoutRowsMakeRows() throws IOException {
        Files.delete(folder.resolve("surroundings.csv"));
        features("""
                {"fid":7,"field":"River","kind":"Pond","name":"oxbow","source":"air photo","nearest_ft":12.5}""", """
                {"type":"Point","coordinates":[-90.9,39.6]}""");
        assertThat(WorkbookReader.read(folder).ground().looked()).isEmpty();
        assertThat(WorkbookReader.read(folder).ground().features())
                .singleElement()
                .satisfies(pond -> {
                    assertThat(pond.nearestFt()).isEqualTo(12.5);
                    assertThat(pond.shape()).isInstanceOf(Feature.Spot.class);
                });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            "field":"5-4","kind":"pond","name":"oxbow" | features.geojson, row 1, column source: nothing there
            "field":"Rivers","kind":"pond","name":"oxbow","source":"x" | features.geojson, row 1, column field: found \
            "Rivers", expected a field of the sheet fields; did you mean River?
            "field":"East 80","kind":"lake","name":"oxbow","source":"x" | features.geojson, row 1, column kind: found \
            "lake", expected one of: none, stream
            "kind":"pond","name":"oxbow","source":"x" | features.geojson, row 1, column field: nothing there
            """)
    void shapesThatBelongNowhere(String properties, String sentence) throws IOException {
        features("{" + properties + "}", "{\"type\":\"Point\",\"coordinates\":[-90.9,39.6]}");
        assertThat(sentences()).singleElement().asString().startsWith(sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            {"type":"Point","coordinates":[]} | a GeoJSON Point, LineString, Polygon or MultiPolygon such as
            {"type":"Point","coordinates":[42,-193.6]} | longitude and latitude in degrees, in that order, not 42.0, -193.6
            {"type":"LineString","coordinates":[[-93.6,42],[-93.6,42]]} | a line between at least two places
            {"type":"MultiPoint","coordinates":[[-93.6,42]]} | a Point, LineString, Polygon or MultiPolygon, not a MultiPoint
            {"type":"Polygon","coordinates":[[[0,0],[1,1],[1,0],[0,1],[0,0]]]} | an outline that does not cross
            null | a GeoJSON Point
            """)
    void shapesThatAreNone(String geometry, String expected) throws IOException {
        features("{\"field\":\"East 80\",\"kind\":\"dwelling\",\"name\":\"Ng, A.\"}", geometry);
        assertThat(sentences())
                .singleElement()
                .asString()
                .startsWith("surroundings.csv, row 3, column shape: found")
                .contains("expected " + expected);
    }

    @Test
    void aShapeTwice() {
        CsvCells.put(folder, "surroundings", 4, "shape", "{\"type\":\"Point\",\"coordinates\":[-93.6,42]}");
        assertThat(sentences())
                .singleElement()
                .asString()
                .contains(
                        "surroundings.csv, row 4, column shape", "nothing, since features.geojson has a shape of this");
    }

    /** Puts one more feature at the head of the file. */
    private void features(String properties, String geometry) throws IOException {
        Path file = folder.resolve("features.geojson");
        String feature = "{\"type\":\"Feature\",\"properties\":" + properties + ",\"geometry\":" + geometry + "}";
        boolean alone = Files.notExists(folder.resolve("surroundings.csv"));
        String rest = Files.readString(file).replace("\"features\":[\n", "\"features\":[\n" + feature + ",\n");
        Files.writeString(file, alone ? "{\"type\":\"FeatureCollection\",\"features\":[" + feature + "]}" : rest);
    }

    private List<String> sentences() {
        WorkbookFaults faults = catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(folder));
        return faults.faults().stream().map(Fault::sentence).toList();
    }
}
