package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The share of a rate that runs off a field in a season, by formulation and by solubility, and a rating lowered by practice.
 *
 *   field  most 0.5 %; emulsions of actives that water does not dissolve 1 %; wettable powders 2 %, above 10 % slope 5 %
 *   pond   1 % below 1 mg/L, 2 % to 100, 5 % above;  plants beside the field: the same shares with cuts at 10 and 100 mg/L
 *   rating foliar use, incorporation or banding lower the runoff rating by one class
 *
 * Source: Wauchope 1978 (0.5 and 5 % in its abstract, 1 and 2 % from memory); Urban & Cook 1986, EPA 540/9-85-001 (from memory); Illinois 60 Ways nos. 52 and 53 (rating).
 */
public final class RunoffShare {
    private static final List<String> RATINGS = List.of("high", "intermediate", "low");
    private static final double STEEP_PCT = 10;

    public static final Figure FIELD = Figure.declare("runoff-share", Subject.FATE)
            .question("What share of the rate runs off the field in a season?")
            .input(Asked.RATE)
            .input(word(
                    "form", "Formulation", List.of("most", "insoluble-emulsion", "wettable-powder"), "wettable-powder"))
            .input(number("slope_pct", "Slope of the field", "%", Range.closed(0, 100), "6")
                    .orElse("5"))
            .output("share_pct", "Runs off", "%")
            .output("lb_ac", "Runs off", "lb/ac")
            .formula(
                    "most 0.5 %, emulsions that do not dissolve 1 %, wettable powders 2 %, on more than 10 % slope 5 %")
            .source("[wauchope-1978]; 0.5 and 5 % seen in its abstract, 1 and 2 % not", MEMORY)
            .validity("An ordinary season. Heavy rain within one or two weeks of the spray takes more.")
            .caution(
                    "Strips of grass hold soil and what clings to it; what is dissolved runs through: see runoff-ratings.")
            .example(
                    "rate_lb_ac=2 form=wettable-powder slope_pct=6", "share_pct=2 lb_ac=.04", "[wauchope-1978]", MEMORY)
            .example(
                    "rate_lb_ac=2 form=wettable-powder slope_pct=12",
                    "share_pct=5 lb_ac=.10",
                    "[wauchope-1978], abstract: up to 5 %",
                    VERIFIED)
            .example("rate_lb_ac=2 form=most", "share_pct=.5 lb_ac=.010", "[wauchope-1978], abstract", VERIFIED)
            .model(RunoffShare::solveField);

    public static final Figure SCREEN = Figure.declare("runoff-screen-share", Subject.FATE)
            .question("Which share of the rate does EPA's first screen let run off?")
            .input(Asked.SOLUBILITY)
            .input(word("into", "Into a pond, or over plants beside the field", List.of("pond", "plants"), "pond"))
            .output("share_pct", "Runs off", "%")
            .formula("1, 2 or 5 %; cuts of solubility for a pond 1 and 100 mg/L, for plants 10 and 100")
            .source("[urban-cook-1986]", MEMORY)
            .validity("A first screen, put into farm-pond as runoff_pct. A cut belongs to the middle share.")
            .caution(Asked.SCREEN)
            .example("solubility_mg_l=33 into=pond", "share_pct=2", "[urban-cook-1986]", MEMORY)
            .example("solubility_mg_l=.3 into=pond", "share_pct=1", "[urban-cook-1986]", MEMORY)
            .example("solubility_mg_l=530 into=pond", "share_pct=5", "[urban-cook-1986]", MEMORY)
            .example("solubility_mg_l=5 into=plants", "share_pct=1", "[urban-cook-1986]", MEMORY)
            .model(RunoffShare::solveScreen);

    public static final Figure LOWERED = Figure.declare("runoff-rating-lowered", Subject.FATE)
            .question("What is the runoff rating when the product goes on leaves, into the soil or in a band?")
            .input(word("rating", "Runoff rating of the active ingredient", RATINGS, "high"))
            .input(word(
                    "practice",
                    "How it is used",
                    List.of("broadcast-on-soil", "foliar", "incorporated", "banded"),
                    "banded"))
            .output("rating", "Rating as used", "")
            .output("classes", "Classes lower", "")
            .formula("foliar, incorporated or banded: one class lower, not below low")
            .source("[illinois-60-ways], nos. 52 and 53", VERIFIED)
            .validity("Runoff ratings only; leaching is not lowered.")
            .example("rating=high practice=banded", "rating=intermediate classes=1", "[illinois-60-ways]", VERIFIED)
            .example("rating=low practice=foliar", "rating=low classes=0", "lowest class", PRACTICE)
            .example("rating=high practice=broadcast-on-soil", "rating=high classes=0", "as rated", COMPUTED)
            .model(RunoffShare::solveLowered);

    private RunoffShare() {}

    private static Outputs solveField(Given given, Working working) {
        double share = switch (given.word("form")) {
            case "insoluble-emulsion" -> 1;
            case "wettable-powder" -> given.number("slope_pct") > STEEP_PCT ? 5 : 2;
            default -> 0.5;
        };
        double rate = given.number("rate_lb_ac");
        return new Outputs()
                .put("share_pct", share)
                .put("lb_ac", working.line("runs off", rate * share / 100, "lb/ac", "{} × {} ÷ 100", rate, share));
    }

    private static Outputs solveScreen(Given given, Working working) {
        double solubility = given.number("solubility_mg_l");
        double low = given.word("into").equals("pond") ? 1 : 10;
        double share = solubility < low ? 1 : solubility <= 100 ? 2 : 5;
        working.line("solubility over the lower cut", solubility / low, "", "{} ÷ {}", solubility, low);
        return new Outputs().put("share_pct", share);
    }

    private static Outputs solveLowered(Given given, Working working) {
        int rated = RATINGS.indexOf(given.word("rating"));
        int lower = given.word("practice").equals("broadcast-on-soil") ? 0 : 1;
        int used = Math.min(rated + lower, RATINGS.size() - 1);
        double classes = working.line("classes lower", used - rated, "", "{} − {}", used + 1, rated + 1);
        return new Outputs().put("rating", RATINGS.get(used)).put("classes", classes);
    }
}
