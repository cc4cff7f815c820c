package plumbrow.documents.picture;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.land.Zone;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.science.figure.Numbers;

/**
 * A small map of a field plan, north up: the outline, what distance is kept from, and what must be left. What asks for no distance
 * is drawn without its name. A drawing is no survey.
 */
public final class FieldMapPicture {
    private static final String LAND = "#eef3f6";
    private static final String THING = "#00567f";
    private static final double LETTER = 10.5;

    private FieldMapPicture() {}

    /**
     * The map, at most so large; empty where neither outline nor shapes are on file.
     *
     * @param mostWidth [px]
     * @param mostHeight [px]
     */
    public static Optional<String> svg(FieldPlan plan, double mostWidth, double mostHeight) {
        return Chart.around(
                        plan.field().boundary(),
                        plan.around().stream()
                                .flatMap(feature -> Stream.ofNullable(feature.shape()))
                                .toList())
                .map(chart -> drawn(plan, chart.within(mostWidth, mostHeight)));
    }

    /** What the map shows, for whoever hears it. */
    public static String says(FieldPlan plan) {
        return "Map of " + plan.field().name() + ", north up. "
                + (plan.keeps().isEmpty()
                        ? plan.unseen() ? FieldPlan.UNSEEN : "No distance takes any of it."
                        : "Distances to keep: "
                                + plan.keeps().stream()
                                        .map(FieldPlan.Keep::words)
                                        .collect(Collectors.joining("; "))
                                + ".");
    }

    /** What its lines mean, as far as they are on it; empty where nothing is to be left. */
    public static String key(FieldPlan plan) {
        List<Zone> drawn =
                plan.zones().stream().filter(zone -> zone.area() != null).toList();
        return Stream.of(
                        drawn.stream().anyMatch(zone -> !zone.downwindOnly()) ? "Grey: leave unsprayed." : "",
                        drawn.stream().anyMatch(Zone::downwindOnly)
                                ? "Broken line: leave while the wind blows towards it."
                                : "")
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String drawn(FieldPlan plan, Chart chart) {
        Canvas canvas = new Canvas();
        Boundary outline = plan.field().boundary();
        if (outline != null) {
            canvas.shape(chart.path(outline), LAND, 1, Canvas.INK, 1.4, "");
        }
        for (Zone zone : plan.zones()) {
            Boundary area = zone.area();
            if (area != null) {
                boolean wind = zone.downwindOnly();
                canvas.shape(chart.path(area), Canvas.QUIET, wind ? 0.12 : 0.42, Canvas.INK, 0.7, wind ? "3,2" : "");
            }
        }
        Set<String> kept =
                plan.zones().stream().map(zone -> zone.feature().name()).collect(Collectors.toCollection(HashSet::new));
        Canvas names = new Canvas();
        for (Feature feature : plan.around()) {
            Shape shape = feature.shape();
            if (shape != null && chart.shows(shape)) {
                thing(canvas, chart, shape);
                if (kept.contains(feature.name())) {
                    name(names, chart, shape, feature.name());
                }
            }
        }
        canvas.include(names);
        double bar = chart.barFt() * chart.unitsPerFoot();
        double low = chart.height() - 8;
        canvas.line(8, low, 8 + bar, low, Canvas.INK, 1.4)
                .line(8, low - 4, 8, low, Canvas.INK, 1.4)
                .line(8 + bar, low - 4, 8 + bar, low, Canvas.INK, 1.4)
                .text(12 + bar, low, Numbers.fixed(chart.barFt(), 0) + " ft", LETTER, Canvas.INK, false, Anchor.START);
        double north = chart.width() - 14;
        canvas.line(north, 22, north, 6, Canvas.INK, 1.2)
                .line(north - 3.5, 11, north, 6, Canvas.INK, 1.2)
                .line(north + 3.5, 11, north, 6, Canvas.INK, 1.2)
                .text(north, 32, "N", LETTER, Canvas.INK, true, Anchor.MIDDLE);
        return canvas.svg(
                Math.ceil(chart.width()),
                chart.height(),
                "Map of " + plan.field().name(),
                says(plan));
    }

    private static void thing(Canvas canvas, Chart chart, Shape shape) {
        if (shape instanceof Area area) {
            canvas.shape(chart.path(area.outline()), "#cfe0ea", 1, THING, 1.4, "");
        } else if (shape instanceof Line line) {
            canvas.shape(chart.line(line.points()), "none", 1, THING, 1.8, "");
        } else if (shape instanceof Spot spot) {
            canvas.dot(chart.x(spot.at()), chart.y(spot.at()), 3.5, "#cfe0ea", THING);
        }
    }

    private static void name(Canvas canvas, Chart chart, Shape shape, String name) {
        Point at = chart.labelled(shape);
        double x = chart.x(at);
        double width = Lettering.width(name, LETTER, true);
        boolean left = x + 6 + width > chart.width() && x - 6 - width > 0;
        double start = left ? x - 6 - width : Math.max(2, Math.min(x + 6, chart.width() - width - 2));
        double y = Math.max(LETTER, Math.min(chart.y(at) - 5, chart.height() - 16));
        canvas.labelled(start, y, name, LETTER, Canvas.INK, true, Anchor.START);
    }
}
