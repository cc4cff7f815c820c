package plumbrow.documents.label.part;

import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.documents.sheet.Route;

/**
 * Whether the text of first aid is whole: sentences that tell someone what to do, none cut short and nothing of a neighbour's
 * among them. A wrong sentence here can hurt someone, so what is in doubt is shown on its page and not stated.
 */
final class AidSentences {
    private static final Pattern END = Pattern.compile("(?<=[.!?)])\\s+(?=\\p{Lu})");
    private static final Pattern ENDED = Pattern.compile(".*[.!)]", Pattern.DOTALL);
    private static final Pattern STARTS = Pattern.compile(
            "(?i)\\(?(?:hold|remove|call|take|rinse|move|if|do|don't|have|get|give|immediately|wash|then|seek|keep|flush|continue|never|drink|loosen|contact|obtain|see|place|consult|apply|use|in|when|after|avoid|administer|transport|treat|for|begin|start|gently|only|let|lay|induce|it|ensure|monitor|check|cover|first|open|discard|launder|with|repeat|you|medical|artificial|once|as|allow|turn|tell|not|always|thoroughly|quickly|promptly|slowly|wipe|clean|change|symptoms|this|the|also|probable|vomiting|may)\\b.*",
            Pattern.DOTALL);
    private static final String NAMES =
            "(?:Poison|Control|Center|Centers|Centre|National|Pesticide|Pesticides|Information|Doctor|Physician|DO|NOT|Do|Not|Never|IMMEDIATELY|CPR|Emergency|Medical|Services|Material|Safety|Data|Sheet|SDS|NPIC|Call|Hold|Remove|Take|Rinse|Move|If|Have|Get|Give|Then)";
    /** Two words with capitals inside a sentence, as in a slogan beside it. */
    private static final Pattern SLOGAN = Pattern.compile("(?<=\\p{Ll}|,)\\s(?!" + NAMES + "\\b)\\p{Lu}\\p{L}{2,}\\s(?!"
            + NAMES + "\\b)\\p{Lu}\\p{L}+|\\p{Lu}{4,}\\s\\p{Lu}{3,}\\s\\p{Lu}{2,}");

    private static final Pattern CUT = Pattern.compile(
            "(?i).*\\b(?:induce|give|a|an|the|to|of|for|and|or|with|by|not|immediately call)\\W*", Pattern.DOTALL);
    private static final Pattern NOT_FOR_EYES = Pattern.compile(
            "(?i)\\bfresh air\\b|\\bcontaminated clothing\\b|\\binduce vomiting\\b|\\bif (?:swallowed|inhaled|on skin)\\s*:");
    private static final Pattern NOT_FOR_SKIN = Pattern.compile(
            "(?i)\\bfresh air\\b|\\bcontact lenses\\b|\\bhold eyes? open\\b|\\bsip\\b|\\bif (?:swallowed|inhaled|in eyes?)\\s*:");
    private static final Pattern NOT_FOR_LUNGS = Pattern.compile(
            "(?i)\\bcontact lenses\\b|\\bhold eyes? open\\b|\\bsip\\b|\\bplenty of water\\b|\\bif (?:swallowed|on skin|in eyes?)\\s*:");
    private static final Pattern NOT_FOR_STOMACH = Pattern.compile(
            "(?i)\\bcontact lenses\\b|\\bhold eyes? open\\b|\\bfresh air\\b|\\bcontaminated clothing\\b|\\bif (?:inhaled|on skin|in eyes?)\\s*:");
    /** Words of the Spanish half of a label, none of them English. */
    static final Pattern SPANISH = Pattern.compile(
            "(?<![\\p{L}])(?:para|del|los|las|una|con|por|que|niños|médico|agua|envase|instrucciones)(?![\\p{L}])");

    private static final int SHORTEST = 12;

    private AidSentences() {}

    /** What speaks against it, as a sentence's end; empty where nothing does. */
    static Optional<String> doubt(Route route, String text) {
        if (SPANISH.matcher(text).find()) {
            return Optional.of("words of another language seem to stand among it");
        }
        if (others(route).matcher(text).find()) {
            return Optional.of("what is done for another way of exposure seems to stand among it");
        }
        if (text.length() < SHORTEST || !ENDED.matcher(text).matches()) {
            return Optional.of("the text seems to be cut short");
        }
        for (String sentence : END.split(text, -1)) {
            String plain = sentence.strip();
            if (!STARTS.matcher(plain).matches() || plain.split("\\s+", -1).length < 2) {
                return Optional.of("'" + first(plain) + "' doesn't seem to belong to it");
            }
            if (SLOGAN.matcher(plain).find()) {
                return Optional.of("other words seem to stand among it");
            }
            if (CUT.matcher(plain.replaceAll("[.!?)]+$", "")).matches()) {
                return Optional.of("a sentence seems to be cut short");
            }
        }
        return Optional.empty();
    }

    /** Words that only the help for another way has. */
    private static Pattern others(Route route) {
        return switch (route) {
            case EYES -> NOT_FOR_EYES;
            case SKIN -> NOT_FOR_SKIN;
            case INHALED -> NOT_FOR_LUNGS;
            case SWALLOWED, UNSAID -> NOT_FOR_STOMACH;
        };
    }

    private static String first(String sentence) {
        String[] words = sentence.split("\\s+", 5);
        return String.join(" ", java.util.Arrays.asList(words).subList(0, Math.min(4, words.length)));
    }
}
