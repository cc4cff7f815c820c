package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteDataSource;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Looked;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedTag;
import plumbrow.advice.shelf.Shelf;
import plumbrow.app.RandomSeason;
import plumbrow.app.SmallSeason;

/** A book of the first form, made by its own script, is brought up to date when it is opened and loses nothing. */
class OlderBookTest {
    private static final Choice CHOICE = new Choice(
            2027, "North 80", "half rate", "R. Alder", Instant.parse("2027-04-02T06:31:07Z"), "why not", 0.7, 512.25);

    @TempDir
    Path folder;

    private Path old = Path.of("");

    /** Today's book lends the rows; the first script alone makes the tables they are copied into. */
    @BeforeEach
    void make() throws SQLException {
        Path lender = folder.resolve("lender.book");
        try (Book book = Book.create(lender)) {
            book.put(SmallSeason.of(2027));
            book.put(asOfOld(RandomSeason.of(2028, 5)));
            book.choose(CHOICE);
        }
        old = folder.resolve("old.book");
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + old);
        Flyway.configure(getClass().getClassLoader())
                .dataSource(source)
                .locations("classpath:db/migration/sqlite")
                .target("1")
                .load()
                .migrate();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + old);
                Statement statement = connection.createStatement()) {
            statement.execute("ATTACH DATABASE '" + lender + "' AS lender");
            for (String table : tables(statement)) {
                String columns = columns(statement, table);
                boolean record = table.equals("choice");
                statement.execute("INSERT INTO main." + table + " (" + columns + ") SELECT "
                        + (record ? columns : today(columns)) + " FROM lender." + today(table));
            }
        }
    }

    /** The form of the book that had the log in its seasons, and took a field with one thing noted as looked over. */
    @Test
    void theLogOfSeasonsBecomesOneLog() throws SQLException {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + old);
        Flyway.configure(getClass().getClassLoader())
                .dataSource(source)
                .locations("classpath:db/migration/sqlite")
                .target("2")
                .load()
                .migrate();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + old);
                Statement statement = connection.createStatement()) {
            String product = SmallSeason.of(2027).shelf().products().get(0).name();
            statement.execute("INSERT INTO done VALUES "
                    + List.of(1, 2).stream()
                            .map(position -> "(2027, " + position + ", 'North 80', '2027-05-01', '" + product
                                    + "', 1.5, 'lb', 100, NULL, 'log book')")
                            .collect(Collectors.joining(", ")));
            statement.execute("INSERT INTO surveyed_field VALUES (2027, 1, 'North 80')");
        }
        try (Book book = Book.open(old)) {
            assertThat(book.log())
                    .hasSize(2)
                    .allSatisfy(line -> assertThat(line.writtenAt()).isNull());
            Season season = book.season(2027).orElseThrow();
            assertThat(season.work().log())
                    .hasSize(2)
                    .allMatch(done -> done.rate().value() == 1.5);
            assertThat(season.ground().looked()).containsExactly(new Looked("North 80", null));
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void itStandsAtTheFirstStep() throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + old);
                Statement statement = connection.createStatement()) {
            assertThat(tables(statement))
                    .hasSize(24)
                    .contains("season", "choice", "pass")
                    .doesNotContain("use_terms");
        }
    }

    @Test
    void itKeepsItsSeasonsAndChoices() {
        try (Book book = Book.open(old)) {
            assertThat(book.seasons()).containsExactly(2027, 2028);
            assertThat(book.season(2027)).contains(asOfOld(SmallSeason.of(2027)));
            assertThat(book.season(2028)).contains(asOfOld(RandomSeason.of(2028, 5)));
            assertThat(book.choices(2027)).containsExactly(CHOICE);
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void whatWasNeverAskedIsUnknown() {
        try (Book book = Book.open(old)) {
            Season season = book.season(2027).orElseThrow();
            assertThat(season.ground()).isEqualTo(Ground.UNKNOWN);
            assertThat(season.work()).isEqualTo(Work.NONE);
        }
    }

    @Test
    void itTakesWhatANewBookTakes() {
        Season full = RandomSeason.of(2027, 9);
        try (Book book = Book.open(old)) {
            book.put(full);
            assertThat(book.season(2027)).contains(full);
            assertThat(book.choices(2027)).containsExactly(CHOICE);
            assertThat(book.check()).isEmpty();
        }
    }

    private static List<String> tables(Statement statement) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet names = statement.executeQuery(
                "SELECT name FROM main.sqlite_master WHERE type = 'table' AND name NOT LIKE 'flyway%'")) {
            while (names.next()) {
                tables.add(names.getString(1));
            }
        }
        return tables;
    }

    /** Today's names of tables and columns that were called otherwise; the record of choices keeps its own. */
    private static String today(String names) {
        return names.replaceAll("\\bcourse\\b", "program")
                .replaceAll("\\blaw(?=\\b|_)", "distribution")
                .replaceAll("_law\\b", "_distribution")
                .replaceAll("\\boutlook\\b", "assumptions");
    }

    /** Columns of the older book's table, some of which a newer book has more of. */
    private static String columns(Statement statement, String table) throws SQLException {
        try (ResultSet names = statement.executeQuery(
                "SELECT group_concat(name, ', ') FROM pragma_table_info('" + table + "', 'main')")) {
            return names.getString(1);
        }
    }

    private static Season asOfOld(Season season) {
        Shelf shelf = season.shelf();
        Pests pests = season.pests();
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms().stream()
                        .map(farm -> new Farm(farm.name(), farm.grower(), farm.cropShare(), farm.costShare()))
                        .toList(),
                season.fields(),
                season.history().stream()
                        .map(year -> new CropYear(year.field(), year.year(), year.crop(), year.yieldBuPerAcre()))
                        .toList(),
                new Shelf(
                        shelf.products(),
                        shelf.seeds().stream().map(OlderBookTest::neverCameUp).toList(),
                        shelf.traits(),
                        shelf.actives(),
                        shelf.labelUses(),
                        shelf.activeLimits(),
                        shelf.controls()),
                new Pests(
                        pests.insects(),
                        pests.traitDoubts(),
                        pests.weeds().stream()
                                .map(weed -> new WeedPressure(
                                        weed.field(),
                                        weed.weed(),
                                        weed.densityPerSquareMetre(),
                                        weed.firstPlantLossPct(),
                                        weed.mostLossPct(),
                                        weed.source()))
                                .toList()),
                season.programs().stream().map(OlderBookTest::inAnyCase).toList(),
                season.assumptions());
    }

    /** A program whose passes could not wait for scouting yet. */
    private static Program inAnyCase(Program program) {
        return new Program(
                program.field(),
                program.name(),
                program.baseline(),
                program.refuge(),
                program.note(),
                program.passes().stream().map(pass -> pass.waitingFor(null)).toList());
    }

    /** A seed of which nobody could enter how it comes up. */
    private static Seed neverCameUp(Seed seed) {
        return new Seed(
                seed.product(),
                seed.crop(),
                seed.seedsPerUnit(),
                seed.seedsPerPound(),
                seed.germinationPct(),
                null,
                seed.traits(),
                seed.blendRefugePct(),
                seed.rule(),
                seed.gainBuPerAcre(),
                seed.standPct(),
                seed.saved(),
                seed.rights(),
                SeedTag.UNREAD);
    }
}
