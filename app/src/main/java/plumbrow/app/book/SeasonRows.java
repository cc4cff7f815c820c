package plumbrow.app.book;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.springframework.jdbc.core.JdbcOperations;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.field.Field;
import plumbrow.advice.means.Means;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.app.book.RowKind.Filled;

/** A whole season in and out of the tables. Works inside the transaction of whoever calls. */
final class SeasonRows {
    /** Every kind of row; a kind comes after those it refers to. */
    private static final List<RowKind<?>> KINDS = List.of(
            Laws.LAW,
            Laws.PAST,
            FieldRows.FARM,
            FieldRows.FIELD,
            FieldRows.POINT,
            FieldRows.CROP_YEAR,
            ShelfRows.PRODUCT,
            ShelfRows.STATE,
            ShelfRows.COUNTY,
            SeedRows.SEED,
            SeedRows.SEED_TRAIT,
            ShelfRows.TRAIT,
            ShelfRows.ACTIVE,
            ShelfRows.LABEL_USE,
            ShelfRows.ACTIVE_LIMIT,
            ShelfRows.CONTROL,
            PestRows.INSECT,
            PestRows.TRAIT_DOUBT,
            PestRows.WEED,
            CourseRows.COURSE,
            CourseRows.PASS,
            CourseRows.OUTLOOK,
            LabelRows.TERMS,
            LabelRows.METHOD,
            LabelRows.SOIL_RATE,
            LabelRows.TEXTURE,
            LabelRows.SETBACK,
            LabelRows.PLANT_BACK,
            LabelRows.MIX_RULE,
            SpecialLabelRows.SPECIAL_LABEL,
            SpecialLabelRows.COUNTY,
            CareRows.CARE,
            CareRows.WEAR,
            GroundRows.LOOKED,
            GroundRows.FEATURE,
            GroundRows.POINT,
            GroundRows.ALSO_IN,
            GroundRows.NEXT_CROP,
            PestRows.RESISTANCE,
            WorkRows.PERSON,
            WorkRows.CREW,
            WorkRows.GEAR,
            WorkRows.SPRAY_PLAN,
            WorkRows.STAND_COUNT,
            WeedRows.CLIMATE,
            WeedRows.DAY,
            WeedRows.CROP,
            WeedRows.LIKE,
            WeedRows.RATING,
            WeedRows.TILLAGE,
            WeedRows.FLOOR,
            MeansRows.MACHINE,
            MeansRows.WINDOW,
            MeansRows.LIMIT,
            MeansRows.BREAK,
            MeansRows.SUPPLY);

    private final JdbcOperations sql;
    private final JdbcClient client;

    SeasonRows(JdbcOperations sql) {
        this.sql = sql;
        this.client = JdbcClient.create(sql);
    }

    List<Integer> years() {
        return client.sql("SELECT season FROM season ORDER BY season")
                .query(Integer.class)
                .list();
    }

    /** Puts a season in the place of whatever stands for its year; its log is merged apart, by {@link LogRows}. */
    void replace(Season season) {
        List<Filled> rows = filled(season);
        List<RowKind<?>> children = new ArrayList<>(KINDS);
        Collections.reverse(children);
        children.forEach(kind -> sql.update(kind.delete(), season.year()));
        sql.update("DELETE FROM season WHERE season = ?", season.year());
        sql.update(
                "INSERT INTO season (season, as_of, adviser) VALUES (?, ?, ?)",
                season.year(),
                season.asOf().toString(),
                season.adviser());
        rows.forEach(filled -> sql.batchUpdate(filled.kind().insert(), filled.cells()));
        seal(season.year());
        Integer version = sql.queryForObject("PRAGMA user_version", Integer.class);
        sql.execute("PRAGMA user_version = " + ((version == null ? 0 : version) + 1 & Integer.MAX_VALUE));
    }

    /** Takes the season's tables, as they are, for what was put in. */
    void seal(int year) {
        client.sql("DELETE FROM season_seal WHERE season = ?").param(year).update();
        seals(year)
                .forEach((part, sum) -> client.sql("INSERT INTO season_seal (season, part, sha256) VALUES (?, ?, ?)")
                        .params(year, part, sum)
                        .update());
    }

