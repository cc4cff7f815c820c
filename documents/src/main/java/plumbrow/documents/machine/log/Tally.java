package plumbrow.documents.machine.log;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Adds up points in the order in which they were written: ground is the way from one to the next times the working width.
 *
 * <p>The way is that on the ellipsoid's tangent at the latitude between the two, good to a millionth over the few metres between points. A
 * gap of more than a minute or 100 m was not worked.
 */
final class Tally {
    private static final double AXIS_M = 6378137;
    private static final double E2 = 0.00669437999014;
    private static final Duration LONGEST_GAP = Duration.ofSeconds(60);
    private static final double FARTHEST_GAP_M = 100;

    private final List<MachineWork.Spot> spots = new ArrayList<>();
    private double squareMetres;
    private int gaps;
    private @Nullable Point last;

    /**
     * A point.
     *
     * @param widthM working width there [m], 0 where it does not work
     */
    record Point(LocalDateTime at, double longitude, double latitude, double widthM) {}

    void add(Point point) {
        Point before = last;
        last = point;
        if (before == null || !(point.widthM() > 0)) {
            return;
        }
        double way = metres(before, point);
        Duration time = Duration.between(before.at(), point.at());
        if (time.isNegative() || time.compareTo(LONGEST_GAP) > 0 || way > FARTHEST_GAP_M) {
            gaps++;
            return;
        }
        addGround(point.longitude(), point.latitude(), way * point.widthM());
    }

    /** Ground that a line of a table tells itself. */
    void addGround(double longitude, double latitude, double ground) {
        squareMetres += ground;
        if (ground > 0) {
            spots.add(new MachineWork.Spot(longitude, latitude, ground));
        }
    }

    private static double metres(Point one, Point other) {
        double middle = Math.toRadians((one.latitude() + other.latitude()) / 2);
        double bend = 1 - E2 * Math.sin(middle) * Math.sin(middle);
        double north = Math.toRadians(other.latitude() - one.latitude()) * AXIS_M * (1 - E2) / Math.pow(bend, 1.5);
        double east = Math.toRadians(Math.IEEEremainder(other.longitude() - one.longitude(), 360))
                * AXIS_M
                / Math.sqrt(bend)
                * Math.cos(middle);
        return Math.hypot(north, east);
    }

    double squareMetres() {
        return squareMetres;
    }

    int gaps() {
        return gaps;
    }

    /** The places, neighbours taken together where they are too many; the ground stays the same. */
    List<MachineWork.Spot> spots() {
        int together = (spots.size() + MachineWork.MOST_SPOTS - 1) / MachineWork.MOST_SPOTS;
        if (together <= 1) {
            return spots;
        }
        List<MachineWork.Spot> fewer = new ArrayList<>();
        for (int i = 0; i < spots.size(); i += together) {
            List<MachineWork.Spot> near = spots.subList(i, Math.min(spots.size(), i + together));
            MachineWork.Spot middle = near.get(near.size() / 2);
            fewer.add(new MachineWork.Spot(
                    middle.longitude(),
                    middle.latitude(),
                    near.stream().mapToDouble(MachineWork.Spot::squareMetres).sum()));
        }
        return fewer;
    }
}
