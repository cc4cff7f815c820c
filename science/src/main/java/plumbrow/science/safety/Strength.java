package plumbrow.science.safety;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Product strengths and rates turned into pounds of ingredient, and the sum of one ingredient over all products.
 *
 *   lb/ac = fl oz/ac ÷ 128 × lb/gal;  same ingredient from another product: fl oz = lb/ac ÷ lb/gal × 128
 *   lb/gal = g/L × 0.008345404;  left under a cap = cap − Σ used − planned
 *
 * A cap counts every salt and ester of the same acid, seed treatment, burndown and premixes. The lowest cap on any label
 * used governs. Percent by weight is not percent by volume.
 *
 * Source: arithmetic; definitions of pound, gallon and litre.
 */
public final class Strength {
    private static final double FL_OZ_PER_GAL = 128;
    private static final double ROUNDING = 1e-9;
    private static final String LABEL =
            "Never above the labelled rate, number of passes or yearly sum: the current label is the law.";

    public static final Figure DOSE = Figure.declare("product-dose", Subject.SAFETY)
            .question("How much ingredient goes on an acre with this rate of product?")
            .input(number("fl_oz_ac", "Rate of product", "fl oz/ac", Range.NOT_NEGATIVE, "32"))
            .input(number("lb_gal", "Strength of the product", "lb/gal", Range.POSITIVE, "4.5"))
            .input(number(
                            "other_lb_gal",
                            "Strength of another product with the same ingredient",
                            "lb/gal",
                            Range.POSITIVE,
                            "3.0")
                    .optional())
            .output("lb_ac", "Ingredient", "lb/ac")
            .sometimes("other_fl_oz_ac", "Rate of the other product for as much", "fl oz/ac")
            .formula("lb/ac = fl oz ÷ 128 × strength; other rate = lb/ac ÷ other strength × 128")
            .source("Definition of the fluid ounce, as in [scipy]", VERIFIED)
            .validity("Both strengths on one basis, acid equivalent or active ingredient.")
            .caution(LABEL)
            .example(
                    "fl_oz_ac=32 lb_gal=4.50 other_lb_gal=3.0",
                    "lb_ac=1.125 other_fl_oz_ac=48",
                    "independent arithmetic",
                    COMPUTED)
            .model(Strength::solveDose);

    public static final Figure CONTAINER = Figure.declare("container-content", Subject.SAFETY)
            .question("How much of an ingredient is in a full container?")
            .input(number("container_gal", "Size of the container", "gal", Range.POSITIVE, "2.5"))
            .input(number("ai_lb_gal", "Strength of the product", "lb/gal", Range.POSITIVE, "4"))
            .output("ai_lb", "Ingredient", "lb")
            .formula("pounds = gallons × strength")
            .source("Arithmetic", PRACTICE)
            .validity("Liquids. Of a dry product: dry-dose.")
            .example("container_gal=2.5 ai_lb_gal=4", "ai_lb=10", "independent arithmetic", COMPUTED)
            .example("container_gal=30 ai_lb_gal=5", "ai_lb=150", "Q5", COMPUTED)
            .model(Strength::solveContainer);

    public static final Figure UNITS = Figure.declare("strength-units", Subject.SAFETY)
            .question("How many pounds per gallon are so many grams per litre?")
            .input(number("g_l", "Strength or density in grams per litre", "g/L", Range.NOT_NEGATIVE, "480"))
            .output("lb_gal", "Pounds per US gallon", "lb/gal")
            .formula("lb/gal = g/L × 0.008345404")
            .source("Definitions of pound, US gallon and litre, as in [scipy]", VERIFIED)
            .validity("Specific gravity 1 is 1,000 g/L.")
            .example("g_l=480", "lb_gal=4.006", "independent arithmetic", COMPUTED)
            .example("g_l=360", "lb_gal=3.004", "independent arithmetic", COMPUTED)
            .example("g_l=1140", "lb_gal=9.514", "specific gravity 1.14", COMPUTED)
            .model(Strength::solveUnits);

    public static final Figure DRY = Figure.declare("dry-dose", Subject.SAFETY)
            .question("How much ingredient is in this amount of dry product?")
            .input(number("amount", "Dry product, any unit of weight", "", Range.NOT_NEGATIVE, "1.33"))
            .input(number("weight_pct", "Share of the ingredient", "%", Range.PERCENT, "75"))
            .output("ingredient", "Ingredient, in the same unit", "")
            .formula("ingredient = amount × percent ÷ 100")
            .source("Arithmetic", PRACTICE)
            .validity("Percent by weight.")
            .caution(LABEL)
            .example("amount=1.33 weight_pct=75", "ingredient=1.0", "75 % dry at 1.33 oz/acre", COMPUTED)
            .model(Strength::solveDry);

    public static final Figure VOLUME = Figure.declare("volume-share", Subject.SAFETY)
            .question("How much adjuvant makes this percent of the spray?")
            .input(number("percent", "Share of the spray by volume", "%", Range.PERCENT, "0.25"))
            .input(number("spray_gal", "Spray", "gal", Range.NOT_NEGATIVE, "100"))
            .output("gal", "Adjuvant", "gal")
            .output("fl_oz", "Adjuvant", "fl oz")
            .formula("gallons = percent ÷ 100 × spray; fl oz = 128 × gallons")
            .source("Arithmetic", PRACTICE)
            .validity("Percent by volume of the finished spray.")
            .example("percent=.25 spray_gal=100", "gal=.25 fl_oz=32", "independent arithmetic", COMPUTED)
            .model(Strength::solveVolume);

