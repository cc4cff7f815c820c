package plumbrow.documents.label.part;

import java.util.regex.Pattern;
import plumbrow.documents.label.grammar.RateText;

/** What else is put out by the acre: water, adjuvants, fertiliser. */
final class Stuff {
    private static final Pattern CARRIER =
            Pattern.compile("(?i)\\b(?:water|carrier|spray|solution|mixture|volume|liquid|diluent|dilution)\\b");
    private static final Pattern ADJUVANT = Pattern.compile(
            "(?i)\\b(?:ammonium|AMS|crop oil|COC|MSO|methylated|surfactant|NIS|non-?ionic|UAN|adjuvant|nitrogen|fertilizer|oil concentrate|seed|seeds)\\b");

    private Stuff() {}

    static boolean isCarrier(RateText rate) {
        return CARRIER.matcher(rate.stuff()).find() && rate.amount().unit().startsWith("gal");
    }

    private static final Pattern IN_GALLONS = Pattern.compile(
            "(?i)\\b(?:in|with)\\s+(?:a\\s+)?(?:minimum\\s+(?:of\\s+)?|at\\s+least\\s+)?[\\d.]+\\s?(?:(?:to|-|–)\\s?[\\d.]+\\s?)?(?:gal\\b|gals\\b|gallons?\\b)(?!\\s+of\\s+(?!water|spray|solution|carrier))|\\bminimum\\b.{0,30}\\bgal(?:lons?)?\\b.{0,20}\\bby (?:air|ground)\\b");

    /** Whether gallons by the acre are what the product goes out in: "apply in a minimum of 10 gallons per acre". */
    static boolean goesOutIn(String sentence) {
        return IN_GALLONS.matcher(sentence).find();
    }

    /** Whether something beside the product is meant. */
    static boolean isOther(RateText rate) {
        return CARRIER.matcher(rate.stuff()).find()
                || ADJUVANT.matcher(rate.stuff()).find();
    }
}
