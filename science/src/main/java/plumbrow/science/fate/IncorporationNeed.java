package plumbrow.science.fate;

import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.PRACTICE;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether a soil herbicide must be worked in for its volatility, where the label is silent, and EU's trigger for vapour.
 *
 *   above 1e-4 mmHg: the same day (thiocarbamates within hours);  1e-6 to 1e-4 on warm moist soil without rain in sight:
 *   advised;  else not needed for volatility.  EU: 1e-4 Pa from soil, 1e-5 Pa from plants, at 20 °C
 *
 * Source: common practice; FOCUS Air 2008 (trigger, from memory).
 */
public final class IncorporationNeed {
    private static final double PA_PER_MMHG = 133.322368;
    private static final double EU_SOIL_PA = 1e-4;
    private static final double EU_PLANTS_PA = 1e-5;

    public static final Figure FIGURE = Figure.declare("incorporation-need", Subject.FATE)
            .question("Must the soil herbicide be worked in so that it does not go to the air?")
            .input(Asked.VAPOUR_PRESSURE)
            .input(word("soil", "Soil surface", List.of("warm-moist", "dry-or-cold"), "warm-moist"))
            .input(word("rain", "Rain forecast within seven days", List.of("yes", "no"), "no"))
            .input(word("thiocarbamate", "Whether it is a thiocarbamate", List.of("yes", "no"), "no")
                    .orElse("no"))
            .output("verdict", "Working in is", "")
            .output("mmhg_over_limit", "Vapour pressure over 0.0001 mmHg", "")
            .output("eu_soil", "EU trigger for vapour from soil", "")
            .output("eu_plants", "EU trigger for vapour from plants", "")
            .formula("more than 0.0001 mmHg: the same day; 0.000001 to 0.0001 on warm moist soil without rain: advised")
            .source("Common practice; trigger of [focus-air-2008]", PRACTICE)
            .validity("Where the label is silent. Dry soil holds it only until dew or rain.")
            .caution("Where the label gives hours and depth, those are the law.")
            .example(
                    "vapour_pressure_pa=.0147 soil=warm-moist rain=no",
                    "verdict=needed the same day mmhg_over_limit=1.1026 eu_soil=reached eu_plants=reached",
                    "trifluralin",
                    PRACTICE)
            .example(
                    "vapour_pressure_pa=3.2 soil=warm-moist rain=no thiocarbamate=yes",
                    "verdict=needed within hours",
                    "EPTC",
                    PRACTICE)
            .example(
                    "vapour_pressure_pa=.004 soil=warm-moist rain=no",
                    "verdict=advised, lightly",
                    "pendimethalin",
                    PRACTICE)
            .example(
                    "vapour_pressure_pa=.004 soil=dry-or-cold rain=no",
                    "verdict=not needed for this",
                    "the rule read apart from this code",
                    PRACTICE)
            .example(
                    "vapour_pressure_pa=.0000385 soil=warm-moist rain=no",
                    "verdict=not needed for this eu_soil=not reached eu_plants=reached",
                    "atrazine, [focus-air-2008]",
                    MEMORY)
            .example(
                    "vapour_pressure_pa=.000001 soil=warm-moist rain=no",
                    "eu_plants=not reached",
                    "below both",
                    COMPUTED)
            .model(IncorporationNeed::solve);

    private IncorporationNeed() {}

    private static Outputs solve(Given given, Working working) {
        double pressure = given.number("vapour_pressure_pa");
        double mmHg =
                working.line("vapour pressure in mmHg", pressure / PA_PER_MMHG, "", "{} ÷ {}", pressure, PA_PER_MMHG);
        double over = working.line("over the limit", mmHg / 1e-4, "", "{} ÷ 0.0001", mmHg);
        boolean exposed =
                given.word("soil").equals("warm-moist") && given.word("rain").equals("no");
        String verdict;
        if (over > 1) {
            verdict = given.word("thiocarbamate").equals("yes") ? "needed within hours" : "needed the same day";
        } else {
            verdict = exposed && mmHg >= 1e-6 ? "advised, lightly" : "not needed for this";
        }
        return new Outputs()
                .put("verdict", verdict)
                .put("mmhg_over_limit", over)
                .put("eu_soil", pressure >= EU_SOIL_PA ? "reached" : "not reached")
                .put("eu_plants", pressure >= EU_PLANTS_PA ? "reached" : "not reached");
    }
}
