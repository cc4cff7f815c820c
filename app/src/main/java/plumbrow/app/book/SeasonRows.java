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
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.tank.TankBook;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.app.book.RowKind.Filled;

/** A whole season in and out of the tables. Works inside the transaction of whoever calls. */
final class SeasonRows {
    /** Every kind of row; a kind comes after those it refers to. */
    private static final List<RowKind<?>> KINDS = List.of(
            Distributions.LAW,
            Distributions.PAST,
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
            ProgramRows.PROGRAM,
            ProgramRows.PASS,
            ProgramRows.OUTLOOK,
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
            LabelRows.TOLERANCE,
            LabelRows.LIMIT,
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
            MeansRows.SUPPLY,
            TankRows.SPRAYER,
            TankRows.NOZZLE,
            TankRows.MIXING,
            TankRows.WATER,
            TankRows.ADDITION,
            TankRows.HOUR_LIMIT);

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

    /** Takes a season out; the log, choices and the history of its changes stay. */
    void remove(int year) {
        List<RowKind<?>> children = new ArrayList<>(KINDS);
        Collections.reverse(children);
        children.forEach(kind -> sql.update(kind.delete(), year));
        sql.update("DELETE FROM season_seal WHERE season = ?", year);
        sql.update("DELETE FROM season WHERE season = ?", year);
        touch();
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
        touch();
    }

    /** Makes {@link #version} another one. */
    void touch() {
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
                    || (SELECT count(*) FROM log_pass) || ' '
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
        Distributions distributions = new Distributions();
        List<Filled> rows = new ArrayList<>();
        KINDS.stream().skip(2).forEach(kind -> rows.add(kind.fill(season, distributions)));
        rows.add(0, Distributions.LAW.fill(season.year(), distributions.shapes(), distributions));
        rows.add(1, Distributions.PAST.fill(season.year(), distributions.pastValues(), distributions));
        return rows;
    }

    private Season read(int year, Head head) {
        Distributions none = new Distributions();
        Distributions distributions =
                Distributions.of(all(Distributions.LAW, year, none), all(Distributions.PAST, year, none));
        Shelf shelf = new Shelf(
                ShelfRows.placed(
                        all(ShelfRows.PRODUCT, year, distributions),
                        all(ShelfRows.STATE, year, distributions),
                        all(ShelfRows.COUNTY, year, distributions)),
                SeedRows.withTraits(
                        all(SeedRows.SEED, year, distributions), all(SeedRows.SEED_TRAIT, year, distributions)),
                all(ShelfRows.TRAIT, year, distributions),
                all(ShelfRows.ACTIVE, year, distributions),
                all(ShelfRows.LABEL_USE, year, distributions),
                all(ShelfRows.ACTIVE_LIMIT, year, distributions),
                all(ShelfRows.CONTROL, year, distributions),
                labels(year, distributions));
        Pests pests = new Pests(
                all(PestRows.INSECT, year, distributions),
                all(PestRows.TRAIT_DOUBT, year, distributions),
                all(PestRows.WEED, year, distributions),
                all(PestRows.RESISTANCE, year, distributions),
                weedBook(year, distributions));
        List<Field> fields = FieldRows.outlined(
                all(FieldRows.FIELD, year, distributions), all(FieldRows.POINT, year, distributions));
        List<Program> programs = ProgramRows.withPasses(
                all(ProgramRows.PROGRAM, year, distributions), all(ProgramRows.PASS, year, distributions));
        return new Season(
                year,
                head.asOf(),
                head.adviser(),
                all(FieldRows.FARM, year, distributions),
                fields,
                all(FieldRows.CROP_YEAR, year, distributions),
                shelf,
                pests,
                programs,
                all(ProgramRows.OUTLOOK, year, distributions),
                ground(year, distributions),
                work(year, fields, programs, distributions));
    }

