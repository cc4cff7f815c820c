package plumbrow.science.weather;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Dew point from humidity, and humidity from dew point, as figures. The arithmetic is {@link AirMoisture}. */
public final class DewPoint {
    private static final String SOURCE = "[alduchov-1996]";

    public static final Figure FIGURE = Figure.declare("dew-point", Subject.WEATHER)
            .question("At which temperature does dew form from this air?")
            .input(Asked.TEMPERATURE)
            .input(number("humidity_pct", "Relative humidity", "%", Range.above(0, 100), "50"))
            .output("dew_point_c", "Dew point", "°C")
            .formula("γ = ln(RH ÷ 100) + 17.625 × T ÷ (243.04 + T); dew point = 243.04 × γ ÷ (17.625 − γ)")
            .source(SOURCE, VERIFIED)
            .validity("−40 to 50 °C over water; humidity above 0.")
            .example("temperature_c=20 humidity_pct=50", "dew_point_c=9.26", "independent arithmetic", COMPUTED)
            .example("temperature_c=27 humidity_pct=38", "dew_point_c=11.48", "a day in May, 13 hours", COMPUTED)
            .model(DewPoint::solve);

    public static final Figure HUMIDITY = Figure.declare("humidity", Subject.WEATHER)
            .question("How humid is the air at this dew point?")
            .input(Asked.TEMPERATURE)
            .input(number("dew_point_c", "Dew point", "°C", Range.closed(-60, 50), "10.6"))
            .output("humidity_pct", "Relative humidity", "%")
            .formula("RH = 100 × es(dew point) ÷ es(temperature), es = 6.1094 × e^(17.625 × T ÷ (243.04 + T))")
            .source(SOURCE, VERIFIED)
            .validity("Dew point not more than 0.5 above the temperature; up to that it counts as 100 %.")
            .example("temperature_c=30 dew_point_c=20", "humidity_pct=55.08", "independent arithmetic", COMPUTED)
            .example("temperature_c=24.4 dew_point_c=10.6", "humidity_pct=41.8", "independent arithmetic", COMPUTED)
            .model(DewPoint::solveHumidity);

    /** Thermometer and dew point sensor are each rounded and may stand this far apart in saturated air. */
    private static final double ROUNDED_C = 0.5;

    private DewPoint() {}

    private static Outputs solve(Given given, Working working) {
        double celsius = given.number("temperature_c");
        double humidity = given.number("humidity_pct");
        double gamma = working.line(
                "γ",
                Math.log(humidity / 100) + 17.625 * celsius / (243.04 + celsius),
                "",
                "ln({} ÷ 100) + 17.625 × {} ÷ (243.04 + {})",
                humidity,
                celsius,
                celsius);
        return new Outputs()
                .put(
                        "dew_point_c",
                        working.line(
                                "dew point",
                                AirMoisture.dewPointC(celsius, humidity),
                                "°C",
                                "243.04 × {} ÷ (17.625 − {})",
                                gamma,
                                gamma));
    }

    private static Outputs solveHumidity(Given given, Working working) {
        double celsius = given.number("temperature_c");
        double dewPoint = given.number("dew_point_c");
        if (dewPoint > celsius + ROUNDED_C) {
            throw given.refuse("dew_point_c", "not above the air temperature (" + Numbers.plain(celsius) + " °C)");
        }
        double now = showSaturation(working, "saturated at the dew point", dewPoint);
        double most = showSaturation(working, "saturated at the air temperature", celsius);
        double humidity = AirMoisture.humidityPct(celsius, dewPoint);
        return new Outputs()
                .put(
                        "humidity_pct",
                        working.line(
                                "humidity",
                                humidity,
                                "%",
                                humidity < 100 ? "100 × {} ÷ {}" : "100 × {} ÷ {}, at most 100",
                                now,
                                most));
    }

    private static double showSaturation(Working working, String label, double celsius) {
        return working.line(
                label,
                AirMoisture.saturationHpa(celsius),
                "hPa",
                "6.1094 × exp(17.625 × {} ÷ (243.04 + {}))",
                celsius,
                celsius);
    }
}
