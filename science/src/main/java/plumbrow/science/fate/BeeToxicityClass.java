package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The toxicity class of an active ingredient to honey bees.
 *
 *   < 2 µg/bee highly toxic;  2 to < 11 moderately toxic;  ≥ 11 practically nontoxic
 *
 * The published middle band ends at 10.99; here it runs to just below 11, so that no value falls between.
 *
 * Source: Atkins 1981 as used by EPA (value from memory).
 */
public final class BeeToxicityClass {
    public static final Figure FIGURE = Figure.declare("bee-toxicity-class", Subject.FATE)
            .question("How toxic is the active ingredient to honey bees?")
            .input(number("ld50_ug", "Acute LD50, the lower of contact and oral", "µg/bee", Range.POSITIVE, "0.044"))
            .output("class", "Toxicity class", "")
            .formula("below 2 µg highly toxic; 2 to below 11 moderately toxic; 11 or more practically nontoxic")
            .source("[atkins-1981], as used by EPA", MEMORY)
            .validity("Acute, adult bees. Growth regulators harm brood although the adult LD50 is 11 or more.")
            .caution("A hazard word, not a risk. The label's bee box and bloom wording decide.")
            .example("ld50_ug=1.99", "class=highly toxic", "table of the source, from memory", MEMORY)
            .example("ld50_ug=2", "class=moderately toxic", "table of the source, from memory", MEMORY)
            .example("ld50_ug=10.995", "class=moderately toxic", "table of the source, from memory", MEMORY)
            .example("ld50_ug=11", "class=practically nontoxic", "table of the source, from memory", MEMORY)
            .model(BeeToxicityClass::solve);

    private BeeToxicityClass() {}

    /** The class of an acute LD50 [µg/bee]. */
    public static String of(double ld50Ug) {
        if (ld50Ug < 2) {
            return "highly toxic";
        }
        return ld50Ug < 11 ? "moderately toxic" : "practically nontoxic";
    }

    private static Outputs solve(Given given, Working working) {
        double ld50 = working.line("acute LD50", given.number("ld50_ug"), "µg/bee", "{}", given.number("ld50_ug"));
        return new Outputs().put("class", of(ld50));
    }
}
