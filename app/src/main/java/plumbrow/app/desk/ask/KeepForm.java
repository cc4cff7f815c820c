package plumbrow.app.desk.ask;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.ask.Keeping;
import plumbrow.advice.ask.Question;
import plumbrow.advice.names.Near;
import plumbrow.advice.text.TextRule;
import plumbrow.science.reference.Counties;
import plumbrow.science.reference.County;

/**
 * The names under which the field of a question is kept, as they were typed.
 *
 * @param faults what keeps it from being kept, by box
 */
record KeepForm(Keeping keeping, Map<String, String> faults) {
    static KeepForm read(Map<String, String> typed, Question question, LocalDate asOf) {
        Map<String, String> faults = new LinkedHashMap<>();
        String field = text(typed, "name", "a name for the field", faults);
        String farm = text(typed, "farm", "the farm it belongs to", faults);
        String grower = text(typed, "grower", "who farms it", faults);
        var answers = question.read(typed, asOf);
        String state = answers.choices().getOrDefault("state", "");
        String county = typed.getOrDefault("county", "").strip();
        if (state.isEmpty()) {
            faults.put("county", "Choose the state above first: rules differ by state and county.");
        } else {
            Optional<County> known = Counties.named(state, county);
            if (known.isEmpty()) {
                faults.put(
                        "county",
                        county.isEmpty()
                                ? "Expected the county: bans and bulletins go by it."
                                : "Found '" + county + "'; expected a county of " + state
                                        + Near.to(county, Counties.names(state))
                                                .map(near -> "; did you mean " + near + "?")
                                                .orElse("."));
            } else {
                county = known.get().name();
            }
        }
        if (!answers.faults().isEmpty()) {
            faults.put("name", "A box above can’t be read yet: put it right first.");
        }
        return new KeepForm(new Keeping(field, farm, grower, county), faults);
    }

    private static String text(Map<String, String> typed, String box, String what, Map<String, String> faults) {
        String text = typed.getOrDefault(box, "").strip();
        if (text.isEmpty()) {
            faults.put(box, "Expected " + what + ", in up to " + TextRule.NAME.longest() + " letters.");
        } else {
            TextRule.NAME.objection(text).ifPresent(expected -> faults.put(box, "Expected " + expected + "."));
        }
        return text;
    }
}
