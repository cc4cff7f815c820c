package plumbrow.science.safety;

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
 * How much a containment around tanks must hold, and whether a container counts as empty.
 *
 *   containment  110 % of the largest tank where rain falls in, 100 % under a roof;  pad  750 gal, or the largest if smaller
 *   empty (RCRA) 1 inch or less, or 3 % by weight up to 110 gal, 0.3 % above; acutely hazardous: three rinses besides
 *
 * Source: 40 CFR 165.85(c), edition of 2015; 40 CFR 261.7 at labtrain.noaa.gov (empty).
 */
public final class StoreAndContainers {
    private static final double PAD_GAL = 750;

    public static final Figure CONTAINMENT = Figure.declare("store-containment", Subject.SAFETY)
            .question("How many gallons must the containment hold?")
            .input(number("largest_gal", "Largest tank", "gal", Range.POSITIVE, "1500"))
            .input(word("roof", "Open to weather, or under a roof", List.of("open", "roofed"), "open"))
            .input(word("kind", "Wall around tanks, or a pad for filling", List.of("tanks", "pad"), "tanks"))
            .output("gal", "Capacity", "gal")
            .formula("tanks: 1.1 × largest where open, 1.0 where roofed; pad: 750 gallons or the largest if smaller")
            .source("[40-cfr-165.85], (c)", VERIFIED)
            .validity(
                    "Walls around tanks hold besides what other tanks and fittings inside displace: add it. Binds dealers,"
                            + " commercial applicators and custom blenders from 500 gallons on; for a farm it is advice. States go further.")
            .example("largest_gal=1500 roof=open kind=tanks", "gal=1650", "[40-cfr-165.85], (c)(2)", VERIFIED)
            .example("largest_gal=1500 roof=roofed kind=tanks", "gal=1500", "[40-cfr-165.85], (c)(1)", VERIFIED)
            .example("largest_gal=1500 roof=open kind=pad", "gal=750", "[40-cfr-165.85], (c)(3)", VERIFIED)
            .example("largest_gal=275 roof=open kind=pad", "gal=275", "[40-cfr-165.85], (c)(4)", VERIFIED)
            .model(StoreAndContainers::solveContainment);

    public static final Figure EMPTY = Figure.declare("container-empty", Subject.SAFETY)
            .question("Does this container count as empty by the waste rules?")
            .input(number("container_gal", "Size of the container", "gal", Range.POSITIVE, "2.5"))
            .input(number("residue_lb", "Residue that will not pour", "lb", Range.NOT_NEGATIVE, "0.5"))
            .input(number("full_lb", "What it holds when full", "lb", Range.POSITIVE, "25"))
            .input(number("residue_in", "Residue on the bottom", "in", Range.NOT_NEGATIVE, "2")
                    .optional())
            .input(word(
                    "acute", "Whether the active is acutely hazardous (P list)", List.of("yes", "no", "unknown"), "no"))
            .input(word("rinsed", "Whether it was rinsed three times", List.of("yes", "no"), "no")
                    .orElse("no"))
            .output("empty", "Counts as empty", "")
            .output("residue_pct", "Residue, share of the full weight", "%")
            .formula(
                    "1 inch or less, or at most 3 % by weight up to 110 gallons, 0.3 % above; acutely hazardous only after three rinses")
            .source("[40-cfr-261.7]", VERIFIED)
            .validity(
                    "After all has been poured out that pours. Where it is not known whether the active is on the P list: unknown.")
            .caution("The label asks for three rinses of every rigid container, whatever the waste rules say.")
            .example(
                    "container_gal=2.5 residue_lb=.5 full_lb=25 acute=no",
                    "empty=yes residue_pct=2",
                    "3 % up to 110 gallons",
                    VERIFIED)
            .example(
                    "container_gal=275 residue_lb=20 full_lb=2750 residue_in=2 acute=no",
                    "empty=no residue_pct=.727",
                    "0.3 % above 110 gallons",
                    VERIFIED)
            .example(
                    "container_gal=275 residue_lb=20 full_lb=2750 residue_in=1 acute=no",
                    "empty=yes",
                    "one inch",
                    VERIFIED)
            .example("container_gal=2.5 residue_lb=.1 full_lb=25 acute=yes", "empty=no", "three rinses", VERIFIED)
            .example(
                    "container_gal=2.5 residue_lb=.1 full_lb=25 acute=unknown",
                    "empty=unknown",
                    "not known is not no",
                    COMPUTED)
            .model(StoreAndContainers::solveEmpty);

    private StoreAndContainers() {}

    private static Outputs solveContainment(Given given, Working working) {
        double largest = given.number("largest_gal");
        if (given.word("kind").equals("pad")) {
            double pad = Math.min(largest, PAD_GAL);
            return new Outputs().put("gal", working.line("capacity", pad, "gal", "{}", pad));
        }
        double times = given.word("roof").equals("open") ? 1.1 : 1;
        return new Outputs().put("gal", working.line("capacity", times * largest, "gal", "{} × {}", times, largest));
    }

    private static Outputs solveEmpty(Given given, Working working) {
        double residue = given.number("residue_lb");
        double full = given.number("full_lb");
        if (residue > full) {
            throw given.refuse("residue_lb", "not more than full_lb, what it holds when full");
        }
        double pct = working.line("residue, percent", 100 * residue / full, "", "100 × {} ÷ {}", residue, full);
        boolean inch = given.has("residue_in") && given.number("residue_in") <= 1;
        boolean little = inch || pct <= (given.number("container_gal") <= 110 ? 3 : 0.3);
        boolean rinsed = given.word("rinsed").equals("yes");
        String acute = given.word("acute");
        String empty =
                !little ? "no" : acute.equals("no") || rinsed ? "yes" : acute.equals("unknown") ? "unknown" : "no";
        return new Outputs().put("empty", empty).put("residue_pct", pct);
    }
}
