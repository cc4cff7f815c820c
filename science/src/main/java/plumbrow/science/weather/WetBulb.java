package plumbrow.science.weather;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Wet-bulb temperature from temperature and humidity at sea level.
 *
 *   Tw = T·atan(0.151977·(RH+8.313659)^0.5) + atan(T+RH) − atan(RH−1.676331)
 *        + 0.00391838·RH^1.5·atan(0.023101·RH) − 4.686035      (radians)
 *
 *   T  [°C], −20 to 50;  RH  [%], 5 to 99; not both cold and dry; error −1 to +0.65 °C, mean below 0.3
 *
 * Outside there is no answer and none is made up. Cold and dry is taken as RH below 27.7 − 2.27·T (value from memory);
 * the psychrometer equation leaves the stated error band just below that line.
 *
 * Source: Stull 2011, J. Appl. Meteor. Climatol. 50:2267.
 */
public final class WetBulb {
    private static final Range TEMPERATURE_C = Range.closed(-20, 50);
    private static final Range HUMIDITY_PCT = Range.closed(5, 99);
    static final Input TEMPERATURE = number("temperature_c", "Air temperature", "°C", TEMPERATURE_C, "20");
    static final Input HUMIDITY = number("humidity_pct", "Relative humidity", "%", HUMIDITY_PCT, "50");
    static final String VALIDITY =
            "−20 to 50 °C, 5 to 99 % humidity, sea level. Cold and dry together, humidity below 27.7 − 2.27 × °C, is refused.";
    static final String SOURCE = "[stull-2011]";

    public static final Figure FIGURE = Figure.declare("wet-bulb", Subject.WEATHER)
            .question("What would a thermometer in a wet sock read?")
            .input(TEMPERATURE)
            .input(HUMIDITY)
            .output("wet_bulb_c", "Wet bulb", "°C")
            .output("psychrometer_c", "By the psychrometer equation, for scale", "°C")
            .formula("T × atan(0.151977 × √(RH + 8.313659)) + atan(T + RH) − atan(RH − 1.676331)"
                    + " + 0.00391838 × RH^1.5 × atan(0.023101 × RH) − 4.686035")
            .source(SOURCE, VERIFIED)
            .validity(VALIDITY)
            .example("temperature_c=20 humidity_pct=50", "wet_bulb_c=13.7", "[stull-2011]: 13.7", VERIFIED)
            .example(
                    "temperature_c=20 humidity_pct=50",
                    "wet_bulb_c=13.70 psychrometer_c=13.84",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "temperature_c=30 humidity_pct=30",
                    "wet_bulb_c=18.37 psychrometer_c=18.07",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "temperature_c=25 humidity_pct=80",
                    "wet_bulb_c=22.33 psychrometer_c=22.40",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "temperature_c=15 humidity_pct=95",
                    "wet_bulb_c=14.41 psychrometer_c=14.51",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "temperature_c=28 humidity_pct=65",
                    "wet_bulb_c=22.97 psychrometer_c=22.93",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "temperature_c=32 humidity_pct=45",
                    "wet_bulb_c=23.07 psychrometer_c=22.72",
                    "independent arithmetic",
                    COMPUTED)
            .model(WetBulb::solve);

    private WetBulb() {}

    /** Whether the formula holds for this air. */
    public static boolean holds(double celsius, double humidityPct) {
        return TEMPERATURE_C.holds(celsius) && HUMIDITY_PCT.holds(humidityPct) && humidityPct >= driestAllowed(celsius);
    }

    /** Wet bulb [°C] of air for which the formula {@link #holds}. */
    public static double celsius(double celsius, double humidityPct) {
        return celsius * Math.atan(0.151977 * Math.sqrt(humidityPct + 8.313659))
                + Math.atan(celsius + humidityPct)
                - Math.atan(humidityPct - 1.676331)
                + 0.00391838 * Math.pow(humidityPct, 1.5) * Math.atan(0.023101 * humidityPct)
                - 4.686035;
    }

    /** Wet bulb [°C] where es(Tw) − 0.00066·1013.25·(T − Tw) is the vapour pressure of the air, by halving. */
    public static double psychrometer(double celsius, double humidityPct) {
        double vapour = AirMoisture.saturationHpa(celsius) * humidityPct / 100;
        double low = celsius - 60;
        double high = celsius;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (AirMoisture.saturationHpa(middle) - 0.00066 * 1013.25 * (celsius - middle) > vapour) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double driestAllowed(double celsius) {
        return 27.7 - 2.27 * celsius;
    }

    private static Outputs solve(Given given, Working working) {
        double celsius = given.number("temperature_c");
        double humidity = given.number("humidity_pct");
        double wetBulb = showWetBulb(given, working);
        double psychrometer = working.line(
                "psychrometer",
                psychrometer(celsius, humidity),
                "°C",
                "Tw at which es(Tw) − 0.66874 × ({} − Tw) is es({}) × {} %",
                celsius,
                celsius,
                humidity);
        return new Outputs().put("wet_bulb_c", wetBulb).put("psychrometer_c", psychrometer);
    }

    static double showWetBulb(Given given, Working working) {
        double celsius = given.number("temperature_c");
        double humidity = given.number("humidity_pct");
        if (!holds(celsius, humidity)) {
            throw given.refuse(
                    "humidity_pct",
                    "at least " + Numbers.fixed(driestAllowed(celsius), 1) + " % at " + Numbers.plain(celsius)
                            + " °C: the formula does not hold for air both cold and dry");
        }
        return working.line(
                "wet bulb",
                celsius(celsius, humidity),
                "°C",
                "{} × atan(0.151977 × √({} + 8.313659)) + atan({} + {}) − atan({} − 1.676331)"
                        + " + 0.00391838 × {}^1.5 × atan(0.023101 × {}) − 4.686035",
                celsius,
                humidity,
                celsius,
                humidity,
                humidity,
                humidity,
                humidity);
    }
}
