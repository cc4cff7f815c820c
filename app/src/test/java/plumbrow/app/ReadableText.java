package plumbrow.app;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What no person should have to read, on a page, on paper or on the terminal. */
public final class ReadableText {
    private static final Pattern EXPONENT = Pattern.compile("(?<![\\w./-])[\\d.]*\\d[eE][-+−]?\\d+(?![\\w/])");

    /** Sections of the law, "40 CFR 156.212", are names and no measurements. */
    private static final Pattern DECIMALS =
            Pattern.compile("(?<![\\w.,/$:−-])(?<!CFR )\\d[\\d,]*\\.\\d+(?![\\w.()/-])(?! g/mol)");

    private static final Pattern PLURAL_OF_ONE = Pattern.compile(
            "(?<![\\w.,/$–−-])1 (?:acres|applications|bags|boxes|checks|days|farms|fields|findings|hours|lines|loads|loss|papers|passes"
                    + "|people|plants|pounds|products|programs|rows|seasons|sites|stages|things|times|trips|units|weeds|weeks|years)\\b");
    private static final Pattern CODE_NAME = Pattern.compile("(?<![\\w/.=?&-])[a-z]+(?:_[a-z0-9]+)+(?![\\w/=])");

    /** A file of notes, or a source that nobody wrote out: "weeds.md", "[nagy-1987]". */
    private static final Pattern NOTE = Pattern.compile("\\b[a-z][a-z-]*\\.md\\b|\\[[a-z0-9]+(?:[.-][a-z0-9]+)+]");

    private ReadableText() {}

    /** The faults of a text, each with some words around it. */
    public static Set<String> faults(String text) {
        Set<String> faults = new LinkedHashSet<>();
        for (Pattern pattern : List.of(EXPONENT, DECIMALS, PLURAL_OF_ONE, CODE_NAME, NOTE)) {
            Matcher found = pattern.matcher(text);
            while (found.find()) {
                if (pattern != DECIMALS || digits(found.group()) > 4) {
                    faults.add(
                            text.substring(Math.max(0, found.start() - 30), Math.min(text.length(), found.end() + 20))
                                    .strip());
                }
            }
        }
        return faults;
    }

    private static long digits(String number) {
        return number.replaceAll("[.,]", "").replaceAll("^0+", "").length();
    }
}
