package plumbrow.app.json;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.gates.Finding;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Range;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** How values that are not plain records look in JSON. */
final class JsonShapes {
    private JsonShapes() {}

    static SimpleModule module() {
        SimpleModule module = new SimpleModule("plumbrow");
        module.addSerializer(as(Enum.class, JsonWords::of));
        module.addSerializer(as(Range.class, Range::words));
        module.addSerializer(as(Boundary.class, JsonShapes::geometry));
        module.setMixInAnnotation(Distribution.class, DistributionShape.class);
        module.setMixInAnnotation(Figure.class, FigureShape.class);
        module.setMixInAnnotation(Finding.class, FindingShape.class);
        return module;
    }

    /** A distribution names its form: {@code {"form": "pert", "low": 1, "likely": 2, "high": 4}}. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, include = JsonTypeInfo.As.PROPERTY, property = "form")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Distribution.Fixed.class, name = "number"),
        @JsonSubTypes.Type(value = Distribution.Pert.class, name = "pert"),
        @JsonSubTypes.Type(value = Distribution.Triangular.class, name = "triangular"),
        @JsonSubTypes.Type(value = Distribution.Even.class, name = "even"),
        @JsonSubTypes.Type(value = Distribution.Normal.class, name = "normal"),
        @JsonSubTypes.Type(value = Distribution.Weibull.class, name = "weibull"),
        @JsonSubTypes.Type(value = Distribution.Lognormal.class, name = "price"),
        @JsonSubTypes.Type(value = Distribution.Factor.class, name = "factor"),
        @JsonSubTypes.Type(value = Distribution.LogOdds.class, name = "log-odds"),
        @JsonSubTypes.Type(value = Distribution.Past.class, name = "past"),
        @JsonSubTypes.Type(value = Distribution.Chance.class, name = "chance")
    })
    private interface DistributionShape {}

    /** The model is code, and the examples are tests. */
    @JsonIgnoreProperties({"model", "examples"})
    private interface FigureShape {}

    /** How far the value found lies from the limit stands beside both. */
    private interface FindingShape {
        @JsonProperty
        OptionalDouble distance();
    }

    private record Geometry(String type, List<List<List<double[]>>> coordinates) {}

    /** A boundary as GeoJSON, RFC 7946. */
    private static Geometry geometry(Boundary boundary) {
        List<List<List<double[]>>> polygons = new ArrayList<>();
        for (Boundary.Polygon polygon : boundary.polygons()) {
            List<List<double[]>> rings = new ArrayList<>();
            rings.add(positions(polygon.shell()));
            polygon.holes().forEach(hole -> rings.add(positions(hole)));
            polygons.add(rings);
        }
        return new Geometry("MultiPolygon", polygons);
    }

    private static List<double[]> positions(List<Point> ring) {
        return ring.stream()
                .map(point -> new double[] {point.longitude(), point.latitude()})
                .toList();
    }

    private static <T> StdSerializer<T> as(Class<T> type, Function<? super T, Object> shape) {
        return new StdSerializer<>(type) {
            @Override
            public void serialize(T value, JsonGenerator json, SerializationContext context) {
                context.writeValue(json, shape.apply(value));
            }
        };
    }
}
