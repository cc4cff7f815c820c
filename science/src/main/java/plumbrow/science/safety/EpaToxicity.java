package plumbrow.science.safety;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The toxicity category and signal word that the numbers of a safety sheet call for.
 *
 *   category = the most severe over mouth, skin, lungs, eye and skin irritation;  I DANGER, II WARNING, III CAUTION
 *
 * The limits are {@link ToxicityCategory}. A missing route is unknown, and a milder word is then only provisional.
 *
 * Source: 40 CFR 156.62 and 156.64.
 */
public final class EpaToxicity {
    private static final String UNKNOWN = "unknown";
    private static final List<String> CATEGORIES = List.of("I", "II", "III", "IV");

    public static final Figure FIGURE = Figure.declare("epa-toxicity", Subject.SAFETY)
            .question("Which toxicity category and signal word do these numbers call for?")
            .input(number("oral_ld50_mg_kg", "Half-lethal dose by mouth, rat", "mg/kg", Range.POSITIVE, "3000")
                    .optional())
            .input(number("dermal_ld50_mg_kg", "Half-lethal dose on the skin", "mg/kg", Range.POSITIVE, "5001")
                    .optional())
            .input(number(
                            "inhalation_lc50_mg_l",
                            "Half-lethal concentration in air, 4 h",
                            "mg/L",
                            Range.POSITIVE,
                            "5.1")
                    .optional())
            .input(word("eye", "Category of eye irritation", CATEGORIES, "III").optional())
            .input(word("skin", "Category of skin irritation", CATEGORIES, "IV").optional())
            .input(word(
                            "limits",
                            "Table of limits: of the regulation, or of the agency's review manual",
                            List.of("regulation", "manual"),
                            "regulation")
                    .orElse("regulation"))
            .output("oral", "By mouth", "")
            .output("dermal", "On the skin", "")
            .output("inhalation", "In the lungs", "")
            .output("category", "Most severe category", "")
            .output("signal_word", "Signal word", "")
            .output("poison", "Whether Poison with skull and crossbones must stand beside it", "")
            .formula(
                    "oral I ≤ 50, II ≤ 500, III ≤ 5,000 mg/kg; dermal 200, 2,000, 20,000; inhalation 0.2, 2, 20 mg/L; above IV")
            .source("[40-cfr-156.62]; [40-cfr-156.64]", VERIFIED)
            .validity(
                    "The limit itself belongs to the more severe category. A route left out is unknown; with IV in all that is"
                            + " known the word is then unknown too. For IV on every route none is required, CAUTION may be used.")
            .caution("The label carries the agency's own decision: where its signal word is known, that word holds.")
            .caution(
                    "The word on the label and the word on the safety sheet follow different rules: neither corrects the other.")
            .example(
                    "oral_ld50_mg_kg=3000 dermal_ld50_mg_kg=5001 inhalation_lc50_mg_l=5.1 eye=III skin=IV",
                    "oral=III dermal=III inhalation=III category=III signal_word=CAUTION poison=no",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "oral_ld50_mg_kg=48 dermal_ld50_mg_kg=2500 inhalation_lc50_mg_l=3 eye=III skin=IV",
                    "oral=I category=I signal_word=DANGER poison=yes",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "oral_ld50_mg_kg=5001 dermal_ld50_mg_kg=20001 inhalation_lc50_mg_l=20.1 eye=I skin=IV",
                    "oral=IV dermal=IV inhalation=IV category=I signal_word=DANGER poison=no",
                    "the eye alone, so no skull",
                    COMPUTED)
            .example(
                    "oral_ld50_mg_kg=500 dermal_ld50_mg_kg=2001 inhalation_lc50_mg_l=2.1 eye=IV skin=IV",
                    "oral=II dermal=III category=II signal_word=WARNING",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "oral_ld50_mg_kg=5001 dermal_ld50_mg_kg=20001 inhalation_lc50_mg_l=20.1 eye=IV skin=IV",
                    "category=IV signal_word=none",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "oral_ld50_mg_kg=900 dermal_ld50_mg_kg=2001 eye=III skin=IV",
                    "inhalation=unknown category=III signal_word=CAUTION",
                    "provisional",
                    COMPUTED)
            .model(EpaToxicity::solve);

