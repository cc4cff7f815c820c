package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How fast an active ingredient leaves as vapour on the first day, to put products and conditions in order.
 *
 *   surface            ln ER = 11.779 + 0.85543·ln VP
 *   soil, sprayed on   ln ER = 19.35 + 1.0533·ln[VP·AR/(Koc·Sw)]
 *   soil, incorporated ln ER = 28.355 + 1.6158·ln[VP·AR/(Koc·Sw·d)]
 *   fumigant           ln(ER/3600) = 3.598 + 0.9400·ln[VP·AR/(Koc·Sw·d)]
 *
 *   ER  flux [µg m⁻² h⁻¹];  VP  [Pa];  Koc  [mL/g];  Sw  solubility [mg/L];  AR  rate [kg/ha];  d  depth [cm]; all > 0
 *
 * Against field measurements the surface form is good to a factor of 2 to 10, the incorporated one read trifluralin
 * fifteenfold too high: never a share lost.
 *
 * Source: Woodrow, Seiber & Baker 1997, Environ. Sci. Technol. 31:523 (coefficients from memory); fumigants: Woodrow,
 * Seiber & Miller 2011, J. Agric. Food Chem. 59:939, printed in µg m⁻² s⁻¹ (verified).
 */
public final class VapourFlux {
    private static final double SECONDS_PER_HOUR = 3600;

    public static final Figure FIGURE = Figure.declare("vapour-flux", Subject.FATE)
            .question("How fast does the active ingredient leave as vapour, against others?")
            .input(word("form", "Where it lies", List.of("soil", "surface", "fumigant"), "surface"))
            .input(Asked.VAPOUR_PRESSURE)
            .input(number("koc_ml_g", "Sorption to organic carbon, Koc", "mL/g", Range.POSITIVE, "8000")
                    .optional())
            .input(number("solubility_mg_l", "Solubility in water", "mg/L", Range.POSITIVE, "0.3")
                    .optional())
            .input(number("rate_kg_ha", "Rate", "kg/ha", Range.POSITIVE, "1").orElse("1"))
            .input(number("depth_cm", "Depth of incorporation", "cm", Range.POSITIVE, "7.5")
                    .optional())
            .output("flux", "Flux on the first day", "µg m⁻² h⁻¹")
            .formula(
                    "surface: e^11.779 × VP^0.85543; soil: e^19.35 × (VP × rate ÷ (Koc × solubility))^1.0533, incorporated:"
                            + " e^28.355 × (… ÷ depth)^1.6158; fumigant: 3600 × e^3.598 × (… ÷ depth)^0.94")
            .source("[woodrow-1997]; fumigants: [woodrow-2011]", MEMORY)
            .validity(
                    "Surface needs the vapour pressure alone. Soil needs Koc and solubility, fumigant also the depth. All in µg m⁻² h⁻¹.")
            .caution(
                    "Orders products and conditions. Fields differed by a factor of 2 to 100: not a share lost, not a forecast.")
            .example("form=surface vapour_pressure_pa=1", "flux=130483", "independent arithmetic", COMPUTED)
            .example("form=surface vapour_pressure_pa=.01", "flux=2539.19", "independent arithmetic", COMPUTED)
            .example("form=surface vapour_pressure_pa=1e-4", "flux=49.4123", "independent arithmetic", COMPUTED)
            .example(
                    "form=surface vapour_pressure_pa=.004",
                    "flux=1159.54",
                    "pendimethalin; turf first-day mean 688 ([cooper-1990])",
                    COMPUTED)
            .example(
                    "form=soil vapour_pressure_pa=.0147 koc_ml_g=8000 solubility_mg_l=.3",
                    "flux=818.195",
                    "trifluralin; bare soil 6840, a day later 360 ([bedos-2006])",
                    COMPUTED)
            .example(
                    "form=soil vapour_pressure_pa=.016 koc_ml_g=2400 solubility_mg_l=4 rate_kg_ha=8.75",
                    "flux=2040.27",
                    "triallate; mean 1504 ([yates-2006])",
                    COMPUTED)
            .example(
                    "form=soil vapour_pressure_pa=.016 koc_ml_g=2400 solubility_mg_l=4",
                    "flux=207.717",
                    "triallate without its rate",
                    COMPUTED)
            .example(
                    "form=soil vapour_pressure_pa=.0147 koc_ml_g=8000 solubility_mg_l=.3 rate_kg_ha=1.12 depth_cm=7.5",
                    "flux=360.602",
                    "trifluralin incorporated; measured 24 ([white-1977])",
                    COMPUTED)
            .model(VapourFlux::solve);

    private VapourFlux() {}

    /** Flux [µg m⁻² h⁻¹] from leaves, residue or plastic. */
    public static double surface(double vapourPressurePa) {
        return Math.exp(11.779 + 0.85543 * Math.log(vapourPressurePa));
    }

    /** Flux [µg m⁻² h⁻¹] from bare soil; the ratio is VP·AR/(Koc·Sw). */
    public static double sprayedOnSoil(double ratio) {
        return Math.exp(19.35 + 1.0533 * Math.log(ratio));
    }

    /** Flux [µg m⁻² h⁻¹] from below the surface; the ratio is VP·AR/(Koc·Sw·d). */
    public static double incorporated(double ratio) {
        return Math.exp(28.355 + 1.6158 * Math.log(ratio));
    }

    /** Flux [µg m⁻² h⁻¹] of a fumigant; the ratio is VP·AR/(Koc·Sw·d). */
    public static double fumigant(double ratio) {
        return SECONDS_PER_HOUR * Math.exp(3.598 + 0.9400 * Math.log(ratio));
    }

    private static Outputs solve(Given given, Working working) {
        double flux = switch (given.word("form")) {
            case "surface" -> {
                double pressure = given.number("vapour_pressure_pa");
                yield showFlux(working, surface(pressure), "exp(11.779 + 0.85543 × ln({}))", pressure);
            }
            case "fumigant" -> {
                double ratio = showRatio(given, working, needed(given, "depth_cm", "a fumigant"));
                yield showFlux(working, fumigant(ratio), "3600 × exp(3.598 + 0.94 × ln({}))", ratio);
            }
            default -> {
                if (!given.has("depth_cm")) {
                    double ratio = showRatio(given, working, 1);
                    yield showFlux(working, sprayedOnSoil(ratio), "exp(19.35 + 1.0533 × ln({}))", ratio);
                }
                double ratio = showRatio(given, working, given.number("depth_cm"));
                yield showFlux(working, incorporated(ratio), "exp(28.355 + 1.6158 × ln({}))", ratio);
            }
        };
        return new Outputs().put("flux", flux);
    }

    private static double showRatio(Given given, Working working, double depth) {
        double pressure = given.number("vapour_pressure_pa");
        double rate = given.number("rate_kg_ha");
        double koc = needed(given, "koc_ml_g", "soil");
        double solubility = needed(given, "solubility_mg_l", "soil");
        return working.line(
                "pressure × rate over sorption, solubility and depth",
                pressure * rate / (koc * solubility * depth),
                "",
                "{} × {} ÷ ({} × {} × {})",
                pressure,
                rate,
                koc,
                solubility,
                depth);
    }

    private static double showFlux(Working working, double flux, String arithmetic, double number) {
        return working.line("flux", flux, "µg m⁻² h⁻¹", arithmetic, number);
    }

    private static double needed(Given given, String key, String form) {
        return given.maybe(key).orElseThrow(() -> given.refuse(key, "a number more than 0: " + form + " needs it"));
    }
}
