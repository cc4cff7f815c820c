package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Acres;
import plumbrow.advice.season.Season;

/** What is written is read again as it was, to the last digit. */
class RoundTripTest {
    @TempDir
    Path folder;

    @Test
    void aRichSeasonThroughASpreadsheet() {
        assertThat(through(Fixture.season(), folder.resolve("season.xlsx"))).isEqualTo(Fixture.season());
    }

    @Test
    void aRichSeasonThroughAFolder() {
        assertThat(through(Fixture.season(), folder.resolve("season"))).isEqualTo(Fixture.season());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void randomSeasonsThroughBoth(long seed) {
        Season season = new RandomSeason(seed, 1 + (int) seed).make();
        assertThat(through(season, folder.resolve("season.xlsx"))).isEqualTo(season);
        assertThat(through(season, folder.resolve("season"))).isEqualTo(season);
    }

    /** An older book may hold words that begin like a formula: they go out as text and come in as they were. */
    @ParameterizedTest
    @ValueSource(
            strings = {"=1+1", "+1", "-x", "@SUM(A1)", "=cmd|' /C calc'!A0", "'=1", "''-2", "'quoted", "-5", "=\"a\",b"
            })
    void wordsThatBeginLikeAFormulaGoOutAsText(String words) throws IOException {
        Season season = new RandomSeason(5, 3).make();
        Season written = new Season(
                season.year(),
                season.asOf(),
                words,
                season.farms(),
                season.fields(),
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                season.work());
        assertThat(through(written, folder.resolve("season.xlsx"))).isEqualTo(written);
        assertThat(through(written, folder.resolve("season"))).isEqualTo(written);
        assertThat(Files.readString(folder.resolve("season/season.csv")).lines().skip(1))
                .allMatch(line -> line.chars().noneMatch(c -> c == '=') || line.contains("'"));
        if (!words.startsWith("'")) {
            assertThat(Files.readString(folder.resolve("season/season.csv"))).contains("'" + words.substring(0, 2));
        }
    }

    @Test
    void charactersOfAnOlderBookThatCantBeSeenGoOutAsMarks() {
        Season season = new RandomSeason(5, 3).make();
        Season written = new Season(
                season.year(),
                season.asOf(),
                "R.\u001B[2J\0 Al\nder",
                season.farms(),
                season.fields(),
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                season.work());
        for (String name : List.of("season.xlsx", "season")) {
            assertThat(through(written, folder.resolve(name)).adviser()).isEqualTo("R.␛[2J␀ Al␊der");
        }
    }

    @Test
    void nothingIsLeftBesideAWorkbook() throws IOException {
        through(Fixture.season(), folder.resolve("season.xlsx"));
        through(Fixture.season(), folder.resolve("season"));
        through(Fixture.season(), folder.resolve("season.xlsx"));
        through(Fixture.season(), folder.resolve("season"));
        assertThat(names(folder)).containsExactlyInAnyOrder("season", "season.xlsx");
        assertThat(names(folder.resolve("season")))
                .hasSize(58)
                .contains("boundaries.geojson", "features.geojson")
                .allMatch(name -> name.endsWith(".csv") || name.endsWith(".geojson"));
    }

    @Test
    void aFolderWithOtherFilesIsLeftAlone() throws IOException {
        Path other = Files.createDirectory(folder.resolve("photos"));
        Files.writeString(other.resolve("barn.jpg"), "a barn");
        assertThatThrownBy(() -> WorkbookWriter.write(Fixture.season(), other))
                .isInstanceOf(WorkbookFaults.class)
                .hasMessage(
                        "photos: found \"barn.jpg in this folder\", expected a new folder, or one that holds only a "
                                + "workbook.");
        assertThat(names(folder)).containsExactly("photos");
        assertThat(names(other)).containsExactly("barn.jpg");
    }

    @Test
    void whatCannotBeWrittenLeavesTheOldFileAsItWas() throws IOException {
        Path file = folder.resolve("season.xlsx");
        WorkbookWriter.write(Fixture.season(), file);
        byte[] before = Files.readAllBytes(file);
        Season tooDetailed = withOutlineOf(2_000);
        assertThatThrownBy(() -> WorkbookWriter.write(tooDetailed, file))
                .isInstanceOf(WorkbookFaults.class)
                .hasMessageContaining("fields, row 2, column boundary: found")
                .hasMessageContaining("no more than a spreadsheet cell holds; write this season to a folder instead");
        assertThat(file).hasBinaryContent(before);
        assertThat(names(folder)).containsExactly("season.xlsx");
        assertThat(through(tooDetailed, folder.resolve("season"))).isEqualTo(tooDetailed);
    }

    @Test
    void noFolderToWriteInto() {
        assertThatThrownBy(() -> WorkbookWriter.write(Fixture.season(), folder.resolve("no/where/season.xlsx")))
                .isInstanceOf(WorkbookFaults.class)
                .hasMessage("season.xlsx: found \"no folder to write it into\", expected a folder that exists.");
    }

    private static Season withOutlineOf(int points) {
        List<Boundary.Point> ring = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * i / points;
            ring.add(new Boundary.Point(-43.5 + 0.004 * Math.cos(angle), 42 + 0.003 * Math.sin(angle)));
        }
        ring.add(ring.get(0));
        Boundary boundary = new Boundary(List.of(new Boundary.Polygon(ring, List.of())));
        Season season = Fixture.season();
        Field old = season.fields().get(0);
        List<Field> fields = new ArrayList<>(season.fields());
        fields.set(
                0,
                new Field(
                        old.name(),
                        old.farm(),
                        Acres.inside(boundary),
                        boundary,
                        old.state(),
                        old.county(),
                        old.crop(),
                        old.texture(),
                        old.organicMatterPct(),
                        old.ph(),
                        old.slopePct()));
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms(),
                fields,
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName())).toList();
        }
    }

    private static Season through(Season season, Path path) {
        WorkbookWriter.write(season, path);
        return WorkbookReader.read(path);
    }
}
