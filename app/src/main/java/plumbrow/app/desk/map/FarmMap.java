package plumbrow.app.desk.map;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.json.LandSummary;
import plumbrow.documents.picture.Chart;

/**
 * The fields of one farm on one drawing.
 *
 * @param chart null where none of them has an outline
 */
public record FarmMap(
        Farm farm,
        List<Field> fields,
        List<LandSummary> land,
        @Nullable Chart chart) {
    private static final double LINE_UNITS = 28;
    /** About the width of a letter of a name. */
    private static final double LETTER_UNITS = 15;

    /** A name on the drawing. */
    public record Label(String text, double x, double y) {
        boolean meets(Label other) {
            double wide = LETTER_UNITS * (x < other.x ? text : other.text).length();
            return Math.abs(x - other.x) < wide && Math.abs(y - other.y) < LINE_UNITS;
        }

        Label lower() {
            return new Label(text, x, y + LINE_UNITS);
        }
    }

    /** The names of the outlined fields, each below its first corner or as far under it as there is room. */
    public List<Label> labels() {
        Chart on = chart;
        List<Label> placed = new ArrayList<>();
        for (Field field : fields) {
            Boundary outline = field.boundary();
            if (on != null && outline != null) {
                Point corner = outline.polygons().get(0).shell().get(0);
                double rightmost =
                        Math.max(0, on.width() - LETTER_UNITS * field.name().length());
                Label label = new Label(field.name(), Math.min(on.x(corner), rightmost), on.y(corner) + LINE_UNITS);
                while (placed.stream().anyMatch(label::meets)) {
                    label = label.lower();
                }
                placed.add(label);
            }
        }
        return List.copyOf(placed);
    }

    static FarmMap of(Season season, Farm farm) {
        List<Field> fields = season.fields().stream()
                .filter(field -> field.farm().equals(farm.name()))
                .toList();
        List<Point> points = fields.stream()
                .flatMap(field -> Stream.ofNullable(field.boundary()))
                .flatMap(Chart::points)
                .toList();
        return new FarmMap(
                farm,
                fields,
                fields.stream().map(field -> LandSummary.of(season, field)).toList(),
                points.isEmpty() ? null : Chart.of(points));
    }
}
