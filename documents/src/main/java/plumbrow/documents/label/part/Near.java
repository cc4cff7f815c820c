package plumbrow.documents.label.part;

import java.util.regex.Pattern;
import plumbrow.documents.label.grammar.CropWords;
import plumbrow.documents.label.text.Sentence;

/** Words about a sentence that several readers ask for. */
final class Near {
    static final Pattern DO_NOT = Pattern.compile(
            "(?i)\\b(?:do not|don't|must not|may not|never|not be|is prohibited|are prohibited|not (?:permitted|allowed)|no more than)\\b");

    private Near() {}

    /** The crops a sentence names, or those it stands under. */
    static String crop(Sentence sentence) {
        return CropWords.in(sentence.text()).orElse(sentence.crop());
    }

    /** The crops it stands under, but those that it names where they are others; for what is said of one crop of several. */
    static String cropMeant(Sentence sentence) {
        String under = sentence.crop();
        String named = CropWords.in(sentence.text()).orElse("");
        boolean others =
                !CropWords.shelf(named).isEmpty() && !CropWords.shelf(named).equals(CropWords.shelf(under));
        return under.isEmpty() || others ? named : under;
    }

    static boolean has(Sentence sentence, Pattern words) {
        return words.matcher(sentence.text()).find();
    }

    static Pattern words(String regex) {
        return Pattern.compile("(?i)" + regex);
    }
}
