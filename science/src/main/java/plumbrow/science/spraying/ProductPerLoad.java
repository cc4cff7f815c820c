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
 * Product that goes into one load.
 *
 *   per acre     rate·acres of the load             in the unit of the rate
 *   percent      rate/100·volume of the load        [gal]
 *   100-gal      rate·volume of the load/100        in the unit of the rate
 *
 * Percent and per hundred gallons are of the finished spray, products included (common practice).
 *
 * Source: University of Missouri G1272; Ozkan, Ohio State FABE-530.
 */
public final class ProductPerLoad {
    public static final Figure FIGURE = Figure.declare("product-per-load", Subject.SPRAYING)
            .question("How much product goes into this load?")
            .alsoAsked("How much do I put into the tank?")
            .input(number("rate", "Rate, in the unit of its basis", "", Range.NOT_NEGATIVE, "32"))
            .input(number("acres_per_load", "Acres this load covers", "ac", Range.NOT_NEGATIVE, "66.6667"))
            .input(number("tank_gal", "Volume of this load", "gal", Range.POSITIVE, "1000")
                    .optional())
            .input(word(
                            "basis",
                            "What the rate is of: an acre, percent of the spray, or 100 gallons of it",
                            List.of("acre", "percent", "100-gal"),
                            "acre")
                    .orElse("acre"))
            .output("amount", "Product for the load, in the unit of the rate; of a percent rate in gallons", "")
            .formula("per acre: rate × acres; percent: rate ÷ 100 × gallons; per 100 gal: rate × gallons ÷ 100")
            .source("[missouri-g1272]; [ozkan-fabe530]", VERIFIED)
            .validity("A rate of percent or of 100 gallons needs tank_gal; a rate per acre does not use it.")
            .caution(
                    "Never round a rate up past the label's highest. Fluid ounces and ounces of weight are different units.")
            .example("rate=32 acres_per_load=66.6667", "amount=2133.33", "16.67 gal a load are 2133.3 fl oz", COMPUTED)
            .example("rate=3 acres_per_load=3.5", "amount=10.5", "3 lb/ac on 3.5 ac, [missouri-g1272]", VERIFIED)
            .example(
                    "rate=.25 acres_per_load=66.6667 tank_gal=1000 basis=percent",
                    "amount=2.50",
                    "surfactant",
                    COMPUTED)
            .example(
                    "rate=8.5 acres_per_load=3.6667 tank_gal=55 basis=100-gal",
                    "amount=4.68",
                    "ammonium sulfate of the last load",
                    COMPUTED)
            .model(ProductPerLoad::solve);

    private ProductPerLoad() {}

    /** Product for the acres of a load, in the unit of the rate. */
    public static double ofAcres(double rate, double acres) {
        return rate * acres;
    }

    /** Product for the volume of a load [gal] at a rate per hundred of it: percent gives gallons. */
    public static double ofVolume(double rate, double gallons) {
        return rate * gallons / 100;
    }

    private static Outputs solve(Given given, Working working) {
        double rate = given.number("rate");
        String basis = given.word("basis");
        if (basis.equals("acre")) {
            double acres = given.number("acres_per_load");
            return new Outputs()
                    .put("amount", working.line("product", ofAcres(rate, acres), "", "{} × {} ac", rate, acres));
        }
        if (!given.has("tank_gal")) {
            throw given.refuse("tank_gal", "the gallons of this load: the rate is " + basis);
        }
        double gallons = given.number("tank_gal");
        String unit = basis.equals("percent") ? "gal" : "";
        return new Outputs()
                .put("amount", working.line("product", ofVolume(rate, gallons), unit, "{} × {} ÷ 100", rate, gallons));
    }
}
