package plumbrow.documents.sheet.grammar;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The ways of a sheet to say that it has nothing to say. */
public final class NoDataWords {
    private static final Pattern START = Pattern.compile(
            "(?i)^[\\s:(]*(?:no(?: specific| relevant| further| applicable| other| additional)? "
                    + "(?:data|information|values?|limits?)\\b(?: (?:is|are))?(?: (?:available|found|known|established|assigned|determined))?"
                    + "|not (?:(?:yet )?(?:been )?)(?:determined|available|applicable|established|known|measured|tested|relevant|assigned|required)"
                    + "|none (?:established|known|available|determined|assigned|reported|listed)|none\\b(?=\\W*$)"
                    + "|n\\.?\\s?/\\s?[ae]\\b\\.?|n\\.\\s?[ade]\\.|n[ad]\\b\\.?(?=\\W*$)|unknown\\b|undetermined\\b"
                    + "|(?:data|information) not available|does not flash|will not flash|not? (?:flammable|combustible)\\b|non-?(?:flammable|combustible)\\b|[-–—]{1,3}(?=\\s*$))");

    private NoDataWords() {}

    /** Where the words end with which a text begins to say so; -1 where it says something. */
    public static int end(String text) {
        Matcher start = START.matcher(text);
        return start.find() ? start.end() : -1;
    }
}
