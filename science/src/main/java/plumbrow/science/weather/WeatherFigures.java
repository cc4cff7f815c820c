package plumbrow.science.weather;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class WeatherFigures {
    public static final List<Figure> ALL = List.of(
            WetBulb.FIGURE,
            DeltaT.FIGURE,
            DeltaT.LIFE,
            DewPoint.FIGURE,
            DewPoint.HUMIDITY,
            VapourDeficit.FIGURE,
            AirVapourDay.FIGURE,
            RainFree.FIGURE,
            WindAtHeight.FIGURE,
            WindAtHeight.GRASS,
            Downwind.FIGURE,
            Inversion.FIGURE,
            SprayHours.FIGURE,
            SunTimes.FIGURE,
            SunElevation.FIGURE);

    private WeatherFigures() {}
}
