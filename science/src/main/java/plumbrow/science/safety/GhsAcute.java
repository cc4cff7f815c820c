package plumbrow.science.safety;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import java.util.Optional;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** The class of acute poison on a safety sheet, and the estimate that stands for a class. Limits: {@link AcuteClass}. */
public final class GhsAcute {
    private static final int LAST_ON_SHEETS = 4;
    private static final String NOT_CLASSIFIED = "not classified";
    static final Input ROUTE =
            word("route", "How it enters", List.of("oral", "dermal", "gas", "vapour", "dust-mist"), "oral");

    public static final Figure FIGURE = Figure.declare("ghs-acute", Subject.SAFETY)
            .question("Which class of acute poison is this on a safety sheet?")
            .input(ROUTE)
            .input(number(
                    "value",
                    "Half-lethal dose or concentration, 4 h: mg/kg; gas ppm; vapour, dust, mist mg/L",
                    "",
                    Range.POSITIVE,
                    "300"))
            .output("category", "Category on US and EU sheets", "")
            .output("hazard_code", "Hazard code", "")
            .output("signal_word", "Signal word of the sheet", "")
            .output("un_category", "Category by the UN table, which has a fifth", "")
            .formula("oral 5, 50, 300, 2,000 mg/kg; dermal 50, 200, 1,000, 2,000; gas 100, 500, 2,500, 20,000 ppm;"
                    + " vapour 0.5, 2, 10, 20 mg/L; dust and mist 0.05, 0.5, 1, 5 mg/L")
            .source("[clp-annex-1], Table 3.1.1", VERIFIED)
            .validity(
                    "The limit itself belongs to the more severe category. Above category 4 US and EU sheets say not classified; UN"
                            + " category 5, for mouth and skin up to 5,000 mg/kg, is shown apart.")
            .caution("The signal word of the label follows another rule: neither corrects the other.")
            .example(
                    "route=oral value=300",
                    "category=3 hazard_code=H301 signal_word=Danger un_category=3",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "route=oral value=300.1",
                    "category=4 hazard_code=H302 signal_word=Warning",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "route=oral value=6825",
                    "category=not classified hazard_code=none signal_word=none un_category=not classified",
                    "independent arithmetic",
                    COMPUTED)
            .example("route=oral value=750", "category=4 hazard_code=H302", "independent arithmetic", COMPUTED)
            .example("route=oral value=98.0", "category=3 hazard_code=H301", "independent arithmetic", COMPUTED)
            .example("route=dermal value=1435", "category=4 hazard_code=H312", "independent arithmetic", COMPUTED)
            .example("route=dust-mist value=.1375", "category=2 hazard_code=H330", "independent arithmetic", COMPUTED)
            .example("route=dust-mist value=1.0", "category=3 hazard_code=H331", "independent arithmetic", COMPUTED)
            .example("route=vapour value=15", "category=4 hazard_code=H332", "independent arithmetic", COMPUTED)
            .model(GhsAcute::solve);

    public static final Figure ESTIMATE = Figure.declare("category-estimate", Subject.SAFETY)
            .question("Which dose stands for an ingredient of which only the class is known?")
            .input(ROUTE)
            .input(number("category", "Category 1 to 5", "", Range.closed(1, 5), "4"))
            .output("ate", "Acute toxicity estimate: mg/kg; gas ppm; vapour, dust, mist mg/L", "")
            .formula("a point within the category, for mixture-ate")
            .source("[ghs], Table 3.1.2", MEMORY)
            .validity("Whole categories; gas, vapour, dust and mist have no fifth. For calculating a mixture only.")
            .example("route=oral category=2", "ate=5", "[ghs], Table 3.1.2", MEMORY)
            .example("route=dermal category=4", "ate=1100", "[ghs], Table 3.1.2", MEMORY)
            .example("route=dust-mist category=2", "ate=.05", "[ghs], Table 3.1.2", MEMORY)
            .model(GhsAcute::solveEstimate);

    /**
     * What a value calls for.
     *
     * @param category 1 to 4; 0 where it is not classified
     * @param hazardCode such as H302; empty where it is not classified
     * @param signalWord Danger, Warning, or empty
     */
    public record Call(int category, String hazardCode, String signalWord) {
        private static final Call NONE = new Call(0, "", "");
    }

    private GhsAcute() {}

    /**
     * What a half-lethal dose or concentration calls for on US and EU sheets.
     *
     * @param route oral, dermal, gas, vapour or dust-mist
     * @param value mg/kg, ppm for a gas, mg/L; more than 0, may be infinite
     */
    public static Call call(String route, double value) {
        AcuteClass way = AcuteClass.of(route);
        return way.category(value)
                .filter(category -> category <= LAST_ON_SHEETS)
                .map(category -> new Call(category, way.hazardCode(category), signalWord(category)))
                .orElse(Call.NONE);
    }

    private static String signalWord(int category) {
        return category == LAST_ON_SHEETS ? "Warning" : "Danger";
    }

    private static Outputs solve(Given given, Working working) {
        AcuteClass route = AcuteClass.of(given.word("route"));
        return put(new Outputs(), working, route, given.number("value"));
    }

    /** Writes category, code and signal word of a value. */
    static Outputs put(Outputs outputs, Working working, AcuteClass route, double value) {
        Optional<Integer> category = route.category(value);
        int found = category.orElse(0);
        working.line(
                "category by the UN table, 0 for none",
                found,
                "",
                "table for " + route.word() + " at {} " + route.unit(),
                value);
        if (found == 0 || found > LAST_ON_SHEETS) {
            if (found > 0) {
                working.caution(
                        "UN category 5 (" + route.hazardCode(found) + "): sheets of the US and EU leave it out.");
            }
            outputs.put("category", NOT_CLASSIFIED).put("hazard_code", "none").put("signal_word", "none");
        } else {
            outputs.put("category", found)
                    .put("hazard_code", route.hazardCode(found))
                    .put("signal_word", signalWord(found));
        }
        if (found == 0) {
            return outputs.put("un_category", NOT_CLASSIFIED);
        }
        return outputs.put("un_category", found);
    }

    private static Outputs solveEstimate(Given given, Working working) {
        AcuteClass route = AcuteClass.of(given.word("route"));
        double category = given.number("category");
        if (category != Math.rint(category)) {
            throw given.refuse("category", "a whole number, 1 to 5");
        }
        double estimate = route.estimate((int) category)
                .orElseThrow(() -> given.refuse("category", "1 to 4: " + route.word() + " has no fifth"));
        return new Outputs()
                .put(
                        "ate",
                        working.line(
                                "estimate",
                                estimate,
                                "",
                                "table for " + route.word() + " at category " + Numbers.plain(category)));
    }
}
