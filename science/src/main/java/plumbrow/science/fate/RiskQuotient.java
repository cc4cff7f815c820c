package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Exposure against toxicity, and the levels of concern it reaches: see {@link LevelOfConcern}.
 *
 *   RQ = exposure/toxicity; a level is reached at RQ ≥ level
 *
 * Exposure and toxicity in the same unit. Acute toxicity is an LD50, LC50 or EC50 (plants EC25, a listed plant NOAEC),
 * chronic a NOAEC. A toxicity known only as "more than" gives an upper bound of the quotient.
 *
 * Source: EPA Technical Overview of Ecological Risk Assessment; levels as in {@link LevelOfConcern}.
 */
public final class RiskQuotient {
    public static final Figure FIGURE = Figure.declare("risk-quotient", Subject.FATE)
            .question("Does the exposure reach a level of concern?")
            .input(number("exposure", "Exposure, in the unit of the toxicity", "", Range.NOT_NEGATIVE, "50"))
            .input(number("toxicity", "Toxicity: LD50, LC50, EC50, EC25 or NOAEC", "", Range.POSITIVE, "100"))
            .input(word("group", "Who is exposed", LevelOfConcern.GROUPS, "bird"))
            .input(word("kind", "Kind of toxicity", List.of("acute", "chronic"), "acute")
                    .orElse("acute"))
            .input(word("toxicity_is", "How the toxicity is known", List.of("measured", "more-than"), "measured")
                    .orElse("measured"))
            .output("rq", "Risk quotient", "")
            .output("concern", "Levels reached, strongest first", "")
            .formula("quotient = exposure ÷ toxicity; a level is reached at or above its value")
            .source("[epa-technical-overview]; bird levels: [fws-quotients]", MEMORY)
            .validity(
                    "Fish and invertebrates 0.5, 0.1, 0.05; birds and mammals 0.5, 0.2, 0.1; bees 0.4; plants 1; chronic 1, not for plants.")
            .caution(Asked.SCREEN)
            .example(
                    "exposure=.5 toxicity=1 group=bird",
                    "rq=0.5 concern=[acute, restricted-use, listed-species]",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "exposure=.19 toxicity=1 group=bird",
                    "rq=0.19 concern=[listed-species]",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "exposure=.06 toxicity=1 group=fish",
                    "rq=0.06 concern=[listed-species]",
                    "independent arithmetic",
                    COMPUTED)
            .example("exposure=.39 toxicity=1 group=bee", "rq=0.39 concern=[none]", "independent arithmetic", COMPUTED)
            .example("exposure=1 toxicity=1 group=plant", "rq=1.0 concern=[acute]", "independent arithmetic", COMPUTED)
            .example("exposure=273.336 toxicity=72.0430 group=bird", "rq=3.79407", "20 g bird on short grass", COMPUTED)
            .model(RiskQuotient::solve);

    private RiskQuotient() {}

    private static Outputs solve(Given given, Working working) {
        double exposure = given.number("exposure");
        double toxicity = given.number("toxicity");
        String group = given.word("group");
        String kind = given.word("kind");
        if (kind.equals("chronic") && group.equals("plant")) {
            throw given.refuse("kind", "acute: plants have no chronic level");
        }
        double quotient = working.line("risk quotient", exposure / toxicity, "", "{} ÷ {}", exposure, toxicity);
        if (given.word("toxicity_is").equals("more-than")) {
            working.caution("The toxicity is known only as more than " + Numbers.plain(toxicity)
                    + ": the quotient is at most this, and a level it reaches may not be reached.");
        }
        List<String> reached = LevelOfConcern.reached(quotient, group, kind);
        return new Outputs().put("rq", quotient).put("concern", reached.isEmpty() ? List.of("none") : reached);
    }
}
