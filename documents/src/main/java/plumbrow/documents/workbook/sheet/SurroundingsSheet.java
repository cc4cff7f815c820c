package plumbrow.documents.workbook.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Looked;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.ShapeKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/**
 * What lies in and around the fields, and what somebody looked for there. A thing found does not say that somebody looked
 * for more: that stands in a row of its own.
 */
public final class SurroundingsSheet {
    public static final Column<String> FIELD = Words.field("the field");
    public static final Column<What> KIND = Column.of(
                    "kind",
                    new WordKind<What>(What.ALL, What::word, What.FOUND),
                    "what it is; none where somebody looked for everything of this list and found nothing else; no stream, "
                            + "no dwelling and so on where he looked for that and found no other",
                    "stream")
            .need();
    static final Column<String> NAME =
            Column.of("name", TextKind.NAME, "as people here call it; needed for a thing found", "Mill Creek");
    static final Column<Shape> SHAPE = Column.of(
                    "shape",
                    new ShapeKind(),
                    "where it lies as a GeoJSON geometry, WGS 84; in a folder it stands in features.geojson instead",
                    "{\"type\":\"LineString\",\"coordinates\":[[-93.6,42.0],[-93.59,42.004]]}")
            .blankMeans("not on file");
    static final Column<Double> NEAREST = Column.of(
                    "nearest_ft",
                    NumberKind.between(0, 100_000),
                    "least distance from the field's edge, 0 inside or touching; needed where there is no shape",
                    "40")
            .in("ft")
            .blankMeans("not measured");
    static final Column<String> SOURCE = Column.of(
            "source", TextKind.PROSE, "map, survey or who said so; needed for a thing found", "walked, April 2026");

    public static final Sheet<Line> SHEET = Sheet.<Line>named(
                    "surroundings",
                    "Water, dwellings, bees and the like in and around each field: one row for each thing, and one row of "
                            + "kind none once somebody has looked all around. Without it nobody has looked for the rest.",
                    SurroundingsSheet::lines)
            .optional()
            .column(FIELD, Line::field)
            .column(KIND, Line::what)
            .column(NAME, line -> line.feature() == null ? null : line.feature().name())
            .column(
                    SHAPE,
                    line -> line.feature() == null ? null : line.feature().shape())
            .column(
                    NEAREST,
                    line -> line.feature() == null ? null : line.feature().nearestFt())
            .column(
                    SOURCE,
                    line -> line.feature() == null ? null : line.feature().source())
            .once(FIELD, KIND, NAME)
            .check(SurroundingsSheet::check)
            .build(SurroundingsSheet::line);

    private SurroundingsSheet() {}

    /**
     * What a row speaks of: a thing found, or what was looked for without finding more.
     *
     * @param kind null for everything
     */
    public record What(boolean found, @Nullable FeatureKind kind) {
        private static final What NOTHING_ELSE = new What(false, null);
        private static final List<What> ALL = Stream.of(
                        Stream.of(NOTHING_ELSE),
                        Arrays.stream(FeatureKind.values()).map(kind -> new What(true, kind)),
                        Arrays.stream(FeatureKind.values()).map(kind -> new What(false, kind)))
                .flatMap(what -> what)
                .toList();

        private static final Storage.Plain<FeatureKind> KIND = Storage.word(FeatureKind.class);

        /** As a database holds what was looked for; a blank is for everything. */
        public static final Storage.Plain<What> LOOKED_FOR = stored(false, NOTHING_ELSE);

        /** As a database holds what was found. */
        public static final Storage.Plain<What> FOUND = stored(true, null);

        private static Storage.Plain<What> stored(boolean found, @Nullable What ofBlank) {
            return new Storage.Plain<>(
                    Storage.Type.TEXT,
                    what -> what.kind() == null ? null : KIND.put().apply(what.kind()),
                    kind -> new What(found, KIND.take().apply(kind)),
                    ofBlank);
        }

        private String word() {
            return kind == null ? "none" : found ? kind.word() : "no " + kind.word();
        }
    }

    /** A thing found near a field, or what was looked for there: one of the two is null. */
    public record Line(@Nullable Feature feature, @Nullable Looked looked) {
        private String field() {
            return feature == null ? Objects.requireNonNull(looked).field() : feature.field();
        }

        private What what() {
            return feature == null
                    ? new What(false, Objects.requireNonNull(looked).kind())
                    : new What(true, feature.kind());
        }
    }

    private static void check(Row row, Objections objections) {
        What what = row.find(KIND);
        if (what == null) {
            return;
        }
        if (!what.found()) {
            for (Column<?> column : List.of(NAME, SHAPE, NEAREST, SOURCE)) {
                if (!row.blank(column)) {
                    objections.at(
                            row, column, "nothing, since the kind " + what.word() + " says that nothing was found");
                }
            }
            return;
        }
        for (Column<?> column : List.of(NAME, SOURCE)) {
            if (row.blank(column)) {
                objections.at(row, column, column.kind().words());
            }
        }
        if (row.blank(SHAPE) && row.blank(NEAREST)) {
            objections.at(row, NEAREST, NEAREST.kind().words() + ", since there is no shape");
        }
    }

    private static Line line(Row row) {
        String field = row.get(FIELD);
        What what = row.get(KIND);
        FeatureKind kind = what.kind();
        return what.found() && kind != null
                ? new Line(
                        new Feature(field, kind, row.get(NAME), row.find(SHAPE), row.find(NEAREST), row.get(SOURCE)),
                        null)
                : new Line(null, new Looked(field, kind));
    }

    private static List<Line> lines(Season season) {
        Ground ground = season.ground();
        return Stream.concat(
                        ground.features().stream().map(feature -> new Line(feature, null)),
                        ground.looked().stream().map(looked -> new Line(null, looked)))
                .toList();
    }

    /** What was looked for. */
    static List<Looked> looked(List<Line> lines) {
        return lines.stream().map(Line::looked).flatMap(Stream::ofNullable).toList();
    }

    /** What was found. */
    static List<Feature> features(List<Line> lines) {
        return lines.stream().map(Line::feature).flatMap(Stream::ofNullable).toList();
    }
}
