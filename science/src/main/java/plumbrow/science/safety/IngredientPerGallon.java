package plumbrow.science.safety;

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
 * How strong a liquid product is.
 *
 *   lb/gal = percent by weight × density / 100;  g/L = lb/gal / 0.008345404;  density of specific gravity 1: 8.345404 lb/gal
 *
 * Percent by weight is not percent by volume. Bulk density in lb/ft³ is for dry goods.
 *
 * Source: definition of pound, gallon and litre.
 */
public final class IngredientPerGallon {
    /** 1 kg/L in pounds per US gallon, from 0.45359237 kg and 3.785411784 L. */
    public static final double LB_GAL_PER_KG_L = 3.785411784 / 0.45359237;

    public static final Figure FIGURE = Figure.declare("ingredient-per-gallon", Subject.SAFETY)
            .question("How many pounds of the ingredient are in a gallon?")
            .input(number("weight_pct", "Share of the ingredient by weight", "%", Range.PERCENT, "42.6"))
            .input(number("density_lb_gal", "Weight of a gallon", "lb/gal", Range.above(0, 50), "9.4"))
            .output("lb_gal", "Ingredient", "lb/gal")
            .output("g_l", "Ingredient", "g/L")
            .formula("lb/gal = percent × density ÷ 100; g/L = lb/gal × 119.826")
            .source("Definitions of pound, US gallon and litre, as in [scipy]", VERIFIED)
            .validity("Percent by weight. A gallon of specific gravity 1 weighs 8.345 lb.")
            .example("weight_pct=42.6 density_lb_gal=9.4", "lb_gal=4.004 g_l=480", "independent arithmetic", COMPUTED)
            .example(
                    "weight_pct=48.7 density_lb_gal=11.3247",
                    "lb_gal=5.52",
                    "potassium glyphosate at 1.357 g/mL",
                    COMPUTED)
            .example(
                    "weight_pct=41.0 density_lb_gal=9.764",
                    "lb_gal=4.00",
                    "isopropylamine glyphosate at 1.17 g/mL",
                    COMPUTED)
            .example("weight_pct=43.8 density_lb_gal=9.4303", "lb_gal=4.13", "at specific gravity 1.13", COMPUTED)
            .model(IngredientPerGallon::solve);

    private IngredientPerGallon() {}

    private static Outputs solve(Given given, Working working) {
        double percent = given.number("weight_pct");
        double density = given.number("density_lb_gal");
        double pounds =
                working.line("ingredient per gallon", percent * density / 100, "", "{} × {} ÷ 100", percent, density);
        double grams = working.line(
                "ingredient per litre", pounds / LB_GAL_PER_KG_L * 1000, "", "{} ÷ {} × 1000", pounds, LB_GAL_PER_KG_L);
        return new Outputs().put("lb_gal", pounds).put("g_l", grams);
    }
}