    /** Routes of entry, in the words of the sheets. */
    public enum Route {
        ORAL("oral_ld50_mg_kg", ToxicityCategory.Route.ORAL),
        DERMAL("dermal_ld50_mg_kg", ToxicityCategory.Route.DERMAL),
        INHALATION("inhalation_lc50_mg_l", ToxicityCategory.Route.INHALATION);

        private final String key;
        private final ToxicityCategory.Route route;

        Route(String key, ToxicityCategory.Route route) {
            this.key = key;
            this.route = route;
        }

        /** The key of this route's value in {@link #FIGURE}. */
        public String key() {
            return key;
        }
    }

    private EpaToxicity() {}

    /** The category, I to IV, of a value [mg/kg; mg/L over 4 h], more than 0, may be infinite, by the regulation. */
    public static String category(Route route, double value) {
        return ToxicityCategory.Limits.REGULATION.of(route.route, value).name();
    }

    /** The signal word of a category: DANGER, WARNING, CAUTION, or none. */
    public static String signalWord(String category) {
        return ToxicityCategory.valueOf(category).signalWord();
    }

    private static Outputs solve(Given given, Working working) {
        ToxicityCategory.Limits limits = given.word("limits").equals("manual")
                ? ToxicityCategory.Limits.MANUAL
                : ToxicityCategory.Limits.REGULATION;
        Map<ToxicityCategory.Route, ToxicityCategory> byRoute = new EnumMap<>(ToxicityCategory.Route.class);
        List<String> unknown = new ArrayList<>();
        ToxicityCategory worst = ToxicityCategory.IV;
        boolean poison = false;
        for (ToxicityCategory.Route route : ToxicityCategory.Route.values()) {
            String key = switch (route) {
                case ORAL -> "oral_ld50_mg_kg";
                case DERMAL -> "dermal_ld50_mg_kg";
                case INHALATION -> "inhalation_lc50_mg_l";
            };
            String name = route.name().toLowerCase(Locale.ROOT);
            if (given.has(key)) {
                ToxicityCategory category = limits.of(route, given.number(key));
                working.line(
                        name + " category " + category,
                        category.number(),
                        "",
                        "category for {} in the table of the " + given.word("limits"),
                        given.number(key));
                byRoute.put(route, category);
                worst = worse(worst, category);
                poison |= category == ToxicityCategory.I;
            } else {
                unknown.add(name);
            }
        }
        for (String irritation : List.of("eye", "skin")) {
            if (given.has(irritation)) {
                worst = worse(worst, ToxicityCategory.valueOf(given.word(irritation)));
            }
        }
        boolean anything = unknown.size() < 3 || given.has("eye") || given.has("skin");
        working.line("most severe category", worst.number(), "", "least of the categories known");
        say(given, working, unknown, worst, limits, anything);
        return new Outputs()
                .put("oral", shown(byRoute, ToxicityCategory.Route.ORAL))
                .put("dermal", shown(byRoute, ToxicityCategory.Route.DERMAL))
                .put("inhalation", shown(byRoute, ToxicityCategory.Route.INHALATION))
                .put("category", anything ? worst.name() : UNKNOWN)
                .put("signal_word", !unknown.isEmpty() && worst == ToxicityCategory.IV ? UNKNOWN : worst.signalWord())
                .put("poison", poison ? "yes" : unknown.isEmpty() ? "no" : UNKNOWN);
    }

    private static void say(
            Given given,
            Working working,
            List<String> unknown,
            ToxicityCategory worst,
            ToxicityCategory.Limits limits,
            boolean anything) {
        if (!unknown.isEmpty()) {
            String milder = anything && worst != ToxicityCategory.IV ? worst.signalWord() + " or worse" : UNKNOWN;
            working.caution("Provisional: " + String.join(", ", unknown) + " unknown, so the word is " + milder + ".");
        }
        if (!given.has("eye") || !given.has("skin")) {
            working.caution("Eye or skin irritation is not given: it alone can call for a stronger word.");
        }
        if (limits == ToxicityCategory.Limits.MANUAL) {
            working.caution("Limits of the agency's review manual (from memory), not those printed in the regulation.");
        }
    }

    private static ToxicityCategory worse(ToxicityCategory a, ToxicityCategory b) {
        return a.number() <= b.number() ? a : b;
    }

    private static String shown(Map<ToxicityCategory.Route, ToxicityCategory> byRoute, ToxicityCategory.Route route) {
        ToxicityCategory category = byRoute.get(route);
        return category == null ? UNKNOWN : category.name();
    }
}
