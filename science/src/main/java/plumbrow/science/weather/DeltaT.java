package plumbrow.science.weather;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How fast droplets dry: air temperature less wet bulb, and the life of one droplet.
 *
 *   ΔT = T − Tw;  life of a water droplet t = d²/(80·ΔT) [s], d [µm]
 *
 * Below 2 caution, 2 to 8 preferred, above 8 to 10 marginal, above 10 unsuitable: Australian advice (2 to 10 is also
 * printed), not US law. Within 0.5 of 2, 8 or 10 the error of the wet bulb can flip the class.
 *
 * Source: {@link WetBulb}; classes: Australian Bureau of Meteorology wording, seen second hand; life: Amsden 1962 (value
 * from memory).
 */
public final class DeltaT {
    private static final double[] EDGES = {2, 8, 10};
    private static final double BORDERLINE = 0.5;
    private static final double AMSDEN = 80;
    private static final String ADVICE =
            "Advice from Australia, not US law; the label's words on temperature and humidity rule.";

    public static final Figure FIGURE = Figure.declare("delta-t", Subject.WEATHER)
            .question("How fast do droplets dry in this air?")
            .alsoAsked("Is it too hot or too dry to spray?")
            .input(WetBulb.TEMPERATURE)
            .input(WetBulb.HUMIDITY)
            .output("delta_c", "Delta T", "°C")
            .output("class", "For spraying", "")
            .output("borderline", "Within 0.5 of an edge, so that the class may flip", "")
            .formula("delta = temperature − wet bulb")
            .source(WetBulb.SOURCE + "; classes: Australian Bureau of Meteorology, second hand", VERIFIED)
            .validity(WetBulb.VALIDITY)
            .caution(ADVICE)
            .example(
                    "temperature_c=20 humidity_pct=50",
                    "delta_c=6.30 class=preferred borderline=no",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "temperature_c=30 humidity_pct=30",
                    "delta_c=11.63 class=unsuitable",
                    "independent arithmetic",
                    COMPUTED)
            .example("temperature_c=25 humidity_pct=80", "delta_c=2.67", "independent arithmetic", COMPUTED)
            .example(
                    "temperature_c=15 humidity_pct=95",
                    "delta_c=0.59 class=caution",
                    "independent arithmetic",
                    COMPUTED)
            .example("temperature_c=28 humidity_pct=65", "delta_c=5.03", "independent arithmetic", COMPUTED)
            .example(
                    "temperature_c=32 humidity_pct=45",
                    "delta_c=8.93 class=marginal",
                    "independent arithmetic",
                    COMPUTED)
            .model(DeltaT::solve);

    public static final Figure LIFE = Figure.declare("droplet-life", Subject.WEATHER)
            .question("How long does a droplet of water last?")
            .input(number("droplet_um", "Diameter of the droplet", "µm", Range.above(0, 5000), "100"))
            .input(number("delta_c", "Delta T", "°C", Range.above(0, 40), "6"))
            .output("seconds", "Until it has dried", "s")
            .formula("seconds = diameter² ÷ (80 × delta T)")
            .source("[amsden-1962]", MEMORY)
            .validity("Pure water in still air; adjuvants and salts slow it.")
            .example("droplet_um=100 delta_c=6", "seconds=20.8", "independent arithmetic", COMPUTED)
            .example("droplet_um=200 delta_c=6", "seconds=83.3", "independent arithmetic", COMPUTED)
            .model(DeltaT::solveLife);

    private DeltaT() {}

    /** The class of a Delta T [°C]: caution, preferred, marginal or unsuitable. */
    public static String classOf(double deltaC) {
        if (deltaC < EDGES[0]) {
            return "caution";
        }
        if (deltaC <= EDGES[1]) {
            return "preferred";
        }
        return deltaC <= EDGES[2] ? "marginal" : "unsuitable";
    }

    /** Whether the error of the wet bulb could flip the class. */
    public static boolean borderline(double deltaC) {
        for (double edge : EDGES) {
            if (Math.abs(deltaC - edge) <= BORDERLINE) {
                return true;
            }
        }
        return false;
    }

    private static Outputs solve(Given given, Working working) {
        double celsius = given.number("temperature_c");
        double wetBulb = WetBulb.showWetBulb(given, working);
        double delta = working.line("delta T", celsius - wetBulb, "°C", "{} − {}", celsius, wetBulb);
        return new Outputs()
                .put("delta_c", delta)
                .put("class", classOf(delta))
                .put("borderline", borderline(delta) ? "yes" : "no");
    }

    private static Outputs solveLife(Given given, Working working) {
        double diameter = given.number("droplet_um");
        double delta = given.number("delta_c");
        return new Outputs()
                .put(
                        "seconds",
                        working.line(
                                "life",
                                diameter * diameter / (AMSDEN * delta),
                                "s",
                                "{}² ÷ (80 × {})",
                                diameter,
                                delta));
    }
}
