package plumbrow.documents.sheet.part;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Official wordings of hazard statements.
 *
 * Source: UN GHS Annex 3 (from memory); only those that a crop-protection sheet is likely to carry.
 */
final class HazardWords {
    private static final Map<String, String> WORDS = new LinkedHashMap<>();
    private static final Map<String, Pattern> PATTERNS = new LinkedHashMap<>();

    static {
        put("H220", "Extremely flammable gas");
        put("H221", "Flammable gas");
        put("H222", "Extremely flammable aerosol");
        put("H223", "Flammable aerosol");
        put("H224", "Extremely flammable liquid and vapo(?:u)?r");
        put("H225", "Highly flammable liquid and vapo(?:u)?r");
        put("H226", "Flammable liquid and vapo(?:u)?r");
        put("H227", "Combustible liquid");
        put("H228", "Flammable solid");
        put("H271", "May cause fire or explosion; strong oxidi[sz]er");
        put("H272", "May intensify fire; oxidi[sz]er");
        put("H280", "Contains gas under pressure; may explode if heated");
        put("H290", "May be corrosive to metals");
        put("H300", "Fatal if swallowed");
        put("H301", "Toxic if swallowed");
        put("H302", "Harmful if swallowed");
        put("H303", "May be harmful if swallowed");
        put("H304", "May be fatal if swallowed and enters airways");
        put("H310", "Fatal in contact with skin");
        put("H311", "Toxic in contact with skin");
        put("H312", "Harmful in contact with skin");
        put("H313", "May be harmful in contact with skin");
        put("H314", "Causes severe skin burns and eye damage");
        put("H315", "Causes skin irritation");
        put("H316", "Causes mild skin irritation");
        put("H317", "May cause (?:an )?allergic skin reaction");
        put("H318", "Causes serious eye damage");
        put("H319", "Causes serious eye irritation");
        put("H320", "Causes eye irritation");
        put("H330", "Fatal if inhaled");
        put("H331", "Toxic if inhaled");
        put("H332", "Harmful if inhaled");
        put("H333", "May be harmful if inhaled");
        put("H334", "May cause allergy or asthma symptoms or breathing difficulties if inhaled");
        put("H335", "May cause respiratory irritation");
        put("H336", "May cause drowsiness or dizziness");
        put("H340", "May cause genetic defects");
        put("H341", "Suspected of causing genetic defects");
        put("H350", "May cause cancer");
        put("H351", "Suspected of causing cancer");
        put("H360", "May damage fertility or the unborn child");
        put("H361", "Suspected of damaging fertility or the unborn child");
        put("H370", "Causes damage to organs");
        put("H371", "May cause damage to organs");
        put("H372", "Causes damage to organs through prolonged or repeated exposure");
        put("H373", "May cause damage to organs through prolonged or repeated exposure");
        put("H400", "Very toxic to aquatic life");
        put("H401", "Toxic to aquatic life");
        put("H402", "Harmful to aquatic life");
        put("H410", "Very toxic to aquatic life with long[- ]lasting effects");
        put("H411", "Toxic to aquatic life with long[- ]lasting effects");
        put("H412", "Harmful to aquatic life with long[- ]lasting effects");
        put("H413", "May cause long[- ]lasting harmful effects to aquatic life");
    }

    private HazardWords() {}

    private static void put(String code, String words) {
        WORDS.put(code, words);
        PATTERNS.put(code, Pattern.compile(words.replace(" ", "\\s+"), Pattern.CASE_INSENSITIVE));
    }

    /** Where the official words of a code end in a text that begins with them; empty where others stand there. */
    static Optional<Integer> end(String code, String text) {
        Pattern pattern = PATTERNS.get(code.length() > 4 ? code.substring(0, 4) : code);
        if (pattern == null) {
            return Optional.empty();
        }
        Matcher matcher = pattern.matcher(text);
        return matcher.lookingAt() ? Optional.of(matcher.end()) : Optional.empty();
    }

    static boolean known(String code) {
        return WORDS.containsKey(code);
    }

    /** The code whose official words a whole text is, full stop aside. */
    static Optional<String> code(String text) {
        String plain = text.strip().replaceAll("[.;]$", "");
        return PATTERNS.entrySet().stream()
                .filter(entry -> entry.getValue().matcher(plain).matches())
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
