package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Flow and colour of a nozzle by its size number.
 *
 *   the number is gal/min at 40 psi with the point behind its first digit: 02 is 0.2, 015 is 0.15, 10 is 1.0
 *
 * The colour of the nozzle is its size, not its droplet class: that has a code of its own. Nominal flow at 3 bar, as
 * elsewhere, differs by about 1.3 %.
 *
 * Source: ISO 10625; colours 01 to 08: royalbrinkman.com nozzle coding (verified); light blue of 10: value from memory.
 */
public final class NozzleSize {
    private static final List<String> SIZES = List.of("01", "015", "02", "025", "03", "04", "05", "06", "08", "10");
    private static final List<String> COLOURS =
            List.of("orange", "green", "yellow", "lilac", "blue", "red", "brown", "grey", "white", "light blue");
    private static final double RATED_PSI = 40;
    private static final double PSI_PER_BAR = 14.5037738;
    private static final double LITRES_PER_GALLON = 3.785411784;

    public static final Figure FIGURE = Figure.declare("nozzle-size", Subject.SPRAYING)
            .question("How much does a nozzle of this size flow, and which colour has it?")
            .input(word("size", "Size number", SIZES, "04"))
            .input(number("psi", "Pressure at the nozzle", "psi", Range.POSITIVE, "40")
                    .orElse("40"))
            .output("gpm", "Flow at this pressure", "gal/min")
            .output("litres_min", "Flow at this pressure", "L/min")
            .output("litres_min_3_bar", "Flow at 3 bar", "L/min")
            .output("colour", "Colour", "")
            .formula("rated flow = size with the point behind the first digit, at 40 psi; flow = rated × √(psi ÷ 40)")
            .source("[iso-10625]", VERIFIED)
            .validity("Inside the nozzle's rated range, water.")
            .example("size=01", "gpm=0.10 litres_min_3_bar=0.395 colour=orange", "independent arithmetic", COMPUTED)
            .example("size=015", "gpm=0.15 litres_min_3_bar=0.592 colour=green", "independent arithmetic", COMPUTED)
            .example("size=02", "gpm=0.20 litres_min_3_bar=0.790 colour=yellow", "independent arithmetic", COMPUTED)
            .example("size=025", "gpm=0.25 litres_min_3_bar=0.987 colour=lilac", "independent arithmetic", COMPUTED)
            .example("size=03", "gpm=0.30 litres_min_3_bar=1.184 colour=blue", "independent arithmetic", COMPUTED)
            .example("size=04", "gpm=0.40 litres_min_3_bar=1.579 colour=red", "independent arithmetic", COMPUTED)
            .example("size=05", "gpm=0.50 litres_min_3_bar=1.974 colour=brown", "independent arithmetic", COMPUTED)
            .example("size=06", "gpm=0.60 litres_min_3_bar=2.369 colour=grey", "independent arithmetic", COMPUTED)
            .example("size=08", "gpm=0.80 litres_min_3_bar=3.158 colour=white", "independent arithmetic", COMPUTED)
            .example("size=10", "gpm=1.00 litres_min_3_bar=3.948 colour=light blue", "independent arithmetic", COMPUTED)
            .example("size=04 psi=29.00755", "litres_min=1.289", "2 bar; table 1.31", COMPUTED)
            .example("size=08 psi=29.00755", "litres_min=2.579", "2 bar; table 2.61", COMPUTED)
            .model(NozzleSize::solve);

    private NozzleSize() {}

    /** Flow at 40 psi [gal/min] of a size number such as 025. */
    public static double ratedGpm(String size) {
        return Double.parseDouble(size.charAt(0) + "." + size.substring(1));
    }

    private static Outputs solve(Given given, Working working) {
        String size = given.word("size");
        double rated = working.line("flow at 40 psi", ratedGpm(size), "gal/min", "{}", ratedGpm(size));
        double psi = given.number("psi");
        double flow = working.line(
                "flow", NozzlePressure.waterGpm(psi, rated, RATED_PSI), "gal/min", "{} × √({} ÷ 40)", rated, psi);
        double threeBar = working.line(
                "flow at 3 bar",
                NozzlePressure.waterGpm(3 * PSI_PER_BAR, rated, RATED_PSI) * LITRES_PER_GALLON,
                "L/min",
                "{} × √(3 × 14.5038 ÷ 40) × 3.78541",
                rated);
        return new Outputs()
                .put("gpm", flow)
                .put("litres_min", working.line("in litres", flow * LITRES_PER_GALLON, "L/min", "{} × 3.78541", flow))
                .put("litres_min_3_bar", threeBar)
                .put("colour", COLOURS.get(SIZES.indexOf(size)));
    }
}