    public static final Figure CAP = Figure.declare("rate-cap", Subject.SAFETY)
            .question("How much of this ingredient may still be used on the field?")
            .input(number("cap_lb_ac", "Lowest yearly cap on the labels used", "lb/ac", Range.POSITIVE, "2.5"))
            .input(list(
                    "used_lb_ac",
                    "Each use so far, all products and salts, on the cap's basis",
                    "lb/ac",
                    Range.NOT_NEGATIVE,
                    "1.5,0.75"))
            .input(number("plan_lb_ac", "Use planned", "lb/ac", Range.NOT_NEGATIVE, "0.5")
                    .orElse("0"))
            .output("total_lb_ac", "Sum with the plan", "lb/ac")
            .output("left_before_lb_ac", "Left before the plan", "lb/ac")
            .output("left_lb_ac", "Left after the plan; below 0 is over", "lb/ac")
            .output("within", "Whether the plan stays within the cap", "")
            .formula("left = cap − sum of all uses; within where left is 0 or more")
            .source("Rule of label caps over all products of one ingredient", PRACTICE)
            .validity(
                    "Twelve months or a season as the label defines. Amounts of one acid on one basis, acid equivalent or salt.")
            .caution(LABEL)
            .example(
                    "cap_lb_ac=2.5 used_lb_ac=1.5,.75 plan_lb_ac=.5",
                    "total_lb_ac=2.75 left_before_lb_ac=.25 left_lb_ac=-.25 within=no",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "cap_lb_ac=2.0 used_lb_ac=.95,.95",
                    "left_lb_ac=.10 within=yes",
                    "ester and choline are one acid",
                    COMPUTED)
            .model(Strength::solveCap);

    private Strength() {}

    private static Outputs solveDose(Given given, Working working) {
        double rate = given.number("fl_oz_ac");
        double strength = given.number("lb_gal");
        double pounds =
                working.line("ingredient", rate / FL_OZ_PER_GAL * strength, "lb/ac", "{} ÷ 128 × {}", rate, strength);
        Outputs outputs = new Outputs().put("lb_ac", pounds);
        if (given.has("other_lb_gal")) {
            double other = given.number("other_lb_gal");
            outputs.put(
                    "other_fl_oz_ac",
                    working.line(
                            "rate of the other product",
                            pounds / other * FL_OZ_PER_GAL,
                            "fl oz/ac",
                            "{} ÷ {} × 128",
                            pounds,
                            other));
        }
        return outputs;
    }

    private static Outputs solveContainer(Given given, Working working) {
        double gallons = given.number("container_gal");
        double strength = given.number("ai_lb_gal");
        return new Outputs()
                .put("ai_lb", working.line("ingredient", gallons * strength, "lb", "{} × {}", gallons, strength));
    }

    private static Outputs solveUnits(Given given, Working working) {
        double grams = given.number("g_l");
        double factor = IngredientPerGallon.LB_GAL_PER_KG_L;
        return new Outputs()
                .put(
                        "lb_gal",
                        working.line(
                                "pounds per gallon", grams / 1000 * factor, "lb/gal", "{} ÷ 1000 × {}", grams, factor));
    }

    private static Outputs solveDry(Given given, Working working) {
        double amount = given.number("amount");
        double percent = given.number("weight_pct");
        return new Outputs()
                .put(
                        "ingredient",
                        working.line("ingredient", amount * percent / 100, "", "{} × {} ÷ 100", amount, percent));
    }

    private static Outputs solveVolume(Given given, Working working) {
        double percent = given.number("percent");
        double spray = given.number("spray_gal");
        double gallons = working.line("adjuvant", percent / 100 * spray, "gal", "{} ÷ 100 × {}", percent, spray);
        return new Outputs()
                .put("gal", gallons)
                .put("fl_oz", working.line("fluid ounces", gallons * FL_OZ_PER_GAL, "fl oz", "{} × 128", gallons));
    }

    private static Outputs solveCap(Given given, Working working) {
        double cap = given.number("cap_lb_ac");
        double[] used = given.list("used_lb_ac");
        double plan = given.number("plan_lb_ac");
        double sum = 0;
        for (double use : used) {
            sum += use;
        }
        working.step("used so far", Numbers.terms(used), sum, "lb/ac");
        double before = working.line("left before the plan", cap - sum, "lb/ac", "{} − {}", cap, sum);
        double total = working.line("sum with the plan", sum + plan, "lb/ac", "{} + {}", sum, plan);
        double left = working.line("left after the plan", cap - total, "lb/ac", "{} − {}", cap, total);
        boolean within = left >= -ROUNDING * cap;
        return new Outputs()
                .put("total_lb_ac", total)
                .put("left_before_lb_ac", before)
                .put("left_lb_ac", within ? Math.max(left, 0) : left)
                .put("within", within ? "yes" : "no");
    }
}
