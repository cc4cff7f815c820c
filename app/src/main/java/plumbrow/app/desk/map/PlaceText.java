package plumbrow.app.desk.map;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;
import plumbrow.documents.map.MapTrouble;
import plumbrow.documents.picture.Chart;
import plumbrow.documents.workbook.ground.FeatureShape;
import plumbrow.documents.workbook.ground.NoBoundary;

/** Places as a person types them: one to a line, latitude first as a phone shows it, west negative. */
final class PlaceText {
    private static final int MOST_PLACES = 2000;

    private PlaceText() {}

    /** What a typed shape is drawn as. */
    enum Form {
        POINT,
        LINE,
        AREA
    }

    /** The shape of a text, held to the same rules as one from a workbook. */
    static Shape shape(Form form, String text) {
        List<Point> places = places(text);
        int least = form == Form.POINT ? 1 : form == Form.LINE ? 2 : 3;
        if (places.size() < least || (form == Form.POINT && places.size() > 1)) {
            throw new MapTrouble("There are " + places.size() + " places; expected "
                    + (form == Form.POINT
                            ? "one for a point"
                            : "at least " + least + (form == Form.LINE ? " for a line" : " for an area"))
                    + ".");
        }
        Shape shape = switch (form) {
            case POINT -> new Spot(places.get(0));
            case LINE -> new Line(places);
            case AREA -> new Area(new Boundary(List.of(new Boundary.Polygon(closed(places), List.of()))));
        };
        try {
            return FeatureShape.read(FeatureShape.write(shape));
        } catch (NoBoundary wrong) {
            throw new MapTrouble("The places don't make such a shape; expected " + wrong.expected() + ".");
        }
    }

    private static List<Point> closed(List<Point> places) {
        List<Point> ring = new ArrayList<>(places);
        if (!places.get(0).equals(places.get(places.size() - 1))) {
            ring.add(places.get(0));
        }
        return ring;
    }

    private static List<Point> places(String text) {
        List<Point> places = new ArrayList<>();
        int number = 0;
        for (String line : text.split("\\R", -1)) {
            number++;
            if (!line.isBlank()) {
                places.add(place(line.strip(), number));
            }
        }
        if (places.size() > MOST_PLACES) {
            throw new MapTrouble("There are " + places.size() + " places; expected at most " + MOST_PLACES + ".");
        }
        return places;
    }

    private static Point place(String line, int number) {
        String[] numbers = line.split("[,;\\s]+", -1);
        try {
            double latitude = Double.parseDouble(numbers[0]);
            double longitude = Double.parseDouble(numbers.length == 2 ? numbers[1] : "");
            if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) {
                return new Point(longitude, latitude);
            }
        } catch (NumberFormatException none) {
            // Said below, with every other line that holds no place.
        }
        throw new MapTrouble("Line " + number + " is “" + (line.length() > 40 ? line.substring(0, 40) + "…" : line)
                + "”; expected latitude, longitude in degrees, west negative, such as 42.0312, -93.6205.");
    }

    /** A shape as it would be typed; empty where it has several rings, which only a workbook or map file can change. */
    static String of(Shape shape) {
        if (shape instanceof Area area
                && (area.outline().polygons().size() > 1
                        || !area.outline().polygons().get(0).holes().isEmpty())) {
            return "";
        }
        List<Point> places = Chart.points(shape).toList();
        return places.subList(0, shape instanceof Area ? places.size() - 1 : places.size()).stream()
                .map(place -> place.latitude() + ", " + place.longitude())
                .collect(Collectors.joining("\n"));
    }

    static Form form(Shape shape) {
        return shape instanceof Spot ? Form.POINT : shape instanceof Line ? Form.LINE : Form.AREA;
    }
}
