package plumbrow.science.weather;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How much more water the air could take up.
 *
 *   VPD = es(T)·(1 − RH/100)      [kPa], es in the FAO form of {@link AirMoisture}
 *
 * Source: Allen et al. 1998, FAO-56, eq. 11.
 */
public final class VapourDeficit {
    public static final Figure FIGURE = Figure.declare("vapour-deficit", Subject.WEATHER)
            .question("How much more water could the air take up?")
            .input(Asked.TEMPERATURE)
            .input(number("humidity_pct", "Relative humidity", "%", Range.PERCENT, "50"))
            .output("kpa", "Vapour pressure deficit", "kPa")
            .formula("deficit = 0.6108 × e^(17.27 × T ÷ (T + 237.3)) × (1 − RH ÷ 100)")
            .source("[fao-56], equation 11", VERIFIED)
            .validity("−40 to 50 °C over water.")
            .example("temperature_c=20 humidity_pct=50", "kpa=1.169", "independent arithmetic", COMPUTED)
            .example("temperature_c=28.5 humidity_pct=32", "kpa=2.646", "a day in May, 15 hours", COMPUTED)
            .model(VapourDeficit::solve);

    private VapourDeficit() {}

    /** Vapour pressure deficit [kPa]. */
    public static double kpa(double celsius, double humidityPct) {
        return AirMoisture.saturationKpaFao(celsius) * (1 - humidityPct / 100);
    }

    private static Outputs solve(Given given, Working working) {
        double celsius = given.number("temperature_c");
        double humidity = given.number("humidity_pct");
        double most = working.line(
                "saturated air",
                AirMoisture.saturationKpaFao(celsius),
                "kPa",
                "0.6108 × exp(17.27 × {} ÷ ({} + 237.3))",
                celsius,
                celsius);
        return new Outputs()
                .put(
                        "kpa",
                        working.line("deficit", kpa(celsius, humidity), "kPa", "{} × (1 − {} ÷ 100)", most, humidity));
    }
}
