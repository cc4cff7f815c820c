package plumbrow.advice.land;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Field;
import plumbrow.advice.shelf.Setback;

/**
 * Cuts the zones of setbacks out of a field.
 *
 * <p>Acres are those of the plane that touches the Earth in the field's middle; they agree with the ellipsoid's to better
 * than 0.01 %.
 */
public final class Cut {
    private final Field field;
    private final @Nullable Plane plane;
    private final @Nullable Geometry ground;
    private final List<Zone> zones = new ArrayList<>();
    private final List<Geometry> always = new ArrayList<>();
    private final List<Geometry> downwind = new ArrayList<>();

    private Cut(Field field) {
        this.field = field;
        Boundary boundary = field.boundary();
        plane = boundary == null ? null : Plane.under(boundary);
        ground = boundary == null || plane == null ? null : plane.field(boundary);
    }

    /** A setback of a product and the feature it is kept from. */
    public record Asked(Feature feature, Setback setback) {}

    /** What setbacks leave of a field; those of which no distance is read are passed over. */
    public static Zones of(Field field, int pass, String product, List<Asked> asked, List<String> notRead) {
        Cut cut = new Cut(field);
        asked.forEach(cut::add);
        return cut.zones(pass, product, notRead);
    }

    /** What one setback takes of a field [ac]; null where field or feature has no shape. */
    public static @Nullable Double acres(Field field, Feature feature, double feet) {
        return new Cut(field).zone(feature, feet, false, "").acres();
    }

    private void add(Asked asked) {
        Double feet = asked.setback().feet();
        if (feet != null && feet > 0) {
            zones.add(zone(
                    asked.feature(),
                    feet,
                    asked.setback().downwindOnly(),
                    asked.setback().source()));
        }
    }

    private Zone zone(Feature feature, double feet, boolean downwindOnly, String source) {
        Nearness nearness = Nearness.of(field.boundary(), feature);
        Double lies = nearness.feet();
        Shape shape = feature.shape();
        if (plane == null || ground == null || shape == null) {
            Double none = lies != null && lies >= feet ? 0.0 : null;
            return new Zone(feature, feet, downwindOnly, none, null, source);
        }
        Geometry taken = Plane.both(ground, Plane.within(plane.shape(shape), feet + nearness.nearerThanDrawnFt()));
        (downwindOnly ? downwind : always).add(taken);
        return new Zone(feature, feet, downwindOnly, Plane.acres(taken), outline(taken), source);
    }

    private Zones zones(int pass, String product, List<String> notRead) {
        double whole = ground == null ? field.acres() : Plane.acres(ground);
        if (zones.stream().anyMatch(zone -> zone.acres() == null)) {
            return new Zones(pass, product, whole, zones, null, null, null, notRead);
        }
        if (ground == null) {
            return new Zones(pass, product, whole, zones, whole, 0.0, null, notRead);
        }
        Geometry calm = Plane.without(ground, Plane.union(always));
        Geometry left = Plane.without(calm, Plane.union(downwind));
        return new Zones(
                pass,
                product,
                whole,
                zones,
                Plane.acres(left),
                Plane.acres(calm) - Plane.acres(left),
                outline(left),
                notRead);
    }

    private @Nullable Boundary outline(Geometry area) {
        List<Boundary.Polygon> polygons = plane == null ? List.of() : plane.polygons(area);
        return polygons.isEmpty() ? null : new Boundary(polygons);
    }
}
