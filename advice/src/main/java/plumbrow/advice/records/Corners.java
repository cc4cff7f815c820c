package plumbrow.advice.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;

/** The corners of the treated part of a field as they are written down: "41.601, -93.602; 41.603, -93.602; …", latitude first. */
public final class Corners {
    private static final int LEAST = 3;
    private static final Pattern CORNER =
            Pattern.compile("\\s*(-?\\d{1,3}(?:\\.\\d+)?)\\s*,\\s*(-?\\d{1,3}(?:\\.\\d+)?)\\s*");

    private Corners() {}

    /** What is expected, in words. */
    public static final String WORDS =
            "three corners or more in the order of walking, as 41.6010, -93.6020; 41.6030, -93.6020; 41.6030, -93.5990";

    /** The outline; empty where the text is none. */
    public static Optional<Boundary> boundary(String text) {
        List<Point> ring = new ArrayList<>();
        for (String corner : text.split("[;\\n]", -1)) {
            Matcher found = CORNER.matcher(corner);
            if (corner.isBlank()) {
                continue;
            }
            if (!found.matches()) {
                return Optional.empty();
            }
            double latitude = Double.parseDouble(found.group(1));
            double longitude = Double.parseDouble(found.group(2));
            if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) {
                return Optional.empty();
            }
            ring.add(new Point(longitude, latitude));
        }
        if (!ring.isEmpty() && !ring.get(0).equals(ring.get(ring.size() - 1))) {
            ring.add(ring.get(0));
        }
        return ring.stream().distinct().count() < LEAST
                ? Optional.empty()
                : Optional.of(new Boundary(List.of(new Boundary.Polygon(ring, List.of()))));
    }
}
