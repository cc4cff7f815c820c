package plumbrow.app.desk.map;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.json.LandSummary;

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
