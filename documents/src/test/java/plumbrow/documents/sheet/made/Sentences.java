package plumbrow.documents.sheet.made;

import java.util.List;

/** Advice made up for made sheets. */
final class Sentences {
    private static final List<String> SWALLOW = List.of(
            "Call a poison control center or doctor immediately for treatment advice.",
            "Do not induce vomiting unless told to do so by a doctor.",
            "Have the person sip a glass of water if able to swallow.",
            "Do not give anything by mouth to an unconscious person.");
    private static final List<String> SKIN = List.of(
            "Take off contaminated clothing.",
            "Rinse skin immediately with plenty of water for 15 to 20 minutes.",
            "Wash clothing before wearing it again.",
            "Get medical attention if irritation develops and persists.");
    private static final List<String> EYES = List.of(
            "Hold eye open and rinse slowly and gently with water for 15-20 minutes.",
            "Remove contact lenses, if present, after the first five minutes, then continue rinsing.",
            "Seek advice from a doctor if redness stays.");
    private static final List<String> BREATH = List.of(
            "Move person to fresh air.",
            "If the person is not breathing, call an ambulance, then give artificial respiration.",
            "Keep at rest in a position comfortable for breathing.");
    private static final List<String> MEDIA = List.of(
            "Water fog, foam, carbon dioxide or dry chemical.",
            "Use media suited to the surrounding fire.",
            "Alcohol-resistant foam and dry powder.");
    private static final List<String> FIRE = List.of(
            "Wear self-contained breathing apparatus and full protective gear.",
            "Keep runoff out of drains and water by diking.",
            "Cool closed drums with water from a safe distance.");
    private static final List<String> SPILL = List.of(
            "Dike the spill with sand, clay or other absorbent.",
            "Sweep up and shovel into a closed drum.",
            "Wash the area with detergent and collect the wash water.",
            "Keep the material out of ditches, ponds and wells.");
    private static final List<String> HANDLE = List.of(
            "Wash hands before eating, drinking, chewing gum or using tobacco.",
            "Avoid breathing spray mist.",
            "Use only with adequate ventilation and keep containers closed when not in use.");
    private static final List<String> STORE = List.of(
            "Keep in the original container in a cool, dry, locked place.",
            "Do not store near food, feed, seed or fertilizer.",
            "Protect from frost and direct sunlight.");
    private static final List<String> STABLE = List.of(
            "Stable under normal conditions of storage and use.", "Stable for two years in unopened containers.");
    private static final List<String> AVOID = List.of(
            "Strong acids, strong bases and oxidizing agents.",
            "Oxidizers, galvanized steel and unlined mild steel.",
            "Strong alkalis.");
    private static final List<String> DISPOSE = List.of(
            "Offer rinsed containers for recycling where that is available.",
            "Wastes that cannot be used according to the label must go to an approved facility.",
            "Do not contaminate water by cleaning of equipment or disposal of wash water.");
    private static final List<String> EYE_WEAR =
            List.of("Chemical splash goggles.", "Safety glasses with side shields.");
    private static final List<String> GLOVES = List.of(
            "Nitrile rubber gloves, 14 mils or thicker.",
            "Chemical-resistant gloves made of barrier laminate or butyl rubber.");
    private static final List<String> CLOTHES = List.of(
            "Long-sleeved shirt, long pants, shoes plus socks.", "Coveralls over short-sleeved shirt and short pants.");
    private static final List<String> MASK = List.of(
            "None needed outdoors; where limits may be exceeded wear an approved respirator.",
            "Half-face respirator with organic vapour cartridges and a particulate pre-filter.");

    private Sentences() {}

    private static String some(Draft draft, List<String> sentences) {
        int from = draft.random.nextInt(sentences.size());
        int count = 1 + draft.random.nextInt(sentences.size());
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(i == 0 ? "" : " ").append(sentences.get((from + i) % sentences.size()));
        }
        return text.toString();
    }

    static String swallowed(Draft draft) {
        return some(draft, SWALLOW);
    }

    static String skin(Draft draft) {
        return some(draft, SKIN);
    }

    static String eyes(Draft draft) {
        return some(draft, EYES);
    }

    static String inhaled(Draft draft) {
        return some(draft, BREATH);
    }

    static String media(Draft draft) {
        return draft.pick(MEDIA.toArray(String[]::new));
    }

    static String fire(Draft draft) {
        return some(draft, FIRE);
    }

    static String spill(Draft draft) {
        return some(draft, SPILL);
    }

    static String handling(Draft draft) {
        return some(draft, HANDLE);
    }

    static String storage(Draft draft) {
        return some(draft, STORE);
    }

    static String stable(Draft draft) {
        return draft.pick(STABLE.toArray(String[]::new));
    }

    static String avoid(Draft draft) {
        return draft.pick(AVOID.toArray(String[]::new));
    }

    static String disposal(Draft draft) {
        return some(draft, DISPOSE);
    }

    static String eyewear(Draft draft) {
        return draft.pick(EYE_WEAR.toArray(String[]::new));
    }

    static String gloves(Draft draft) {
        return draft.pick(GLOVES.toArray(String[]::new));
    }

    static String clothes(Draft draft) {
        return draft.pick(CLOTHES.toArray(String[]::new));
    }

    static String mask(Draft draft) {
        return draft.pick(MASK.toArray(String[]::new));
    }
}
