package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * EPA's words for acute toxicity to wildlife. Hazard words, not risk.
 *
 *   oral [mg/kg]     < 10 very highly, 10 to 50 highly, to 500 moderately, to 2000 slightly, above practically nontoxic
 *   dietary [ppm]    < 50, 50 to 500, to 1000, to 5000, above;  water [mg/L]  < 0.1, 0.1 to 1, to 10, to 100, above
 *
 * Printed bands leave gaps (51 to 500); here they join, the upper end inside.
 *
 * Source: EPA Technical Overview of Ecological Risk Assessment; bird bands as quoted by the Minnesota Department of
 * Agriculture (verified); mammals and water: values from memory.
 */
public final class WildlifeToxicity {
    private static final List<String> ROUTES = List.of("oral", "dietary", "water");
    private static final double[][] BANDS = {{10, 50, 500, 2000}, {50, 500, 1000, 5000}, {0.1, 1, 10, 100}};

    public static final Figure FIGURE = Figure.declare("wildlife-toxicity", Subject.FATE)
            .question("By which word does EPA call this toxicity to wildlife?")
            .input(word(
                    "route",
                    "Oral of birds and mammals in mg/kg, dietary of birds in ppm, or water in mg/L",
                    ROUTES,
                    "oral"))
            .input(number("value", "LD50 or LC50", "", Range.POSITIVE, "50"))
            .output("word", "EPA's word", "")
            .formula("bands: oral 10, 50, 500, 2000; dietary 50, 500, 1000, 5000; water 0.1, 1, 10, 100")
            .source("[epa-technical-overview]", MEMORY)
            .validity("The first bound belongs to the milder word, each other to the stronger.")
            .caution("A hazard word, not a risk: exposure decides.")
            .example("route=oral value=10", "word=highly toxic", "table of the source, from memory", MEMORY)
            .example(
                    "route=oral value=50",
                    "word=highly toxic",
                    "[epa-technical-overview], words for birds, as quoted by sachyvalbystrice.cz",
                    VERIFIED)
            .example("route=oral value=50.5", "word=moderately toxic", "table of the source, from memory", MEMORY)
            .example(
                    "route=oral value=2000",
                    "word=slightly toxic",
                    "[epa-technical-overview], words for birds, as quoted by sachyvalbystrice.cz",
                    VERIFIED)
            .example(
                    "route=oral value=2000.1",
                    "word=practically nontoxic",
                    "[epa-technical-overview], words for birds, as quoted by sachyvalbystrice.cz",
                    VERIFIED)
            .example("route=water value=.1", "word=highly toxic", "table of the source, from memory", MEMORY)
            .example("route=water value=1", "word=highly toxic", "table of the source, from memory", MEMORY)
            .example("route=water value=100", "word=slightly toxic", "table of the source, from memory", MEMORY)
            .model(WildlifeToxicity::solve);

    private WildlifeToxicity() {}

    /** EPA's word for a half-lethal dose by mouth of a bird or mammal [mg/kg]. */
    public static String oral(double mgPerKg) {
        return of(mgPerKg, BANDS[0]);
    }

    /** EPA's word for a half-lethal concentration in water [mg/L]. */
    public static String water(double mgPerLitre) {
        return of(mgPerLitre, BANDS[2]);
    }

    private static String of(double value, double[] bands) {
        if (value < bands[0]) {
            return "very highly toxic";
        }
        if (value <= bands[1]) {
            return "highly toxic";
        }
        if (value <= bands[2]) {
            return "moderately toxic";
        }
        return value <= bands[3] ? "slightly toxic" : "practically nontoxic";
    }

    private static Outputs solve(Given given, Working working) {
        double value = given.number("value");
        working.line("toxicity", value, "", "{}", value);
        return new Outputs().put("word", of(value, BANDS[ROUTES.indexOf(given.word("route"))]));
    }
}
