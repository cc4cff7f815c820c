package plumbrow.documents.sheet.grammar;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Under what an amount was found: temperature, exposure time, method. */
public final class Circumstance {
    private static final Pattern TEMPERATURE = Pattern.compile(
            "(?<![\\d.,])([-−]?\\d{1,3}(?:[.,]\\d)?)\\s?(?:°|º|˚|o(?=\\s?[CF]\\b)|deg\\.?(?:rees)?)?\\s?([CF])(?![\\p{L}])");
    private static final Pattern HOURS = Pattern.compile(
            "(?i)(?<![\\d.,])(\\d{1,3}(?:[.,]\\d)?)\\s?[- ]?\\s?(hours?|hrs?|h|days?|d|minutes?|min)(?![\\p{L}])\\.?");
    private static final Pattern METHOD = Pattern.compile(
            "(?i)\\b(tag(?:liabue)? closed[- ]cup|pensky[- ]martens(?: closed[- ]cup)?|setaflash(?: closed[- ]cup)?|cleveland open[- ]cup|closed[- ]cup|open[- ]cup|TCC|PMCC|SETA|COC|TOC|c\\.c\\.|o\\.c\\.)(?![\\p{L}])");
    private static final double HOURS_PER_DAY = 24;
    private static final double MINUTES_PER_HOUR = 60;

    private Circumstance() {}

    /** The first temperature of a text [°C]; null without one. */
    public static @Nullable Double celsius(String text) {
        Matcher found = TEMPERATURE.matcher(text);
        if (!found.find()) {
            return null;
        }
        double degrees = Double.parseDouble(found.group(1).replace(',', '.').replace('−', '-'));
        return found.group(2).equals("C") ? degrees : Math.round((degrees - 32) / 1.8 * 10) / 10.0;
    }

    /** The first exposure time of a text [h]; null without one. */
    public static @Nullable Double hours(String text) {
        Matcher found = HOURS.matcher(text);
        if (!found.find()) {
            return null;
        }
        double time = Double.parseDouble(found.group(1).replace(',', '.'));
        String unit = found.group(2).toLowerCase(Locale.ROOT);
        return unit.startsWith("d") ? time * HOURS_PER_DAY : unit.startsWith("m") ? time / MINUTES_PER_HOUR : time;
    }

    /** How a flash point was taken; empty where not said. */
    public static String method(String text) {
        Matcher found = METHOD.matcher(text);
        if (!found.find()) {
            return "";
        }
        String words = found.group(1).toLowerCase(Locale.ROOT).replace('-', ' ');
        boolean open = words.contains("open") || words.equals("coc") || words.equals("toc") || words.equals("o.c.");
        return open ? "open cup" : "closed cup";
    }
}
