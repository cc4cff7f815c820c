package plumbrow.advice.land;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.science.reference.Counties;
import plumbrow.science.reference.County;

/**
 * The counties that an outline lies in by the census map, and those whose line is nearer than that map is exact.
 *
 * @param in the counties it lies in, the largest part first; empty outside the United States
 * @param near further counties nearer than {@link Counties#ERROR_FT}, the nearest first
 */
public record CountyFit(List<Part> in, List<Near> near) {
    /** A sliver smaller than this is rounding [ac]. */
    private static final double SLIVER_ACRES = 0.01;
    /** Counties whose box is farther off than this are not looked at [degrees]. */
    private static final double AROUND_DEGREES = 0.1;

    public CountyFit {
        in = List.copyOf(in);
        near = List.copyOf(near);
    }

    /** How many acres lie in a county. */
    public record Part(County county, double acres) {}

    /** How far the outline lies from a county [ft]. */
    public record Near(County county, double feet) {}

    public static CountyFit of(Boundary boundary) {
        Plane plane = Plane.under(boundary);
        Geometry ground = plane.field(boundary);
        List<Part> in = new ArrayList<>();
        List<Near> near = new ArrayList<>();
        for (County county : around(boundary)) {
            Geometry land = land(plane, county);
            double acres = Plane.acres(Plane.both(ground, land));
            double feet = Plane.feet(ground, land);
            if (acres > SLIVER_ACRES) {
                in.add(new Part(county, acres));
            } else if (feet < Counties.ERROR_FT) {
                near.add(new Near(county, feet));
            }
        }
        in.sort(Comparator.comparingDouble(Part::acres).reversed());
        near.sort(Comparator.comparingDouble(Near::feet));
        return new CountyFit(in, near);
    }

    /** Whether the outline crosses a county line. */
    public boolean crosses() {
        return in.size() > 1;
    }

    /** The county it lies in for the most part. */
    public Optional<County> mostly() {
        return in.stream().findFirst().map(Part::county);
    }

    public boolean liesIn(County county) {
        return in.stream().anyMatch(part -> part.county().fips().equals(county.fips()));
    }

    public boolean liesNear(County county) {
        return near.stream().anyMatch(one -> one.county().fips().equals(county.fips()));
    }

    /** The lines of the counties it lies in and near to, to be drawn. */
    public List<List<Point>> lines() {
        return Stream.concat(in.stream().map(Part::county), near.stream().map(Near::county))
                .flatMap(county -> county.rings().stream())
                .map(CountyFit::points)
                .toList();
    }

    /** The least box of degrees around a county. */
    private record Box(County county, double west, double south, double east, double north) {
        static final List<Box> ALL = Counties.all().stream().map(Box::around).toList();

        static Box around(County county) {
            double west = 360;
            double east = -360;
            double south = 90;
            double north = -90;
            for (County.Ring ring : county.rings()) {
                double[] degrees = ring.degrees();
                for (int i = 0; i < degrees.length; i += 2) {
                    west = Math.min(west, degrees[i]);
                    east = Math.max(east, degrees[i]);
                    south = Math.min(south, degrees[i + 1]);
                    north = Math.max(north, degrees[i + 1]);
                }
            }
            return new Box(county, west, south, east, north);
        }

        boolean near(Point at, double across, double down) {
            return at.longitude() > west - across
                    && at.longitude() < east + across
                    && at.latitude() > south - down
                    && at.latitude() < north + down;
        }
    }

    private static List<County> around(Boundary boundary) {
        Point at = boundary.polygons().get(0).shell().get(0);
        double reach = reach(boundary, at);
        double across = AROUND_DEGREES / Math.max(0.2, Math.cos(Math.toRadians(at.latitude()))) + reach;
        return Box.ALL.stream()
                .filter(box -> box.near(at, across, AROUND_DEGREES + reach))
                .map(Box::county)
                .toList();
    }

    /** How far the outline reaches from one of its corners [degrees]. */
    private static double reach(Boundary boundary, Point from) {
        return boundary.polygons().stream()
                .flatMap(polygon -> polygon.shell().stream())
                .mapToDouble(point -> Math.max(
                        Math.abs(point.longitude() - from.longitude()), Math.abs(point.latitude() - from.latitude())))
                .max()
                .orElse(0);
    }

    private static Geometry land(Plane plane, County county) {
        List<Geometry> parts = new ArrayList<>();
        List<County.Ring> rings = county.rings();
        for (int i = 0; i < rings.size(); i++) {
            if (!rings.get(i).hole()) {
                List<LinearRing> holes = new ArrayList<>();
                for (int j = i + 1; j < rings.size() && rings.get(j).hole(); j++) {
                    holes.add(ring(plane, rings.get(j)));
                }
                parts.add(plane.polygon(ring(plane, rings.get(i)), holes));
            }
        }
        return Plane.union(parts);
    }

    private static LinearRing ring(Plane plane, County.Ring ring) {
        return plane.ring(points(ring));
    }

    private static List<Point> points(County.Ring ring) {
        List<Point> points = new ArrayList<>();
        double[] degrees = ring.degrees();
        for (int i = 0; i < degrees.length; i += 2) {
            points.add(new Point(degrees[i], degrees[i + 1]));
        }
        return points;
    }
}
