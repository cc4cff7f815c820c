package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.advice.names.NameColumn;
import plumbrow.advice.names.Refers;
import plumbrow.advice.names.UnknownNames;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.BoundaryKind;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.ShapeKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** Every column that takes any word says what its words refer to, and a word that refers to nothing is a fault there. */
class NameColumnsTest {
    private static final String STRANGE = "Qzxv";
    /** Numbers of one or two digits: a word of letters is refused as no such number before anybody looks what it refers to. */
    private static final String STRANGE_GROUP = "77";

    /** What gives its row its name, or stands for people only, can't be wrong by itself. */
    private static final Set<Refers> FREE = EnumSet.of(
            Refers.NOTHING,
            Refers.ITSELF,
            Refers.NAMES_INSECT,
            Refers.NAMES_WEED,
            Refers.ACTIVE,
            Refers.FORMER_PERSON,
            Refers.LABEL_CROP,
            Refers.GEAR);

    @TempDir
    Path parent;

    /** Walks all sheets: a column into which any word may be written must be declared. */
    @Test
    void everyColumnOfWordsIsDeclared() {
        for (Sheet<?> sheet : Sheets.ALL) {
            for (Column<?> column : sheet.columns()) {
                boolean declared = NameColumn.find(sheet.name(), column.key()) != null;
                assertThat(declared)
                        .as(sheet.name() + "." + column.key())
                        .isEqualTo(takesWords(column.kind())
                                || (declared && column.key().equals("group")));
            }
        }
    }

    @Test
    void nothingIsDeclaredThatNoSheetHas() {
        for (NameColumn column : NameColumn.ALL) {
            assertThat(Sheets.named(column.sheet()).orElseThrow().columns())
                    .as(column.sheet())
                    .extracting(Column::key)
                    .contains(column.key());
        }
    }

    /** What the manual says of a column, that it stands in another sheet, is what is asked of it. */
    @Test
    void theManualSaysTheSame() {
        for (Sheet<?> sheet : Sheets.ALL) {
            for (Column<?> column : sheet.columns()) {
                if (column.reference() != null) {
                    NameColumn declared = Objects.requireNonNull(NameColumn.find(sheet.name(), column.key()));
                    assertThat(FREE).as(sheet.name() + "." + column.key()).doesNotContain(declared.refers());
                }
            }
        }
    }

    static Stream<NameColumn> referring() {
        return NameColumn.ALL.stream().filter(column -> !FREE.contains(column.refers()));
    }

    /** A strange word in each column that refers to something, in the first row that has a word there. */
    @ParameterizedTest
    @MethodSource("referring")
    void aStrangeWordIsAFaultWhereItStands(NameColumn column) {
        Season rich = Fixture.season();
        Season season = column.names().apply(rich).isEmpty() ? new RandomSeason(7, 4).make() : rich;
        Sheet<?> sheet = Sheets.named(column.sheet()).orElseThrow();
        List<NameColumn.Named> names = column.names().apply(season);
        if (names.isEmpty()) {
            assertThat(column.sheet()).as("all but this sheet is used").isEqualTo("tillage");
            return;
        }
        Path folder = parent.resolve("season");
        WorkbookWriter.write(season, folder);
        String strange = column.refers() == Refers.SITE_GROUP ? STRANGE_GROUP : STRANGE;
        String cell = column.key().equals("excluded_counties") ? "IA: " + strange : strange;
        CsvCells.put(folder, sheet.name(), names.get(0).row(), column.key(), cell);
        WorkbookFaults faults = catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(folder));
        assertThat(faults).isNotNull();
        assertThat(faults.faults())
                .anyMatch(fault -> fault.sheet().equals(sheet.name() + ".csv")
                        && fault.row() == names.get(0).row()
                        && fault.column().equals(column.key())
                        && fault.found().contains(strange));
    }

    /** A season may come by another door than a workbook: it is asked the same. */
    @Test
    void aSeasonIsAskedTheSame() {
        assertThat(UnknownNames.of(Fixture.season())).isEmpty();
        assertThat(UnknownNames.of(new RandomSeason(7, 4).make())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            control | 2 | pest | rootworm | did you mean western corn rootworm?
            control | 2 | pest | Western Corn Rootworm | did you mean western corn rootworm?
            traits | 2 | insect | rootworms | did you mean western corn rootworm?
            actives | 2 | ingredient | bifentrhin | did you mean bifenthrin?
            weeds | 2 | weed | waterhmep | did you mean waterhemp?
            next_crops | 2 | crop | soybaen | did you mean soybean?
            fields | 2 | county | Adans | did you mean Adams?
            """)
    void theNearestIsSuggested(String sheet, int row, String column, String word, String suggested) {
        Path folder = parent.resolve("season");
        WorkbookWriter.write(Fixture.season(), folder);
        CsvCells.put(folder, sheet, row, column, word);
        WorkbookFaults faults = catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(folder));
        assertThat(faults).isNotNull();
        assertThat(faults.faults())
                .extracting(Fault::sentence)
                .anyMatch(sentence -> sentence.startsWith(sheet + ".csv, row " + row + ", column " + column)
                        && sentence.contains("\"" + word + "\"")
                        && sentence.endsWith(suggested));
    }

    private static boolean takesWords(Kind<?> kind) {
        if (!kind.choices().isEmpty() || kind instanceof BoundaryKind || kind instanceof ShapeKind) {
            return false;
        }
        return reads(kind, STRANGE) || reads(kind, "IA: " + STRANGE);
    }

    private static boolean reads(Kind<?> kind, String word) {
        try {
            kind.read(new Cell.Written(word));
            return true;
        } catch (Misread refused) {
            return false;
        }
    }
}
