package plumbrow.app.desk.map;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.app.desk.door.TileAddress;
import plumbrow.documents.picture.Chart;

/** Pictures of the ground, each where it belongs under the map; none where no address is named. */
public record Tiles(TileAddress source) {
    private static final int DEEPEST = 18;
    private static final int MOST = 64;
    private static final double TILE_UNITS = 256;

    /** A picture and where it goes on the chart. */
    public record Tile(String address, double x, double y, double width, double height) {}

    List<Tile> under(Chart chart) {
        String named = source.address().orElse("");
        if (named.isEmpty()) {
            return List.of();
        }
        int zoom = (int) Math.max(
                0, Math.min(DEEPEST, Math.floor(Math.log(chart.acrossDegree() * 360 / TILE_UNITS) / Math.log(2))));
        double count = Math.pow(2, zoom);
        double west = column(chart.west(), count);
        double east = column(chart.west() + chart.width() / chart.acrossDegree(), count);
        double top = row(chart.north(), count);
        double bottom = row(chart.north() - chart.height() / chart.downDegree(), count);
        List<Tile> tiles = new ArrayList<>();
        for (int x = (int) west; x <= (int) east && tiles.size() < MOST; x++) {
            for (int y = (int) top; y <= (int) bottom && tiles.size() < MOST; y++) {
                Point corner = new Point(x / count * 360 - 180, latitude(y, count));
                Point opposite = new Point((x + 1) / count * 360 - 180, latitude(y + 1, count));
                tiles.add(new Tile(
                        named.replace("{z}", "" + zoom).replace("{x}", "" + x).replace("{y}", "" + y),
                        chart.x(corner),
                        chart.y(corner),
                        chart.x(opposite) - chart.x(corner),
                        chart.y(opposite) - chart.y(corner)));
            }
        }
        return List.copyOf(tiles);
    }

    private static double column(double longitude, double count) {
        return (longitude + 180) / 360 * count;
    }

    private static double row(double latitude, double count) {
        double phi = Math.toRadians(latitude);
        return (1 - Math.log(Math.tan(phi) + 1 / Math.cos(phi)) / Math.PI) / 2 * count;
    }

    private static double latitude(double row, double count) {
        return Math.toDegrees(Math.atan(Math.sinh(Math.PI * (1 - 2 * row / count))));
    }
}