    /** The tables of a season that are no longer as they were put in, a sentence each. */
    List<String> unsealed(int year) {
        Map<String, String> then = new TreeMap<>();
        client.sql("SELECT part, sha256 FROM season_seal WHERE season = ?")
                .param(year)
                .query((row, number) -> then.put(row.getString(1), row.getString(2)))
                .list();
        Map<String, String> now = seals(year);
        Set<String> parts = new TreeSet<>(then.keySet());
        parts.addAll(now.keySet());
        return parts.stream()
                .filter(part -> !Objects.equals(then.get(part), now.get(part)))
                .map(part -> "Season " + year + " is no longer as it was put in: its table " + part.replace('_', ' ')
                        + " was changed by something else than Plumbrow.")
                .toList();
    }

    /** A checksum for each table in which the season has rows: of the cells that are not blank, each with its column's name. */
    private Map<String, String> seals(int year) {
        Map<String, String> seals = new TreeMap<>();
        client.sql("SELECT as_of, adviser FROM season WHERE season = ?")
                .param(year)
                .query((row, number) -> seals.put("season", sum(row.getString(1) + "\n" + row.getString(2))))
                .list();
        for (RowKind<?> kind : KINDS) {
            StringBuilder text = new StringBuilder();
            sql.query(
                    kind.selectAll(),
                    (ResultSet row) -> {
                        for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
                            Object cell = row.getObject(column);
                            if (cell != null) {
                                text.append(row.getMetaData().getColumnName(column))
                                        .append('=')
                                        .append(
                                                cell instanceof Number number
                                                        ? Double.toHexString(number.doubleValue())
                                                        : cell.toString()
                                                                .replace("\\", "\\\\")
                                                                .replace("\n", "\\n"))
                                        .append('\n');
                            }
                        }
                        text.append('\n');
                    },
                    year);
            if (text.length() > 0) {
                seals.merge(kind.table(), sum(text.toString()), (one, other) -> sum(one + other));
            }
        }
        return seals;
    }

    private static String sum(String text) {
        return PaperRows.sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * What is another text after every change of what the latest season says: seasons put in, lines of the log, papers and
     * what was decided about labels.
     */
    String version() {
        return String.valueOf(sql.queryForObject("""
                SELECT (SELECT user_version FROM pragma_user_version) || ' '
                    || (SELECT coalesce(max(season), 0) FROM season) || ' '
                    || (SELECT count(*) FROM log_line) || ' ' || (SELECT count(*) FROM log_strike) || ' '
                    || (SELECT count(*) FROM label_decision) || ' ' || (SELECT count(*) FROM paper)""", String.class));
    }

    Optional<Season> season(int year) {
        return client.sql("SELECT as_of, adviser FROM season WHERE season = ?")
                .param(year)
                .query((cells, number) -> new Head(LocalDate.parse(cells.getString(1)), cells.getString(2)))
                .optional()
                .map(head -> read(year, head));
    }

    /** Whether the season, written again, would give the rows that stand there; a sentence for each table that differs. */
    List<String> lostInReading(Season season) {
        List<String> lost = new ArrayList<>();
        for (Filled filled : filled(season)) {
            List<List<Object>> stored =
                    sql.query(filled.kind().selectAll(), (cells, number) -> RawRow.of(cells), season.year());
            if (!stored.equals(filled.cells().stream().map(RawRow::of).toList())) {
                lost.add("Season " + season.year() + " reads back otherwise than it stands in the table "
                        + filled.kind().table() + ".");
            }
        }
        return lost;
    }

    private record Head(LocalDate asOf, String adviser) {}

    private static List<Filled> filled(Season season) {
        Laws laws = new Laws();
        List<Filled> rows = new ArrayList<>();
        KINDS.stream().skip(2).forEach(kind -> rows.add(kind.fill(season, laws)));
        rows.add(0, Laws.LAW.fill(season.year(), laws.shapes(), laws));
        rows.add(1, Laws.PAST.fill(season.year(), laws.pastValues(), laws));
        return rows;
    }

    private Season read(int year, Head head) {
        Laws none = new Laws();
        Laws laws = Laws.of(all(Laws.LAW, year, none), all(Laws.PAST, year, none));
        Shelf shelf = new Shelf(
                ShelfRows.placed(
                        all(ShelfRows.PRODUCT, year, laws),
                        all(ShelfRows.STATE, year, laws),
                        all(ShelfRows.COUNTY, year, laws)),
                SeedRows.withTraits(all(SeedRows.SEED, year, laws), all(SeedRows.SEED_TRAIT, year, laws)),
                all(ShelfRows.TRAIT, year, laws),
                all(ShelfRows.ACTIVE, year, laws),
                all(ShelfRows.LABEL_USE, year, laws),
                all(ShelfRows.ACTIVE_LIMIT, year, laws),
                all(ShelfRows.CONTROL, year, laws),
                labels(year, laws));
        Pests pests = new Pests(
                all(PestRows.INSECT, year, laws),
                all(PestRows.TRAIT_DOUBT, year, laws),
                all(PestRows.WEED, year, laws),
                all(PestRows.RESISTANCE, year, laws),
                weedBook(year, laws));
        List<Field> fields = FieldRows.outlined(all(FieldRows.FIELD, year, laws), all(FieldRows.POINT, year, laws));
        return new Season(
                year,
                head.asOf(),
                head.adviser(),
                all(FieldRows.FARM, year, laws),
                fields,
                all(FieldRows.CROP_YEAR, year, laws),
                shelf,
                pests,
                CourseRows.withPasses(all(CourseRows.COURSE, year, laws), all(CourseRows.PASS, year, laws)),
                all(CourseRows.OUTLOOK, year, laws),
                ground(year, laws),
                work(year, fields, laws));
    }

    private WeedBook weedBook(int year, Laws laws) {
        return new WeedBook(
                all(WeedRows.CLIMATE, year, laws),
                all(WeedRows.DAY, year, laws),
                all(WeedRows.CROP, year, laws),
                all(WeedRows.LIKE, year, laws),
                all(WeedRows.RATING, year, laws),
                all(WeedRows.TILLAGE, year, laws),
                all(WeedRows.FLOOR, year, laws));
    }

    private LabelBook labels(int year, Laws laws) {
        return new LabelBook(
                LabelRows.withMethods(all(LabelRows.TERMS, year, laws), all(LabelRows.METHOD, year, laws)),
                LabelRows.withTextures(all(LabelRows.SOIL_RATE, year, laws), all(LabelRows.TEXTURE, year, laws)),
                all(LabelRows.SETBACK, year, laws),
                all(LabelRows.PLANT_BACK, year, laws),
                all(LabelRows.MIX_RULE, year, laws),
                SpecialLabelRows.withCounties(
                        all(SpecialLabelRows.SPECIAL_LABEL, year, laws), all(SpecialLabelRows.COUNTY, year, laws)),
                CareRows.withWear(all(CareRows.CARE, year, laws), all(CareRows.WEAR, year, laws)));
    }

    private Ground ground(int year, Laws laws) {
        return new Ground(
                all(GroundRows.LOOKED, year, laws),
                GroundRows.shaped(all(GroundRows.FEATURE, year, laws), all(GroundRows.POINT, year, laws)),
                all(GroundRows.ALSO_IN, year, laws),
                all(GroundRows.NEXT_CROP, year, laws));
    }

    private Work work(int year, List<Field> fields, Laws laws) {
        return new Work(
                all(WorkRows.SPRAY_PLAN, year, laws),
                WorkRows.crew(
                        all(WorkRows.PERSON, year, laws),
                        all(WorkRows.CREW, year, laws),
                        all(WorkRows.GEAR, year, laws)),
                new LogRows(client).effective(year, fields),
                new Means(
                        all(MeansRows.MACHINE, year, laws),
                        all(MeansRows.WINDOW, year, laws),
                        all(MeansRows.LIMIT, year, laws),
                        all(MeansRows.BREAK, year, laws),
                        all(MeansRows.SUPPLY, year, laws)),
                all(WorkRows.STAND_COUNT, year, laws));
    }

    private <R> List<R> all(RowKind<R> kind, int year, Laws laws) {
        return sql.query(kind.select(), (cells, number) -> kind.read().read(new Row(cells, laws)), year);
    }
}
