package plumbrow.science.soil;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How deep a tool mixes a herbicide, and how strong the mixed layer becomes.
 *
 *   mixed depth = k·working depth, k 0.5 for tined, disc and harrow tools in two crossing passes, 1 for a rotary tiller
 *   ppm = rate/(43,560·(depth/12)·62.428·ρ)·10⁶
 *
 *   rate  [lb/ac];  depth  [in];  ρ  bulk density [g/cm³]
 *
 * The field cultivator was not among the tools tested: its half is inferred (common practice). One pass is uneven.
 *
 * Source: Walker, Farrant, Bryant & Brown 1976, Weed Research, doi 10.1111/j.1365-3180.1976.tb00432.x.
 */
public final class Incorporation {
    private static final double LB_FT3_PER_G_CM3 = 62.428;
    private static final double FT2_PER_ACRE = 43_560;
    private static final double TINES = 0.5;

    public static final Figure FIGURE = Figure.declare("incorporation", Subject.SOIL)
            .question("How deep is the herbicide mixed, and how strong is the layer?")
            .alsoAsked("How deep does the field cultivator or disk mix the herbicide?")
            .input(number("rate_lb_ac", "Rate of active ingredient", "lb/ac", Range.NOT_NEGATIVE, "1"))
            .input(number("working_depth_in", "Working depth", "in", Range.above(0, 20), "4"))
            .input(word("tool", "Tool: tines are cultivators, harrows and discs", List.of("tines", "rotary"), "tines"))
            .input(number("passes", "Passes, the second across", "", Range.closed(1, 3), "2")
                    .orElse("2"))
            .input(number("bulk_density_g_cm3", "Bulk density", "g/cm³", Range.above(0, 3), "1.3")
                    .orElse("1.3"))
            .output("mixed_depth_in", "Depth of the mixed layer", "in")
            .output("ppm", "Strength of the layer", "ppm")
            .formula("mixed depth = half the working depth, rotary tiller all of it; ppm = rate ÷ weight of the layer")
            .source("[walker-1976]", VERIFIED)
            .validity(
                    "Two crossing passes of tines and discs, one of a rotary tiller. The field cultivator's half is inferred.")
            .caution(
                    "The label's depth, tool and hours are the law. Second pass shallower, else untreated soil comes up.")
            .example(
                    "rate_lb_ac=1 working_depth_in=2 tool=tines",
                    "mixed_depth_in=1.0 ppm=3.394",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=1 working_depth_in=4 tool=tines",
                    "mixed_depth_in=2.0 ppm=1.697",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=1 working_depth_in=3 tool=rotary passes=1",
                    "mixed_depth_in=3.0 ppm=1.131",
                    "independent arithmetic",
                    COMPUTED)
            .model(Incorporation::solve);

    public static final Figure SPECIES = Figure.declare("mixing-for-weed", Subject.SOIL)
            .question("Does the mixed layer lie where the weed germinates?")
            .input(number("mixed_depth_in", "Depth of the mixed layer", "in", Range.above(0, 20), "2"))
            .input(number("usual_in", "Depth from which the weed usually comes", "in", Range.above(0, 10), "0.5"))
            .input(number("deepest_in", "Deepest from which it comes", "in", Range.above(0, 10), "1"))
            .output("verdict", "The layer is", "")
            .formula("diluted where mixed depth > 2 × usual depth; escape from beneath where deepest > mixed depth")
            .source("Depths: [ndsu-2021-depth] and others; rule ours", PRACTICE)
            .validity("Deepest not above usual is refused.")
            .example(
                    "mixed_depth_in=2 usual_in=.5 deepest_in=1",
                    "verdict=diluted",
                    "waterhemp, [ndsu-2021-depth]: top half inch",
                    COMPUTED)
            .example(
                    "mixed_depth_in=2 usual_in=2 deepest_in=4",
                    "verdict=escape from beneath",
                    "giant ragweed, Harrison 2007: to 10 cm",
                    COMPUTED)
            .example(
                    "mixed_depth_in=2 usual_in=1 deepest_in=2",
                    "verdict=where it germinates",
                    "lambsquarters, [ndsu-2021-depth]",
                    COMPUTED)
            .model(Incorporation::solveSpecies);

    private Incorporation() {}

    /** Depth of the mixed layer, in the unit of the working depth. */
    public static double mixedDepth(double workingDepth, boolean rotary) {
        return rotary ? workingDepth : TINES * workingDepth;
    }

    /** Strength [ppm by weight] of a layer [in] that holds a rate [lb/ac]. */
    public static double ppm(double lbPerAcre, double depthInches, double bulkDensity) {
        return lbPerAcre / (FT2_PER_ACRE * depthInches / 12 * LB_FT3_PER_G_CM3 * bulkDensity) * 1e6;
    }

    private static Outputs solve(Given given, Working working) {
        double depth = given.number("working_depth_in");
        boolean rotary = given.word("tool").equals("rotary");
        double share = rotary ? 1 : TINES;
        double mixed = working.line("mixed depth", mixedDepth(depth, rotary), "in", "{} × {}", share, depth);
        double rate = given.number("rate_lb_ac");
        double density = given.number("bulk_density_g_cm3");
        if (!rotary && given.number("passes") < 2) {
            working.caution("One pass leaves it uneven: much stays near the surface. Cross it.");
        }
        double strength = working.line(
                "strength",
                ppm(rate, mixed, density),
                "ppm",
                "{} lb/ac ÷ (43,560 × {} ÷ 12 × 62.428 × {}) × 1,000,000",
                rate,
                mixed,
                density);
        return new Outputs().put("mixed_depth_in", mixed).put("ppm", strength);
    }

    private static Outputs solveSpecies(Given given, Working working) {
        double mixed =
                working.line("mixed depth", given.number("mixed_depth_in"), "in", "{}", given.number("mixed_depth_in"));
        double usual = given.number("usual_in");
        double deepest = given.number("deepest_in");
        if (deepest < usual) {
            throw given.refuse("deepest_in", "a depth not above usual_in (" + Numbers.plain(usual) + ")");
        }
        String verdict =
                mixed > 2 * usual ? "diluted" : deepest > mixed ? "escape from beneath" : "where it germinates";
        return new Outputs().put("verdict", verdict);
    }
}