    private WeedBook weedBook(int year, Distributions distributions) {
        return new WeedBook(
                all(WeedRows.CLIMATE, year, distributions),
                all(WeedRows.DAY, year, distributions),
                all(WeedRows.CROP, year, distributions),
                all(WeedRows.LIKE, year, distributions),
                all(WeedRows.RATING, year, distributions),
                all(WeedRows.TILLAGE, year, distributions),
                all(WeedRows.FLOOR, year, distributions));
    }

    private LabelBook labels(int year, Distributions distributions) {
        return new LabelBook(
                LabelRows.withMethods(
                        all(LabelRows.TERMS, year, distributions), all(LabelRows.METHOD, year, distributions)),
                LabelRows.withTextures(
                        all(LabelRows.SOIL_RATE, year, distributions), all(LabelRows.TEXTURE, year, distributions)),
                all(LabelRows.SETBACK, year, distributions),
                all(LabelRows.PLANT_BACK, year, distributions),
                all(LabelRows.MIX_RULE, year, distributions),
                SpecialLabelRows.withCounties(
                        all(SpecialLabelRows.SPECIAL_LABEL, year, distributions),
                        all(SpecialLabelRows.COUNTY, year, distributions)),
                CareRows.withWear(all(CareRows.CARE, year, distributions), all(CareRows.WEAR, year, distributions)),
                all(LabelRows.TOLERANCE, year, distributions),
                all(LabelRows.LIMIT, year, distributions));
    }

    private Ground ground(int year, Distributions distributions) {
        return new Ground(
                all(GroundRows.LOOKED, year, distributions),
                GroundRows.shaped(
                        all(GroundRows.FEATURE, year, distributions), all(GroundRows.POINT, year, distributions)),
                all(GroundRows.ALSO_IN, year, distributions),
                all(GroundRows.NEXT_CROP, year, distributions));
    }

    /** A line as the season can read it: that it was a pass which the season no longer has says nothing. */
    private static Done known(Done line, List<Program> programs) {
        MeantPass meant = line.meant();
        boolean there = meant == null
                || meant.none()
                || programs.stream()
                        .filter(program -> program.field().equals(line.field())
                                && program.name().equals(meant.program()))
                        .flatMap(program -> program.passes().stream())
                        .anyMatch(pass ->
                                pass.number() == meant.pass() && line.product().equals(pass.product()));
        return there ? line : line.meaning(null);
    }

    private Work work(int year, List<Field> fields, List<Program> programs, Distributions distributions) {
        return new Work(
                all(WorkRows.SPRAY_PLAN, year, distributions),
                WorkRows.crew(
                        all(WorkRows.PERSON, year, distributions),
                        all(WorkRows.CREW, year, distributions),
                        all(WorkRows.GEAR, year, distributions)),
                new LogRows(client)
                        .effective(year, fields).stream()
                                .map(line -> known(line, programs))
                                .toList(),
                new Means(
                        all(MeansRows.MACHINE, year, distributions),
                        all(MeansRows.WINDOW, year, distributions),
                        all(MeansRows.LIMIT, year, distributions),
                        all(MeansRows.BREAK, year, distributions),
                        all(MeansRows.SUPPLY, year, distributions),
                        tank(year, distributions)),
                all(WorkRows.STAND_COUNT, year, distributions));
    }

    private TankBook tank(int year, Distributions distributions) {
        return new TankBook(
                all(TankRows.SPRAYER, year, distributions),
                all(TankRows.NOZZLE, year, distributions),
                all(TankRows.MIXING, year, distributions),
                all(TankRows.WATER, year, distributions),
                all(TankRows.ADDITION, year, distributions),
                all(TankRows.HOUR_LIMIT, year, distributions));
    }

    private <R> List<R> all(RowKind<R> kind, int year, Distributions distributions) {
        return sql.query(kind.select(), (cells, number) -> kind.read().read(new Row(cells, distributions)), year);
    }
}
