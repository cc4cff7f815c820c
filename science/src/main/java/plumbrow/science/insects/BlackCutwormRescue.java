package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether cut corn is rescued from black cutworms.
 *
 *   grain  3 % of plants cut or more, and larvae there;  seed production  3 % of leaves fed on and 2 larvae on 100 plants
 *
 * Above 989 degree days of base 50 °F after the moths came the larvae are pupae and cut no more: see black-cutworm-stage.
 *
 * Source: bulletin.ipm.illinois.edu 199904h; agebb.missouri.edu bcwforecast (end of feeding at 640).
 */
public final class BlackCutwormRescue {
    private static final double CUT_PCT = 3;
    private static final double SEED_LARVAE = 2;
    private static final double PUPATES_DD = 640;

    public static final Figure FIGURE = Figure.declare("black-cutworm-rescue", Subject.INSECTS)
            .question("Are so many corn plants cut that black cutworms are treated?")
            .input(number("hurt_pct", "Plants cut; for seed corn, fed on", "%", Range.PERCENT, "4"))
            .input(number("larvae_100", "Larvae found on 100 plants", "larvae", Range.NOT_NEGATIVE, "5"))
            .input(word("corn", "Grain or seed production", List.of("grain", "seed"), "grain")
                    .orElse("grain"))
            .input(number(
                            "degree_days",
                            "Degree days since the moths came, base 50 °F",
                            "DD °F",
                            Range.closed(0, 5000),
                            "365")
                    .optional())
            .output("of_threshold", "Plants hurt over the threshold", "")
            .output("verdict", "In words", "")
            .formula(
                    "treat from 3 % of plants hurt on, with larvae there (seed: 2 on 100 plants), until they pupate at 641")
            .source("[illinois-cutworm-1999]; [missouri-cutworm]", VERIFIED)
            .validity("Corn to about V5. Seed production is printed 3 to 5 %: 3 is taken.")
            .caution("No larvae found is no reason to spray: look under clods beside a cut plant.")
            .example(
                    "hurt_pct=4 larvae_100=5 degree_days=365",
                    "of_threshold=1.333 verdict=treat",
                    "[illinois-cutworm-1999]",
                    VERIFIED)
            .example("hurt_pct=2 larvae_100=5", "verdict=below the threshold", "[illinois-cutworm-1999]", VERIFIED)
            .example(
                    "hurt_pct=3 larvae_100=0",
                    "verdict=no larvae: look again before treating",
                    "[illinois-cutworm-1999]",
                    VERIFIED)
            .example(
                    "hurt_pct=3 larvae_100=1 corn=seed",
                    "verdict=below the threshold",
                    "[illinois-cutworm-1999]",
                    VERIFIED)
            .example(
                    "hurt_pct=5 larvae_100=5 degree_days=650",
                    "verdict=cutting is over: the larvae are pupae",
                    "[missouri-cutworm]",
                    VERIFIED)
            .model(BlackCutwormRescue::solve);

    private BlackCutwormRescue() {}

    private static Outputs solve(Given given, Working working) {
        double hurt = given.number("hurt_pct");
        double larvae = given.number("larvae_100");
        double of = working.line("plants hurt over the threshold", hurt / CUT_PCT, "", "{} ÷ {}", hurt, CUT_PCT);
        boolean seed = given.word("corn").equals("seed");
        String verdict;
        if (given.has("degree_days") && given.number("degree_days") > PUPATES_DD) {
            verdict = "cutting is over: the larvae are pupae";
        } else if (of < 1 || (seed && larvae < SEED_LARVAE && larvae > 0)) {
            verdict = "below the threshold";
        } else {
            verdict = larvae > 0 ? "treat" : "no larvae: look again before treating";
        }
        return new Outputs().put("of_threshold", of).put("verdict", verdict);
    }
}
