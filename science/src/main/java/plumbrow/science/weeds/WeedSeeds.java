package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How much seed weeds set where they crowd, and how long clean years take to empty the soil of it.
 *
 *   lambsquarters  w = 200/(1 + 0.1·N), seeds a plant = 420·w^1.19
 *   crowding       seeds a plant = Ymax·(1 + a·(N + z_c·N_crop))^−b
 *   clean years    factor a year = (1 − g)(1 − m);  years to a share s: ln(s)/ln(factor)
 *
 *   N  plants/m²;  w  weight of a plant [g];  g  share that emerges;  m  share of the rest that dies in the year
 *
 * Source: Freckleton & Watkinson 1998, J. Appl. Ecol. 35:904, Table 2; Maxwell et al. 1990, Weed Technol. 4:2, Table 1;
 * Buhler & Hartzler 2001, Weed Sci. 49:230 (decline of waterhemp).
 */
public final class WeedSeeds {
    public static final Figure LAMBSQUARTERS = Figure.declare("lambsquarters-seeds", Subject.WEEDS)
            .question("How many seeds do lambsquarters of this density set?")
            .input(number("plants_m2", "Plants that set seed", "plants/m²", Range.closed(0, 100_000), "10"))
            .output("weight_g", "Weight of a plant", "g")
            .output("seeds_plant", "Seeds a plant", "seeds")
            .output("seeds_m2", "Seeds on a square metre", "seeds/m²")
            .formula("weight = 200 ÷ (1 + 0.1 × plants); seeds a plant = 420 × weight^1.19")
            .source("[freckleton-1998], Table 2", VERIFIED)
            .validity("Without a crop: a closed crop leaves a small part of it.")
            .example("plants_m2=10", "weight_g=100 seeds_plant=100751", "420 × 100^1.19 by hand", COMPUTED)
            .example("plants_m2=0", "weight_g=200 seeds_m2=0", "limit of the formula", COMPUTED)
            .model(WeedSeeds::solveLambsquarters);

    public static final Figure CROWDED = Figure.declare("seeds-per-plant", Subject.WEEDS)
            .question("How many seeds does a weed set among its like and the crop?")
            .input(number("most_seeds", "Seeds of a plant alone", "seeds", Range.POSITIVE, "1000"))
            .input(number("plants_m2", "Weeds", "plants/m²", Range.NOT_NEGATIVE, "5"))
            .input(number("crop_m2", "Crop plants", "plants/m²", Range.NOT_NEGATIVE, "200"))
            .input(number("crop_weight", "Weeds that one crop plant stands for", "", Range.closed(0, 100), "1.1")
                    .orElse("1.1"))
            .input(number("area", "a of the formula", "m²", Range.closed(0, 1000), "1")
                    .orElse("1"))
            .input(number("power", "b of the formula", "", Range.closed(0, 5), "0.8")
                    .orElse("0.8"))
            .output("seeds_plant", "Seeds a plant", "seeds")
            .output("seeds_m2", "Seeds on a square metre", "seeds/m²")
            .formula("seeds a plant = most × (1 + a × (weeds + crop weight × crop))^−b")
            .source("[maxwell-1990]", VERIFIED)
            .validity("Defaults are those of the paper's Table 1 for susceptible plants; each species wants its own.")
            .example(
                    "most_seeds=1000 plants_m2=0 crop_m2=0",
                    "seeds_plant=1000 seeds_m2=0",
                    "limit of the formula",
                    COMPUTED)
            .example(
                    "most_seeds=1000 plants_m2=5 crop_m2=200",
                    "seeds_plant=13.1 seeds_m2=65.4",
                    "1000 × 226^−0.8",
                    COMPUTED)
            .model(WeedSeeds::solveCrowded);

    public static final Figure CLEAN = Figure.declare("seedbank-decline", Subject.WEEDS)
            .question("How many years without new seed until the soil is poor in weed seed?")
            .input(number("germination", "Share that emerges in a year", "", Range.SHARE, "0.05"))
            .input(number("dormant_mortality", "Share of the rest that dies in the year", "", Range.SHARE, "0.34"))
            .input(number("left_share", "Share of the seed that may be left", "", Range.open(0, 1), "0.05"))
            .output("factor", "Left after a year, of the year before", "")
            .output("years", "Years without new seed", "yr")
            .formula("factor = (1 − emerges) × (1 − dies); years = ln(left) ÷ ln(factor)")
            .source("Annual balance of the seedbank, weeds in the soil only", MEMORY)
            .validity("No plant sets seed in any of the years. Where nothing emerges or dies the seed stays: refused.")
            .caution("Sites differ: the same weed lost 37 % a year in one trial and nearly all in another.")
            .example(
                    "germination=.05 dormant_mortality=.34 left_share=.05",
                    "factor=.627 years=6.42",
                    "60.76 of 1000 after six years",
                    COMPUTED)
            .example(
                    "germination=.05 dormant_mortality=.34 left_share=.1546",
                    "years=4.00",
                    "83 to 12.83 % in 4 years; [buhler-hartzler-2001] saw 11",
                    COMPUTED)
            .model(WeedSeeds::solveClean);

    private WeedSeeds() {}

    private static Outputs solveLambsquarters(Given given, Working working) {
        double plants = given.number("plants_m2");
        double weight =
                working.line("weight of a plant", 200 / (1 + 0.1 * plants), "g", "200 ÷ (1 + 0.1 × {})", plants);
        double each = working.line("seeds a plant", 420 * Math.pow(weight, 1.19), "", "420 × {}^1.19", weight);
        double all = working.line("seeds on a square metre", each * plants, "", "{} × {}", each, plants);
        return new Outputs().put("weight_g", weight).put("seeds_plant", each).put("seeds_m2", all);
    }

    private static Outputs solveCrowded(Given given, Working working) {
        double plants = given.number("plants_m2");
        double crop = given.number("crop_m2");
        double weight = given.number("crop_weight");
        double load =
                working.line("plants that crowd it", plants + weight * crop, "", "{} + {} × {}", plants, weight, crop);
        double most = given.number("most_seeds");
        double area = given.number("area");
        double power = given.number("power");
        double each = working.line(
                "seeds a plant",
                most * Math.pow(1 + area * load, -power),
                "",
                "{} × (1 + {} × {})^({})",
                most,
                area,
                load,
                -power);
        double all = working.line("seeds on a square metre", each * plants, "", "{} × {}", each, plants);
        return new Outputs().put("seeds_plant", each).put("seeds_m2", all);
    }

    private static Outputs solveClean(Given given, Working working) {
        double emerges = given.number("germination");
        double dies = given.number("dormant_mortality");
        double factor =
                working.line("left after a year", (1 - emerges) * (1 - dies), "", "(1 − {}) × (1 − {})", emerges, dies);
        if (factor == 1) {
            throw given.refuse(
                    "dormant_mortality", "a share above 0 where nothing emerges: else the seed stays for ever");
        }
        double left = given.number("left_share");
        if (factor == 0) {
            return new Outputs().put("factor", factor).put("years", working.line("years", 1, "yr", "{}", 1));
        }
        double years = working.line("years", Math.log(left) / Math.log(factor), "yr", "ln({}) ÷ ln({})", left, factor);
        working.caution("After " + Numbers.plain(Math.ceil(years)) + " whole years.");
        return new Outputs().put("factor", factor).put("years", years);
    }
}
