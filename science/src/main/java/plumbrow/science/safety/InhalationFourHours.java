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
 * A half-lethal concentration of one hour as that of four.
 *
 *   gas, vapour: LC50(4 h) = LC50(1 h)/2;  dust, mist: LC50(1 h)/4
 *
 * Other times are not converted.
 *
 * Source: OECD/GHS chapter 5 (studylib.net 18058032).
 */
public final class InhalationFourHours {
    public static final Figure FIGURE = Figure.declare("inhalation-4h", Subject.SAFETY)
            .question("What is a one-hour half-lethal concentration worth over four hours?")
            .input(number("lc50_1h_mg_l", "Half-lethal concentration, one hour", "mg/L", Range.POSITIVE, "4.0"))
            .input(word("form", "Gas or vapour, or dust or mist", List.of("gas-vapour", "dust-mist"), "dust-mist"))
            .output("lc50_4h_mg_l", "Half-lethal concentration, four hours", "mg/L")
            .formula("gas, vapour: ÷ 2; dust, mist: ÷ 4")
            .source("[oecd-ghs-5]", VERIFIED)
            .validity("One-hour data only; other times can't be converted.")
            .example("lc50_1h_mg_l=4.0 form=dust-mist", "lc50_4h_mg_l=1.0", "independent arithmetic", COMPUTED)
            .example("lc50_1h_mg_l=30 form=gas-vapour", "lc50_4h_mg_l=15", "independent arithmetic", COMPUTED)
            .model(InhalationFourHours::solve);

    private InhalationFourHours() {}

    private static Outputs solve(Given given, Working working) {
        double hour = given.number("lc50_1h_mg_l");
        double divisor = given.word("form").equals("gas-vapour") ? 2 : 4;
        return new Outputs()
                .put("lc50_4h_mg_l", working.line("four hours", hour / divisor, "mg/L", "{} ÷ {}", hour, divisor));
    }
}
