package plumbrow.documents.workbook.sheet;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.ShapeKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** What lies in and around the fields. Any row of a field says that somebody has looked it over. */
public final class SurroundingsSheet {
    public static final Column<String> FIELD = Words.field("the field");
    public static final Column<Optional<FeatureKind>> KIND = Column.of(
                    "kind",
                    new WordKind<Optional<FeatureKind>>(
                            Stream.concat(
                                            Stream.of(Optional.<FeatureKind>empty()),
                                            Arrays.stream(FeatureKind.values()).map(Optional::of))
                                    .toList(),
                            kind -> kind.map(FeatureKind::word).orElse("none")),
                    "what it is; none where somebody looked all around the field and found nothing of this list",
                    "stream")
            .need();
    static final Column<String> NAME =
            Column.of("name", TextKind.NAME, "as people here call it; needed unless kind is none", "Mill Creek");
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
            "source", TextKind.PROSE, "map, survey or who said so; needed unless kind is none", "walked, April 2026");

    public static final Sheet<Line> SHEET = Sheet.<Line>named(
                    "surroundings",
                    "Water, dwellings, bees and the like in and around each field: one row for each thing. A field "
                            + "without a row was not looked over.",
                    SurroundingsSheet::lines)
            .optional()
            .column(FIELD, Line::field)
            .column(KIND, line -> Optional.ofNullable(line.feature()).map(Feature::kind))
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
            .build(row -> new Line(row.get(FIELD), feature(row)));

    private SurroundingsSheet() {}

    /** A thing found near a field; null where somebody looked and there is none. */
    public record Line(String field, @Nullable Feature feature) {}

    private static void check(Row row, Objections objections) {
        Optional<FeatureKind> kind = row.find(KIND);
        if (kind == null) {
            return;
        }
        if (kind.isEmpty()) {
            for (Column<?> column : List.of(NAME, SHAPE, NEAREST, SOURCE)) {
                if (!row.blank(column)) {
                    objections.at(row, column, "nothing, since the kind none says that nothing was found");
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

    private static @Nullable Feature feature(Row row) {
        return row.get(KIND)
                .map(kind -> new Feature(
                        row.get(FIELD), kind, row.get(NAME), row.find(SHAPE), row.find(NEAREST), row.get(SOURCE)))
                .orElse(null);
    }

    private static List<Line> lines(Season season) {
        Ground ground = season.ground();
        Stream<Line> found = ground.features().stream().map(feature -> new Line(feature.field(), feature));
        Stream<Line> clear = ground.surveyed().stream()
                .filter(field -> ground.features(field).isEmpty())
                .map(field -> new Line(field, null));
        return Stream.concat(found, clear).toList();
    }

    /** The fields that have a row, in the order of {@code fields}. */
    static List<String> surveyed(List<Line> lines, List<String> fields) {
        Set<String> seen = new LinkedHashSet<>(fields);
        seen.retainAll(lines.stream().map(Line::field).toList());
        return List.copyOf(seen);
    }

    /** What was found. */
    static List<Feature> features(List<Line> lines) {
        return lines.stream().map(Line::feature).flatMap(Stream::ofNullable).toList();
    }
}
