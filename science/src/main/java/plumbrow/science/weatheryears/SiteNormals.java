package plumbrow.science.weatheryears;

import java.util.Arrays;
import java.util.List;

/**
 * The usual weather of a place, January first.
 *
 * @param highC mean of the daily highest temperatures [°C], twelve
 * @param lowC mean of the daily lowest [°C], twelve
 * @param rainMm rain of the month [mm], twelve
 * @param wetDays days of the month with 0.01 in of rain or more, twelve
 */
public record SiteNormals(List<Double> highC, List<Double> lowC, List<Double> rainMm, List<Double> wetDays) {
    public SiteNormals {
        highC = List.copyOf(highC);
        lowC = List.copyOf(lowC);
        rainMm = List.copyOf(rainMm);
        wetDays = List.copyOf(wetDays);
        for (List<Double> months : List.of(highC, lowC, rainMm, wetDays)) {
            if (months.size() != 12 || months.stream().anyMatch(value -> !Double.isFinite(value))) {
                throw new IllegalArgumentException("normals of " + months.size() + " months; expected twelve numbers");
            }
        }
    }

    public static SiteNormals of(double[] highC, double[] lowC, double[] rainMm, double[] wetDays) {
        return new SiteNormals(list(highC), list(lowC), list(rainMm), list(wetDays));
    }

    /** Half of what a day's highest lies above its lowest in a month (0 for January), where a place's own is unknown [°C]. */
    public static double usualHalfRangeC(int month) {
        return Champaign.halfRangeC(month);
    }

    /** Those of the station that the days are shaped by: to fill months that a place has none of. */
    public static SiteNormals station() {
        return Champaign.normals();
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
