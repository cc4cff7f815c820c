package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.OptionalDouble;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What a honey bee meets when a crop or weed in flower is sprayed.
 *
 *   contact = 2.7·rate;  dietary = 32·rate;  larva = 13.6·rate;  RQ = exposure/LD50
 *
 *   rate  [lb/ac];  exposures  [µg/bee], dietary and larva per day;  LD50  [µg/bee]
 *
 * The printed 32 and 13.6 stand for 110 ppm × 0.292 g/d and 110 ppm × 0.124 g/d. A quotient of 0.4 or more flags.
 *
 * Source: EPA, PMRA & CDPR, Guidance for Assessing Pesticide Risks to Bees, 19 June 2014 (numbers from memory).
 */
public final class BeeExposure {
    private static final double CONTACT_UG = 2.7;
    private static final double DIETARY_UG = 32;
    private static final double LARVA_UG = 13.6;
    private static final String PER_DAY = "µg/bee/day";

    public static final Figure FIGURE = Figure.declare("bee-exposure", Subject.FATE)
            .question("What does a bee meet when plants in flower are sprayed?")
            .alsoAsked("Is it dangerous for honey bees?")
            .input(Asked.RATE)
            .input(number("contact_ld50_ug", "Acute contact LD50", "µg/bee", Range.POSITIVE, "0.044")
                    .optional())
            .input(number("oral_ld50_ug", "Acute oral LD50", "µg/bee", Range.POSITIVE, "0.0039")
                    .optional())
            .output("contact_ug", "Contact", "µg/bee")
            .output("dietary_ug", "Eaten by an adult", PER_DAY)
            .output("larva_ug", "Eaten by a larva", PER_DAY)
            .sometimes("contact_rq", "Contact over its LD50", "")
            .sometimes("dietary_rq", "Eaten by an adult over the oral LD50", "")
            .formula(
                    "contact = 2.7 × rate; eaten by an adult = 32 × rate, by a larva 13.6 × rate; quotient = it ÷ LD50")
            .source("[epa-bees-2014]", MEMORY)
            .validity("Foliar spray. A quotient only where the LD50 is given; 0.4 or more is of concern.")
            .caution("The label's bee box and bloom wording decide. A missing LD50 is unknown, never clear.")
            .caution("Evening alone does not protect where residue stays toxic for more than 8 hours.")
            .example(
                    "rate_lb_ac=.1 contact_ld50_ug=.044 oral_ld50_ug=.0039",
                    "contact_ug=0.27 dietary_ug=3.2 larva_ug=1.36 contact_rq=6.13636 dietary_rq=820.513",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=1 contact_ld50_ug=100 oral_ld50_ug=100",
                    "contact_rq=0.027 dietary_rq=0.32",
                    "independent arithmetic",
                    COMPUTED)
            .model(BeeExposure::solve);

    private BeeExposure() {}

    /** Contact exposure [µg/bee] of a rate [lb/ac]. */
    public static double contactUg(double lbPerAcre) {
        return CONTACT_UG * lbPerAcre;
    }

    /** Daily exposure of an adult through food [µg/bee/day]. */
    public static double dietaryUg(double lbPerAcre) {
        return DIETARY_UG * lbPerAcre;
    }

    private static Outputs solve(Given given, Working working) {
        double rate = given.number("rate_lb_ac");
        double contact = working.line("contact", contactUg(rate), "µg/bee", "2.7 × {}", rate);
        double dietary = working.line("eaten by an adult", dietaryUg(rate), PER_DAY, "32 × {}", rate);
        double larva = working.line("eaten by a larva", LARVA_UG * rate, PER_DAY, "13.6 × {}", rate);
        Outputs outputs = new Outputs()
                .put("contact_ug", contact)
                .put("dietary_ug", dietary)
                .put("larva_ug", larva);
        quotient(outputs, working, "contact", contact, given.maybe("contact_ld50_ug"));
        quotient(outputs, working, "dietary", dietary, given.maybe("oral_ld50_ug"));
        return outputs;
    }

    private static void quotient(Outputs outputs, Working working, String route, double exposure, OptionalDouble ld50) {
        if (ld50.isEmpty()) {
            working.caution("No LD50 for the " + route + " route: this quotient is unknown.");
            return;
        }
        double quotient = working.line(
                route + " quotient", exposure / ld50.getAsDouble(), "", "{} ÷ {}", exposure, ld50.getAsDouble());
        if (!LevelOfConcern.reached(quotient, "bee", "acute").isEmpty()) {
            working.caution("The " + route + " quotient reaches the level of 0.4.");
        }
        outputs.put(route + "_rq", quotient);
    }
}
