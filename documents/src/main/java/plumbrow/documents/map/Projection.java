package plumbrow.documents.map;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.advice.field.Boundary.Point;

/**
 * From a shapefile's own coordinates to longitude and latitude, by its .prj file.
 *
 * <p>Read are WGS 84 and NAD 83 in degrees, transverse Mercator (UTM) on either, and Web Mercator. NAD 83 counts as WGS 84:
 * in the lower states they differ by one to two metres.
 */
interface Projection {
    Point place(double x, double y);

    Pattern TEXT = Pattern.compile("([A-Z_]+)\\[\\s*\"([^\"]*)\"");
    double WEB_MERCATOR_RADIUS_M = 6378137;

    /** What a .prj file describes. */
    static Projection of(String wkt) {
        String upper = wkt.strip().toUpperCase(Locale.ROOT).replace(' ', '_').replaceAll(",_+", ",");
        boolean known = upper.contains("WGS_84")
                || upper.contains("WGS_1984")
                || upper.contains("WGS84")
                || upper.contains("NORTH_AMERICAN_1983")
                || upper.contains("NORTH_AMERICAN_DATUM_1983")
                || upper.contains("NAD83");
        if (!known || wkt.length() > 10_000) {
            throw refused(wkt);
        }
        if (upper.startsWith("GEOGCS")) {
            return Projection::degrees;
        }
        if (upper.startsWith("PROJCS") && upper.contains("MERCATOR_AUXILIARY_SPHERE")) {
            return Projection::webMercator;
        }
        if (upper.startsWith("PROJCS") && upper.contains("PROJECTION[\"TRANSVERSE_MERCATOR\"")) {
            double metres = unit(upper);
            TransverseMercator grid = new TransverseMercator(
                    parameter(upper, "CENTRAL_MERIDIAN"),
                    parameter(upper, "LATITUDE_OF_ORIGIN"),
                    parameter(upper, "SCALE_FACTOR"));
            double east = parameter(upper, "FALSE_EASTING");
            double north = parameter(upper, "FALSE_NORTHING");
            return (x, y) -> grid.place((x - east) * metres, (y - north) * metres);
        }
        throw refused(wkt);
    }

    private static Point degrees(double x, double y) {
        if (Math.abs(x) > 180 || Math.abs(y) > 90) {
            throw new MapTrouble("its .prj says degrees, but a point is at " + x + ", " + y);
        }
        return new Point(x, y);
    }

    private static Point webMercator(double x, double y) {
        return new Point(
                Math.toDegrees(x / WEB_MERCATOR_RADIUS_M),
                Math.toDegrees(2 * Math.atan(Math.exp(y / WEB_MERCATOR_RADIUS_M)) - Math.PI / 2));
    }

    private static double parameter(String wkt, String name) {
        Matcher found =
                Pattern.compile("PARAMETER\\[\"" + name + "\",([-+0-9.E]+)\\]").matcher(wkt);
        if (!found.find()) {
            throw new MapTrouble("its .prj lacks " + name.toLowerCase(Locale.ROOT));
        }
        return number(found.group(1));
    }

    /** Metres in the last unit named, which is that of the projection. */
    private static double unit(String wkt) {
        Matcher found = Pattern.compile("UNIT\\[\"[^\"]*\",([-+0-9.E]+)").matcher(wkt);
        double last = Double.NaN;
        while (found.find()) {
            last = number(found.group(1));
        }
        if (!(last > 0.1 && last < 10)) {
            throw new MapTrouble("its .prj names no unit of length");
        }
        return last;
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException none) {
            throw new MapTrouble("its .prj has '" + text + "' where a number belongs");
        }
    }

    private static MapTrouble refused(String wkt) {
        Matcher named = TEXT.matcher(wkt.strip());
        return new MapTrouble(
                "its projection is "
                        + (named.find() ? "'" + shortened(named.group(2)) + "'" : "not told by the .prj")
                        + "; expected WGS 84 or NAD 83 in degrees, UTM or Web Mercator. Save it in WGS 84 from the program it came from");
    }

    private static String shortened(String name) {
        return name.length() > 60 ? name.substring(0, 57) + "…" : name;
    }
}
