package plumbrow.documents.label.part;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;

/**
 * The kind of formulation: in words of its own, in the sentence that says what the product is, or by the code at the end of its
 * name.
 *
 * Source of the codes: CropLife International, Technical Monograph No. 2, "Catalogue of pesticide formulation types and
 * international coding system" (values from memory); WDG and DF are common practice in the United States.
 */
final class FormulationPart implements Part {
    private static final String FORM =
            "(?:water[- ]dispers[ai]ble granules?|water[- ]soluble (?:granules?|powders?|bags?|packets?)|wettable (?:powders?|granules?)|emulsifiable concentrates?|suspension concentrates?|soluble (?:liquids?|concentrates?|powders?|granules?)"
                    + "|suspo-?emulsions?|micro-?emulsions?|capsule suspensions?|micro-?encapsulated(?: suspensions?)?|oil dispersions?|dry flowables?|flowable (?:concentrates?|suspensions?)|fine granules?|soluble concentrates?)";
    private static final Pattern ALONE =
            Pattern.compile("(?i)\\W{0,2}(?:formulation(?: type)?\\s?:\\s*)?(?<form>" + FORM + ")\\W{0,2}");
    private static final Pattern SAID = Pattern.compile("(?i)\\b(?<form>" + FORM
            + ")\\s*(?:\\(\\p{Lu}{2,3}\\)\\s*)?(?:\\((?:hereafter|hereinafter|herein)|formulation\\b|that is\\b|containing\\b)|\\b(?:is|as) an? (?<is>"
            + FORM + ")\\b");
    private static final Map<String, String> CODES = Map.ofEntries(
            Map.entry("WDG", "water dispersible granule"),
            Map.entry("WG", "water dispersible granule"),
            Map.entry("DF", "dry flowable"),
            Map.entry("WP", "wettable powder"),
            Map.entry("EC", "emulsifiable concentrate"),
            Map.entry("SC", "suspension concentrate"),
            Map.entry("SL", "soluble concentrate"),
            Map.entry("SG", "water soluble granule"),
            Map.entry("SP", "water soluble powder"),
            Map.entry("CS", "capsule suspension"),
            Map.entry("OD", "oil dispersion"),
            Map.entry("ME", "micro-emulsion"),
            Map.entry("FG", "fine granule"));

    @Override
    public void read(LabelText label, Readings readings) {
        for (LabelText.Line line : label.lines()) {
            for (Cell cell : line.row().cells()) {
                Matcher alone = ALONE.matcher(cell.text());
                if (alone.matches()) {
                    state(alone.group("form"), Passage.of(line.row().page(), cell), readings);
                    return;
                }
            }
        }
        for (Sentence sentence : label.sentences()) {
            Matcher said = SAID.matcher(sentence.text());
            if (said.find()) {
                String form = said.group("form") == null ? said.group("is") : said.group("form");
                state(form, sentence.passage().part(said.start(), said.end()), readings);
                return;
            }
        }
        List<LabelReading.Stated> names = readings.stated(LabelKind.PRODUCT_NAME);
        if (names.size() == 1) {
            String[] words = names.get(0).words().split("\\s+", -1);
            String form = CODES.get(words[words.length - 1].toUpperCase(Locale.ROOT));
            if (form != null && words[words.length - 1].equals(words[words.length - 1].toUpperCase(Locale.ROOT))) {
                readings.text(LabelKind.FORMULATION, form, names.get(0).quote());
            }
        }
    }

    private static void state(String form, Passage passage, Readings readings) {
        readings.text(LabelKind.FORMULATION, form.toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", " "), passage.quote());
    }
}
