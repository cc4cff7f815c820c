package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Soil degree days for the emergence of weeds, counted only on days on which the soil is moist enough.
 *
 *   θ(day) = max(0, T − Tb) where ψ > ψb, else 0;  without water data every day counts (thermal time only)
 *
 *   T  mean soil temperature [°C];  Tb  base [°C];  ψ, ψb  water potential of the soil and its base [MPa], 0 is wet
 *
 * Source: hydrothermal time, as in Goplen et al. 2018, Weed Sci. 66:36 (giant ragweed: 4.4 °C, −2.5 MPa; form from memory).
 */
public final class SoilHeat {
    public static final Figure FIGURE = Figure.declare("soil-degree-days", Subject.WEEDS)
            .question("How much heat have the weed seeds had while the soil was moist?")
            .input(list("soil_c", "Mean soil temperature of each day", "°C", Range.closed(-40, 60), "6,9,12,14"))
            .input(number("base_c", "Base temperature of the curve used", "°C", Range.closed(-5, 20), "4.4"))
            .input(list(
                            "potential_mpa",
                            "Water potential of the soil on each day",
                            "MPa",
                            Range.closed(-100, 0),
                            "-0.1,-0.5,-3,-0.2")
                    .optional())
            .input(number(
                            "base_mpa",
                            "Water potential below which nothing emerges",
                            "MPa",
                            Range.closed(-20, 0),
                            "-2.5")
                    .orElse("-2.5"))
            .output("gdd", "Soil degree days", "DD °C")
            .output("days_counted", "Days warm and moist enough", "d")
            .formula("sum of (temperature − base) on days above the base with a potential above its base")
            .source("Hydrothermal time, as in [goplen-2018]", MEMORY)
            .validity(
                    "From the day the source of the curve counts from. The base must be that of the curve: sums of other bases are other sums.")
            .caution("A missing day is never a day of zero: fill it from a station nearby or leave the sum open.")
            .example(
                    "soil_c=6,9,12,14 base_c=4.4 potential_mpa=-0.1,-0.5,-3,-0.2",
                    "gdd=15.8 days_counted=3",
                    "1.6 + 4.6 + 9.6, the dry third day left out, by hand",
                    COMPUTED)
            .example("soil_c=6,9,12,14 base_c=4.4", "gdd=23.4 days_counted=4", "all four, by hand", COMPUTED)
            .example("soil_c=2,3 base_c=4.4", "gdd=0 days_counted=0", "too cold", COMPUTED)
            .model(SoilHeat::solve);

    private SoilHeat() {}

    private static Outputs solve(Given given, Working working) {
        double[] soil = given.list("soil_c");
        double base = given.number("base_c");
        double[] water = given.has("potential_mpa") ? given.list("potential_mpa") : new double[soil.length];
        if (water.length != soil.length) {
            throw given.refuse("potential_mpa", "as many days as soil_c (" + soil.length + ")");
        }
        double dry = given.has("potential_mpa") ? given.number("base_mpa") : Double.NEGATIVE_INFINITY;
        double warmth = 0;
        int days = 0;
        for (int i = 0; i < soil.length; i++) {
            if (soil[i] > base && water[i] > dry) {
                warmth += soil[i];
                days++;
            }
        }
        double sum = working.line("degree days", warmth - days * base, "", "{} − {} × {}", warmth, days, base);
        return new Outputs().put("gdd", sum).put("days_counted", days);
    }
}
