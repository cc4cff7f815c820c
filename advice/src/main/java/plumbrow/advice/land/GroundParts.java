package plumbrow.advice.land;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import plumbrow.advice.field.Boundary;

/**
 * The ground of a field parted by what is put on it: what is kept clear, zones with a rate of their own, and the rest.
 * Acres are those of the plane that touches the Earth in the field's middle, as everywhere in this room.
 *
 * @param acres inside the outline [ac]
 * @param clear what is kept clear; its outline is null where nothing is
 * @param zones in the order given, without what is kept clear or lies outside the field
 * @param rest what neither is kept clear nor lies in a zone
 */
public record GroundParts(double acres, Part clear, List<Part> zones, Part rest) {
    public GroundParts {
        zones = List.copyOf(zones);
    }

    /** A part of the ground; its outline is null where it is empty. */
    public record Part(@Nullable Boundary outline, double acres) {}

    /**
     * Parts the ground.
     *
     * @param clear areas to be kept clear; they may overlap
     * @param zones zones with a rate of their own; where two overlap the first counts
     */
    public static GroundParts of(Boundary field, List<Boundary> clear, List<Boundary> zones) {
        Plane plane = Plane.under(field);
        Geometry ground = plane.field(field);
        Geometry kept =
                Plane.both(ground, Plane.union(clear.stream().map(plane::field).toList()));
        Geometry left = Plane.without(ground, kept);
        List<Part> parts = new ArrayList<>();
        for (Boundary zone : zones) {
            Geometry its = plane.field(zone);
            parts.add(part(plane, Plane.both(left, its)));
            left = Plane.without(left, its);
        }
        return new GroundParts(Plane.acres(ground), part(plane, kept), parts, part(plane, left));
    }

    /** What two areas share [ac]. */
    public static double sharedAcres(Boundary one, Boundary other) {
        Plane plane = Plane.under(one);
        return Plane.acres(Plane.both(plane.field(one), plane.field(other)));
    }

    private static Part part(Plane plane, Geometry area) {
        List<Boundary.Polygon> polygons = plane.polygons(area);
        return new Part(polygons.isEmpty() ? null : new Boundary(polygons), Plane.acres(area));
    }
}
