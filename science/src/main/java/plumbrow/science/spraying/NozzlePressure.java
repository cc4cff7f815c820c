package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Pressure and flow of a nozzle, for water and for heavier carriers.
 *
 *   P = P0·(q·CF/q0)²;  q = q0·√(P/P0)/CF;  CF = √(ρ/8.345)
 *
 *   q  flow wanted [gal/min];  q0, P0  rated flow of water and its pressure [psi];  ρ  density of the spray [lb/gal]
 *   CF conversion factor: what flows as water where the solution flows 1
 *
 * Inside the nozzle's rated range, pressure at the nozzle. Four times the pressure doubles the flow. Published tables take
 * water as 8.34; 8.345 changes none of their two decimals.
 *
 * Source: University of Nebraska CropWatch 2016, Setting the Sprayer Flow Rate for Non-Water Solutions.
 */
public final class NozzlePressure {
    /** Density of water [lb/gal]. */
    public static final double WATER_LB_PER_GAL = 8.345;

    private static final Input DENSITY = number(
                    "density_lb_gal", "Density of the spray", "lb/gal", Range.closed(4, 25), "10.65")
            .orElse("8.345");
    private static final String RATED =
            "Inside the rated range of the nozzle; pressure at the nozzle, not at the regulator.";
    private static final String SOURCE = "[nebraska-solutions-2016]";

    public static final Figure FIGURE = Figure.declare("nozzle-pressure", Subject.SPRAYING)
            .question("At which pressure does the nozzle flow this much?")
            .input(number("gpm", "Flow wanted of the spray", "gal/min", Range.POSITIVE, "0.6061"))
            .input(Asked.RATED_FLOW)
            .input(Asked.RATED_PRESSURE)
            .input(DENSITY)
            .output("psi", "Pressure at the nozzle", "psi")
            .output("water_gpm", "The same as a flow of water", "gal/min")
            .formula("pressure = rated pressure × (flow × √(density ÷ 8.345) ÷ rated flow)²")
            .source(SOURCE + "; orifice law", VERIFIED)
            .validity(RATED)
            .caution("Look the droplet class up again at this pressure. " + Asked.LABEL_RULES)
            .example("gpm=.6061 rated_gpm=.5", "psi=58.8", "size 05", COMPUTED)
            .example("gpm=.6061 rated_gpm=.6", "psi=40.8", "size 06", COMPUTED)
            .example(
                    "gpm=20 rated_gpm=20 density_lb_gal=10.65",
                    "water_gpm=22.6",
                    "20 gal/ac of 28 % nitrogen take the nozzle of 22.6 gal/ac of water, [nebraska-solutions-2016]",
                    VERIFIED)
            .model(NozzlePressure::solve);

    public static final Figure FLOW = Figure.declare("flow-at-pressure", Subject.SPRAYING)
            .question("How much does the nozzle flow at this pressure?")
            .input(number("psi", "Pressure at the nozzle", "psi", Range.POSITIVE, "60"))
            .input(Asked.RATED_FLOW)
            .input(Asked.RATED_PRESSURE)
            .input(DENSITY)
            .output("gpm", "Flow of the spray", "gal/min")
            .formula("flow = rated flow × √(pressure ÷ rated pressure) ÷ √(density ÷ 8.345)")
            .source(SOURCE + "; orifice law", VERIFIED)
            .validity(RATED)
            .example("psi=30 rated_gpm=.4", "gpm=0.346", "size 04", COMPUTED)
            .example("psi=60 rated_gpm=.4", "gpm=0.490", "size 04", COMPUTED)
            .model(NozzlePressure::solveFlow);

    public static final Figure CARRIER = Figure.declare("carrier-factor", Subject.SPRAYING)
            .question("For which water volume is the nozzle chosen when the carrier is not water?")
            .input(Asked.VOLUME)
            .input(number("density_lb_gal", "Density of the spray", "lb/gal", Range.closed(4, 25), "10.65"))
            .output("factor", "Conversion factor", "")
            .output("water_gpa", "Volume of water to choose the nozzle for", "gal/ac")
            .formula("factor = √(density ÷ 8.345); water volume = volume × factor")
            .source(SOURCE, VERIFIED)
            .validity("Clear solutions; suspensions and thick mixtures must be caught and measured.")
            .example(
                    "gpa=20 density_lb_gal=10.65",
                    "factor=1.13 water_gpa=22.6",
                    "28-0-0, [nebraska-solutions-2016]",
                    VERIFIED)
            .example("gpa=20 density_lb_gal=11.4", "factor=1.17", "10-34-0, [nebraska-solutions-2016]", VERIFIED)
            .model(NozzlePressure::solveCarrier);

    private NozzlePressure() {}

    /** Flow of water that a nozzle would give where it gives one of a spray of this density [lb/gal]. */
    public static double carrierFactor(double lbPerGallon) {
        return Math.sqrt(lbPerGallon / WATER_LB_PER_GAL);
    }

    /** Pressure [psi] for a flow of water [gal/min]. */
    public static double psi(double waterGpm, double ratedGpm, double ratedPsi) {
        double times = waterGpm / ratedGpm;
        return ratedPsi * times * times;
    }

    /** Flow of water [gal/min] at a pressure [psi]. */
    public static double waterGpm(double psi, double ratedGpm, double ratedPsi) {
        return ratedGpm * Math.sqrt(psi / ratedPsi);
    }

    private static Outputs solve(Given given, Working working) {
        double rated = given.number("rated_gpm");
        double ratedPsi = given.number("rated_psi");
        double factor = showFactor(working, given.number("density_lb_gal"));
        double flow = given.number("gpm");
        double water = working.line("as water", flow * factor, "gal/min", "{} gal/min × {}", flow, factor);
        double pressure = working.line(
                "pressure", psi(water, rated, ratedPsi), "psi", "{} psi × ({} ÷ {})²", ratedPsi, water, rated);
        return new Outputs().put("psi", pressure).put("water_gpm", water);
    }

    private static Outputs solveFlow(Given given, Working working) {
        double factor = showFactor(working, given.number("density_lb_gal"));
        double psi = given.number("psi");
        double rated = given.number("rated_gpm");
        double ratedPsi = given.number("rated_psi");
        return new Outputs()
                .put(
                        "gpm",
                        working.line(
                                "flow",
                                waterGpm(psi, rated, ratedPsi) / factor,
                                "gal/min",
                                "{} gal/min × √({} psi ÷ {} psi) ÷ {}",
                                rated,
                                psi,
                                ratedPsi,
                                factor));
    }

    private static Outputs solveCarrier(Given given, Working working) {
        double factor = showFactor(working, given.number("density_lb_gal"));
        double volume = given.number("gpa");
        return new Outputs()
                .put("factor", factor)
                .put(
                        "water_gpa",
                        working.line("water volume", volume * factor, "gal/ac", "{} gal/ac × {}", volume, factor));
    }

    private static double showFactor(Working working, double density) {
        return working.line("conversion factor", carrierFactor(density), "", "√({} ÷ 8.345)", density);
    }
}
