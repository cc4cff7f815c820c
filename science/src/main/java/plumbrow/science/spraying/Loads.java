package plumbrow.science.spraying;

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

/**
 * Loads that a field takes, and the last, part one.
 *
 *   acres a load = tank/GPA;  full loads = ⌊A/acres a load⌋;  last = A − full·acres a load;  even loads = ⌈A/acres a load⌉
 *
 *   A  [ac], tank  usable volume [gal], GPA  [gal/ac]; all > 0
 *
 * A remainder that is only the rounding of the division counts as none: a field of exactly two loads has no third.
 *
 * Source: University of Missouri G1272; Ozkan, Ohio State FABE-530.
 */
public final class Loads {
    /** Share of a load below which a remainder is the rounding of a division. */
    private static final double ROUNDING = 1e-9;

    public static final Figure FIGURE = Figure.declare("loads", Subject.SPRAYING)
            .question("How many loads does the field take, and how much is in the last?")
            .input(number("acres", "Acres to spray", "ac", Range.POSITIVE, "137"))
            .input(Asked.VOLUME)
            .input(number("tank_gal", "Usable volume of the tank", "gal", Range.POSITIVE, "1000"))
            .output("acres_per_load", "Acres a full load covers", "ac")
            .output("full_loads", "Full loads", "")
            .output("last_load_acres", "Acres of the last, part load", "ac")
            .output("total_gal", "Spray for the field", "gal")
            .output("last_load_gal", "Volume of the last, part load", "gal")
            .output("even_loads", "Loads if all are alike", "")
            .output("even_load_acres", "Acres of each of them", "ac")
            .formula(
                    "acres a load = tank ÷ gal/ac; full loads = whole part of acres ÷ acres a load; the rest is the last")
            .source("[missouri-g1272]; [ozkan-fabe530]", VERIFIED)
            .validity("Usable volume: less what the pump can't reach. Every number more than 0.")
            .caution(
                    "Plan for an empty tank at the end; what is left goes on a labelled crop at no more than the label's rate.")
            .example(
                    "acres=137 gpa=15 tank_gal=1000",
                    "acres_per_load=66.67 full_loads=2.0 last_load_acres=3.67 total_gal=2055 last_load_gal=55.0 even_loads=3.0 even_load_acres=45.67",
                    "independent arithmetic",
                    COMPUTED)
            .example("acres=3.5 gpa=15 tank_gal=60", "total_gal=52.5 full_loads=0.0", "[missouri-g1272]", VERIFIED)
            .example(
                    "acres=200 gpa=10 tank_gal=1000",
                    "full_loads=2.0 last_load_acres=0.0 even_loads=2.0",
                    "two whole loads, by hand",
                    COMPUTED)
            .model(Loads::solve);

    private Loads() {}

    /** Loads of a full tank that the acres take. */
    public static double fullLoads(double acres, double acresPerLoad) {
        return Math.floor(acres / acresPerLoad * (1 + ROUNDING));
    }

    /** Acres left for a part load, 0 where the full loads cover all. */
    public static double lastLoadAcres(double acres, double acresPerLoad) {
        double rest = acres - fullLoads(acres, acresPerLoad) * acresPerLoad;
        return rest > ROUNDING * acres ? rest : 0;
    }

    private static Outputs solve(Given given, Working working) {
        double acres = given.number("acres");
        double volume = given.number("gpa");
        double tank = given.number("tank_gal");
        double perLoad = working.line("acres a load", tank / volume, "ac", "{} gal ÷ {} gal/ac", tank, volume);
        double full = working.line(
                "full loads", fullLoads(acres, perLoad), "", "whole part of {} ac ÷ {} ac", acres, perLoad);
        double last = working.line(
                "acres of the last load", lastLoadAcres(acres, perLoad), "ac", "{} − {} × {}", acres, full, perLoad);
        double lastGallons =
                working.line("volume of the last load", last * volume, "gal", "{} ac × {} gal/ac", last, volume);
        double total = working.line("spray for the field", acres * volume, "gal", "{} ac × {} gal/ac", acres, volume);
        double even = working.line(
                "loads if all are alike", Numbers.wholeUp(acres / perLoad), "", "{} ÷ {}, rounded up", acres, perLoad);
        return new Outputs()
                .put("acres_per_load", perLoad)
                .put("full_loads", full)
                .put("last_load_acres", last)
                .put("total_gal", total)
                .put("last_load_gal", lastGallons)
                .put("even_loads", even)
                .put("even_load_acres", working.line("acres of each", acres / even, "ac", "{} ac ÷ {}", acres, even));
    }
}
