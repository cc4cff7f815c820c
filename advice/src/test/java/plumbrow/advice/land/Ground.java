package plumbrow.advice.land;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;

/** Pieces of ground laid out by geodesics, for tests. */
final class Ground {
    static final double M_PER_FT = 0.3048;

    private Ground() {}

    /** The place so many feet east and north of another, by geodesics: first along the meridian, then square to it. */
    static Point from(Point at, double eastFt, double northFt) {
        GeodesicData up = Geodesic.WGS84.Direct(at.latitude(), at.longitude(), 0, northFt * M_PER_FT);
        GeodesicData over = Geodesic.WGS84.Direct(up.lat2, up.lon2, up.azi2 + 90, eastFt * M_PER_FT);
        return new Point(over.lon2, over.lat2);
    }

    /** A rectangle with its south-west corner at a place. */
    static Boundary rectangle(Point corner, double eastFt, double northFt) {
        return outline(List.of(
                corner, from(corner, eastFt, 0), from(corner, eastFt, northFt), from(corner, 0, northFt), corner));
    }

    static Boundary outline(List<Point> ring) {
        return new Boundary(List.of(new Boundary.Polygon(ring, List.of())));
    }

    /** A star-shaped outline of 1 to 2,000 ac at latitude 25 to 50. */
    static Boundary random(SplittableRandom random) {
        Point middle = new Point(-125 + 58 * random.nextDouble(), 25 + 25 * random.nextDouble());
        double acres = Math.exp(random.nextDouble() * Math.log(2000));
        double radius = Math.sqrt(acres * 4046.8564224 / Math.PI);
        int corners = 3 + random.nextInt(20);
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double turn = 360.0 * (i + 0.8 * random.nextDouble()) / corners;
            GeodesicData at = Geodesic.WGS84.Direct(
                    middle.latitude(), middle.longitude(), turn, radius * (0.6 + 0.6 * random.nextDouble()));
            ring.add(new Point(at.lon2, at.lat2));
        }
        ring.add(ring.get(0));
        return outline(ring);
    }

    static Field field(Boundary boundary, String state, String county) {
        return new Field(
                "Home", "Farm", Acres.inside(boundary), boundary, state, county, Crop.CORN, null, null, null, null);
    }
}
