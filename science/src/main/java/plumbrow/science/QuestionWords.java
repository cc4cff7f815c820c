package plumbrow.science;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The words of a question that carry it, each brought to one form: without ending, by one spelling, and by the word the
 * figures use where the trade has several.
 */
final class QuestionWords {
    private static final Pattern BETWEEN = Pattern.compile("[^a-z0-9]+");

    private static final Set<String> CARRY_NOTHING = Set.of(
            ("a about again against an and any are as at be been by can could did do does for from get give given go good had has have he her"
                            + " how i if in into is it its itself just many may me much must my need no not of off on one or our out"
                            + " own same shall she should so some soon take than that the their them then there these they this"
                            + " those to too until up us was way we were what when where which while who whose why will with"
                            + " would you your")
                    .split(" "));

    /** Words alike to the asker, the figures' own word first. */
    private static final List<String> ALIKE = List.of(
            "container jug bottle pail drum",
            "bag sack",
            "herbicide weedkiller weedspray",
            "insect bug",
            "bee honeybee pollinator",
            "toxic poison poisonous toxicity deadly dangerous",
            "pay profit profitable worth worthwhile return",
            "neighbour neighbor",
            "vapour vapor fume",
            "litre liter",
            "colour color",
            "gallon gal",
            "pound lb",
            "acre ac",
            "bushel bu",
            "foot feet ft",
            "ounce oz",
            "temperature temp",
            "enter reenter reentry rei",
            "residue carryover",
            "seed kernel",
            "corn maize",
            "soybean bean soy",
            "spill leak spilled spilt",
            "information evpi evppi evsi voi",
            "degree gdd",
            "shortfall cvar",
            "protective ppe",
            "sheet sds msds",
            "lethal ld50 lc50",
            "interval phi");

    private static final Map<String, String> FORMS = forms();

    private QuestionWords() {}

    static List<String> of(String text) {
        List<String> words = new ArrayList<>();
        for (String word : BETWEEN.split(text.toLowerCase(Locale.ROOT), -1)) {
            if (word.length() > 1 && !CARRY_NOTHING.contains(word)) {
                String stem = stem(word);
                words.add(FORMS.getOrDefault(stem, stem));
            }
        }
        return List.copyOf(words);
    }

    /** The word less its commonest English endings; what is left need not be a word, only the same for all its kin. */
    private static String stem(String word) {
        String stem = word;
        if (stem.length() > 4 && stem.endsWith("ies")) {
            stem = stem.substring(0, stem.length() - 3) + "y";
        } else if (stem.length() > 3 && stem.endsWith("s") && !stem.endsWith("ss") && !stem.endsWith("us")) {
            stem = stem.substring(0, stem.length() - 1);
        }
        for (String ending : List.of("able", "ing", "ed", "er")) {
            if (stem.endsWith(ending) && stem.length() - ending.length() > 2) {
                stem = stem.substring(0, stem.length() - ending.length());
                break;
            }
        }
        if (stem.length() > 3 && stem.endsWith("e")) {
            stem = stem.substring(0, stem.length() - 1);
        }
        int last = stem.length() - 1;
        // stopping, stopped → stop; but press, spill and off keep their two letters by staying alike everywhere.
        boolean twice = last > 2 && stem.charAt(last) == stem.charAt(last - 1);
        return twice ? stem.substring(0, last) : stem;
    }

    private static Map<String, String> forms() {
        Map<String, String> forms = new HashMap<>();
        for (String group : ALIKE) {
            String[] words = group.split(" ", -1);
            for (String word : words) {
                forms.put(stem(word), stem(words[0]));
            }
        }
        return Map.copyOf(forms);
    }
}
