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
 * Product that holds the active ingredient wanted on an acre.
 *
 *   liquid  lb/ac ÷ lb/gal      [gal/ac];  dry  lb/ac ÷ share of active ingredient      [lb/ac]
 *
 * A rate in acid equivalent needs the content in acid equivalent, never that of the salt.
 *
 * Source: University of Missouri G1272.
 */
public final class ProductForIngredient {
    private static final double PINTS_PER_GALLON = 8;
    private static final double OUNCES_PER_POUND = 16;
    private static final Input WANTED =
            number("ingredient_lb_ac", "Active ingredient wanted", "lb/ac", Range.NOT_NEGATIVE, "1.5");
    private static final String EQUIVALENT = "A rate in acid equivalent needs the content in acid equivalent.";

    public static final Figure LIQUID = Figure.declare("liquid-for-ingredient", Subject.SPRAYING)
            .question("How much liquid product holds the active ingredient wanted?")
            .input(WANTED)
            .input(number("ingredient_lb_gal", "Active ingredient in a gallon", "lb/gal", Range.POSITIVE, "4"))
            .output("gal_ac", "Product", "gal/ac")
            .output("pints_ac", "The same in pints", "pt/ac")
            .formula("gal/ac = lb/ac ÷ lb/gal")
            .source("[missouri-g1272]", VERIFIED)
            .validity(EQUIVALENT)
            .example(
                    "ingredient_lb_ac=1.5 ingredient_lb_gal=4",
                    "gal_ac=0.375 pints_ac=3.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "ingredient_lb_ac=75 ingredient_lb_gal=2.982",
                    "gal_ac=25.151",
                    "75 lb of nitrogen from 28 % at 10.65 lb/gal, [nebraska-solutions-2016]",
                    VERIFIED)
            .model(ProductForIngredient::solveLiquid);

    public static final Figure DRY = Figure.declare("dry-for-ingredient", Subject.SPRAYING)
            .question("How much dry product holds the active ingredient wanted?")
            .input(WANTED)
            .input(number("ingredient_pct", "Active ingredient in the product", "%", Range.above(0, 100), "80"))
            .output("lb_ac", "Product", "lb/ac")
            .output("oz_ac", "The same in ounces of weight", "oz/ac")
            .formula("lb/ac = lb/ac of active ingredient ÷ its share")
            .source("[missouri-g1272]", VERIFIED)
            .validity(EQUIVALENT)
            .example(
                    "ingredient_lb_ac=.75 ingredient_pct=80",
                    "lb_ac=0.9375 oz_ac=15.0",
                    "independent arithmetic",
                    COMPUTED)
            .example("ingredient_lb_ac=2 ingredient_pct=80", "lb_ac=2.5", "[missouri-g1272]", VERIFIED)
            .model(ProductForIngredient::solveDry);

    private ProductForIngredient() {}

    private static Outputs solveLiquid(Given given, Working working) {
        double wanted = given.number("ingredient_lb_ac");
        double content = given.number("ingredient_lb_gal");
        double gallons = working.line("product", wanted / content, "gal/ac", "{} lb/ac ÷ {}", wanted, content);
        return new Outputs()
                .put("gal_ac", gallons)
                .put("pints_ac", working.line("in pints", gallons * PINTS_PER_GALLON, "pt/ac", "{} × 8", gallons));
    }

    private static Outputs solveDry(Given given, Working working) {
        double wanted = given.number("ingredient_lb_ac");
        double content = given.number("ingredient_pct");
        double pounds =
                working.line("product", wanted / (content / 100), "lb/ac", "{} lb/ac ÷ ({} ÷ 100)", wanted, content);
        return new Outputs()
                .put("lb_ac", pounds)
                .put("oz_ac", working.line("in ounces", pounds * OUNCES_PER_POUND, "oz/ac", "{} × 16", pounds));
    }
}
