package plumbrow.science.fate;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Leaching potential of an active ingredient from its persistence and sorption: the groundwater ubiquity score.
 *
 *   GUS = log10(t½)·(4 − log10(Koc))
 *
 *   t½   half-life in soil [d], > 0;  Koc  sorption to organic carbon [mL/g], > 0
 *
 * Below one day the logarithm turns the sign: the score is given with a caution. Ionic actives and those bound like
 * paraquat do not sorb to organic carbon, so their Koc is a stand-in.
 *
 * Source: Gustafson 1989, Environ. Toxicol. Chem. 8:339 (npic.orst.edu/envir/gus.html). The two ways to name the score
 * disagree and are never mixed: see {@link LeachingBand}.
 */
public final class LeachingScore {
    public static final Figure FIGURE = Figure.declare("leaching-score", Subject.FATE)
            .question("How readily does the active ingredient leach?")
            .input(Asked.HALF_LIFE)
            .input(Asked.KOC)
            .output("score", "Groundwater ubiquity score", "")
            .output("class", "Class of four", "")
            .output("movement_rating", "Movement rating of six", "")
            .output("type", "Gustafson's word", "")
            .formula("score = log10(half-life) × (4 − log10(Koc))")
            .source("[gustafson-1989]", VERIFIED)
            .validity(
                    "Half-life and Koc more than 0. Below one day the sign turns: the score stands, but says nothing.")
            .caution(
                    "Ignores soil, rain, depth to water, rate and breakdown products. Half-lives vary fivefold: try the ends.")
            .caution("The two systems name one score differently, as 2.9: compare scores, or classes of one system.")
            .example(
                    "half_life_d=60 koc_ml_g=100",
                    "score=3.556303 class=high movement_rating=High type=leacher",
                    "atrazine",
                    COMPUTED)
            .example(
                    "half_life_d=90 koc_ml_g=200",
                    "score=3.320199 class=high movement_rating=High",
                    "metolachlor",
                    COMPUTED)
            .example(
                    "half_life_d=10 koc_ml_g=20",
                    "score=2.698970 class=moderate movement_rating=Moderate type=transition",
                    "2,4-D acid",
                    COMPUTED)
            .example(
                    "half_life_d=60 koc_ml_g=8000",
                    "score=0.172321 class=low movement_rating=Very Low type=nonleacher",
                    "trifluralin",
                    COMPUTED)
            .example(
                    "half_life_d=30 koc_ml_g=6070",
                    "score=0.320257 class=low movement_rating=Very Low",
                    "chlorpyrifos",
                    COMPUTED)
            .example(
                    "half_life_d=47 koc_ml_g=24000",
                    "score=-0.635750 class=extremely low movement_rating=Extremely Low",
                    "glyphosate",
                    COMPUTED)
            .example(
                    "half_life_d=90 koc_ml_g=16",
                    "score=5.463828 class=high movement_rating=Very High",
                    "picloram",
                    COMPUTED)
            .model(LeachingScore::solve);

    private LeachingScore() {}

    /** Groundwater ubiquity score of a half-life [d] and a Koc [mL/g], both more than 0. */
    public static double of(double halfLifeDays, double kocMlPerGram) {
        return Math.log10(halfLifeDays) * (4 - Math.log10(kocMlPerGram));
    }

    private static Outputs solve(Given given, Working working) {
        double halfLife = given.number("half_life_d");
        double koc = given.number("koc_ml_g");
        double score = working.line("score", of(halfLife, koc), "", "log10({}) × (4 − log10({}))", halfLife, koc);
        if (halfLife < 1) {
            working.caution("A half-life below one day is too short for the score: its sign is turned.");
        }
        return new Outputs()
                .put("score", score)
                .put("class", LeachingBand.fourClass(score))
                .put("movement_rating", LeachingBand.movementRating(score))
                .put("type", LeachingBand.type(score));
    }
}
