package plumbrow.app.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Boundary.Polygon;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.season.Season;

/** Farms, fields with their outlines, and what they carried. */
final class FieldRows {
    static final RowKind<Farm> FARM = new RowKind<>(
            "farm",
            "name grower crop_share cost_share",
            Season::farms,
            (farm, cells) -> cells.text(farm.name())
                    .text(farm.grower())
                    .real(farm.cropShare())
                    .real(farm.costShare()),
            row -> new Farm(row.text(), row.text(), row.real(), row.real()));

    /** Fields; the outline comes with {@link #POINT}. */
    static final RowKind<Field> FIELD = new RowKind<>(
            "field",
            "name farm acres state county crop texture organic_matter_pct ph slope_pct",
            Season::fields,
            (field, cells) -> cells.text(field.name())
                    .text(field.farm())
                    .real(field.acres())
                    .text(field.state())
                    .text(field.county())
                    .word(field.crop())
                    .word(field.texture())
                    .real(field.organicMatterPct())
                    .real(field.ph())
                    .real(field.slopePct()),
            row -> new Field(
                    row.text(),
                    row.text(),
                    row.real(),
                    null,
                    row.text(),
                    row.text(),
                    row.word(Crop.class),
                    row.maybeWord(Texture.class),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal()));

    static final RowKind<Corner> POINT = new RowKind<>(
            "boundary_point",
            "field polygon ring longitude latitude",
            season -> corners(season.fields()),
            (corner, cells) -> cells.text(corner.field())
                    .whole(corner.polygon())
                    .whole(corner.ring())
                    .real(corner.point().longitude())
                    .real(corner.point().latitude()),
            row -> new Corner(row.text(), row.whole(), row.whole(), new Point(row.real(), row.real())));

    static final RowKind<CropYear> CROP_YEAR = new RowKind<>(
            "crop_year",
            "field year crop yield_bu_ac",
            Season::history,
            (year, cells) -> cells.text(year.field())
                    .whole(year.year())
                    .text(year.crop())
                    .real(year.yieldBuPerAcre()),
            row -> new CropYear(row.text(), row.whole(), row.text(), row.maybeReal()));

    /** One point of a field's outline: ring 0 of a polygon is its shell, the others are holes. */
    record Corner(String field, int polygon, int ring, Point point) {}

    private FieldRows() {}

    /** The fields with their outlines. */
    static List<Field> outlined(List<Field> fields, List<Corner> corners) {
        Map<String, List<Corner>> byField = Grouped.by(Corner::field, corners);
        return fields.stream()
                .map(field -> outlined(field, byField.get(field.name())))
                .toList();
    }

    private static Field outlined(Field field, @Nullable List<Corner> corners) {
        return new Field(
                field.name(),
                field.farm(),
                field.acres(),
                corners == null ? null : boundary(corners),
                field.state(),
                field.county(),
                field.crop(),
                field.texture(),
                field.organicMatterPct(),
                field.ph(),
                field.slopePct());
    }

    private static List<Corner> corners(List<Field> fields) {
        List<Corner> corners = new ArrayList<>();
        for (Field field : fields) {
            Boundary boundary = field.boundary();
            for (int polygon = 0;
                    boundary != null && polygon < boundary.polygons().size();
                    polygon++) {
                List<List<Point>> rings = rings(boundary.polygons().get(polygon));
                for (int ring = 0; ring < rings.size(); ring++) {
                    if (rings.get(ring).isEmpty()) {
                        throw new BookException("The outline of " + field.name() + " has a ring without points.");
                    }
                    for (Point point : rings.get(ring)) {
                        corners.add(new Corner(field.name(), polygon, ring, point));
                    }
                }
            }
        }
        return corners;
    }

    private static List<List<Point>> rings(Polygon polygon) {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(polygon.shell());
        rings.addAll(polygon.holes());
        return rings;
    }

    private static Boundary boundary(List<Corner> corners) {
        Map<Integer, Map<Integer, List<Point>>> rings = new LinkedHashMap<>();
        for (Corner corner : corners) {
            rings.computeIfAbsent(corner.polygon(), polygon -> new LinkedHashMap<>())
                    .computeIfAbsent(corner.ring(), ring -> new ArrayList<>())
                    .add(corner.point());
        }
        return new Boundary(rings.values().stream()
                .map(polygon -> List.copyOf(polygon.values()))
                .map(polygon -> new Polygon(polygon.get(0), polygon.subList(1, polygon.size())))
                .toList());
    }
}
