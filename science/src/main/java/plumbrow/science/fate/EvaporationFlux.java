package plumbrow.science.fate;

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
 * The flux of an active ingredient from leaves and residue that hold it like a liquid, in one line.
 *
 *   ER = 1464·P·M;  P vapour pressure [Pa], M molecular weight [g/mol], ER [µg/(m²·h)]
 *
 * Source: Mackay & van Wesenbeeck 2014, scribd.com/document/322139784 (exponent and unit lost in that copy).
 */
public final class EvaporationFlux {
    private static final double MACKAY = 1464;

    public static final Figure FIGURE = Figure.declare("evaporation-flux", Subject.FATE)
            .question("How fast does the active ingredient leave leaves and residue, by the one-line form?")
            .input(Asked.VAPOUR_PRESSURE)
            .input(number("mw", "Molecular weight", "g/mol", Range.POSITIVE, "281.3"))
            .output("flux", "Flux of the first day", "µg/(m²·h)")
            .formula("flux = 1464 × vapour pressure × molecular weight")
            .source("[mackay-2014]", VERIFIED)
            .validity("Surfaces that hold the active like a liquid. Good to a factor of two to ten.")
            .caution("Puts products in order; it is not a share lost. Beside it stands vapour-flux.")
            .example(
                    "vapour_pressure_pa=.004 mw=281.3", "flux=1647.3", "pendimethalin; turf lost 688 to 2360", COMPUTED)
            .model(EvaporationFlux::solve);

    private EvaporationFlux() {}

    private static Outputs solve(Given given, Working working) {
        double pressure = given.number("vapour_pressure_pa");
        double weight = given.number("mw");
        return new Outputs()
                .put(
                        "flux",
                        working.line("flux", MACKAY * pressure * weight, "", "{} × {} × {}", MACKAY, pressure, weight));
    }
}
