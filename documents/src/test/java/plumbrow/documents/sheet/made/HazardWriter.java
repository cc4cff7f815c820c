package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;

/** Section 2 of today's sheets; older ones have an overview in words. */
final class HazardWriter {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("H226", "Flammable liquid and vapour"),
            Map.entry("H227", "Combustible liquid"),
            Map.entry("H302", "Harmful if swallowed"),
            Map.entry("H304", "May be fatal if swallowed and enters airways"),
            Map.entry("H312", "Harmful in contact with skin"),
            Map.entry("H315", "Causes skin irritation"),
            Map.entry("H317", "May cause an allergic skin reaction"),
            Map.entry("H318", "Causes serious eye damage"),
            Map.entry("H319", "Causes serious eye irritation"),
            Map.entry("H332", "Harmful if inhaled"),
            Map.entry("H351", "Suspected of causing cancer"),
            Map.entry("H373", "May cause damage to organs through prolonged or repeated exposure"),
            Map.entry("H400", "Very toxic to aquatic life"),
            Map.entry("H410", "Very toxic to aquatic life with long lasting effects"),
            Map.entry("H411", "Toxic to aquatic life with long lasting effects"));
    private static final Map<String, String> CARE = Map.ofEntries(
            Map.entry("P201", "Obtain special instructions before use"),
            Map.entry("P261", "Avoid breathing dust, mist or spray"),
            Map.entry("P264", "Wash hands thoroughly after handling"),
            Map.entry("P270", "Do not eat, drink or smoke when using this product"),
            Map.entry("P273", "Avoid release to the environment"),
            Map.entry("P280", "Wear protective gloves and eye protection"),
            Map.entry("P301+P310", "IF SWALLOWED: Immediately call a poison center or doctor"),
            Map.entry("P302+P352", "IF ON SKIN: Wash with plenty of soap and water"),
            Map.entry("P305+P351+P338", "IF IN EYES: Rinse cautiously with water for several minutes"),
            Map.entry("P391", "Collect spillage"),
            Map.entry("P405", "Store locked up"),
            Map.entry("P501", "Dispose of contents and container in accordance with local rules"));

    private HazardWriter() {}

    static void write(Draft draft) {
        House.Hazards form = draft.house.hazards();
        if (form == House.Hazards.NONE) {
            draft.paragraph("Emergency overview: Off-white liquid with a faint odor. Keep out of reach of children.");
            draft.pair("Potential health effects", "Irritating to eyes; contact with skin should be avoided.");
            return;
        }
        if (draft.house.wording() == Wording.EU) {
            draft.subheading("2.1 Classification of the substance or mixture");
            draft.paragraph("Classification according to Regulation (EC) No 1272/2008, see the statements below.");
            draft.subheading("2.2 Label elements");
        }
        String signal = draft.product.danger() ? "Danger" : "Warning";
        draft.pair(draft.pick("Signal word", "Signal Word"), draft.pick(signal, signal.toUpperCase(Locale.ROOT)));
        draft.truth(ValueKind.SIGNAL_WORD, new Content.Text(signal));
        statements(draft, form);
        cares(draft, form);
        if (draft.house.wording() == Wording.EU) {
            draft.subheading("2.3 Other hazards");
            draft.paragraph("None known.");
        }
    }

    private static void statements(Draft draft, House.Hazards form) {
        List<List<String>> rows = new ArrayList<>();
        if (form != House.Hazards.TABLE) {
            draft.subheading(draft.pick("Hazard statements", "Hazard statements:"));
        }
        for (String code : draft.product.hazards()) {
            String words = Objects.requireNonNull(WORDS.get(code));
            boolean printed = form != House.Hazards.NO_CODE;
            draft.truth(ValueKind.HAZARD_STATEMENT, new Content.Statement(code, words, printed));
            switch (form) {
                case CODE_LAST -> draft.paragraph(words + " (" + code + ").");
                case NO_CODE -> draft.paragraph(words + ".");
                case TABLE -> rows.add(List.of(code, words));
                default -> draft.paragraph(code + draft.pick(" ", ": ", " - ") + words + ".");
            }
        }
        if (form == House.Hazards.TABLE) {
            draft.table(List.of(20, 80), List.of("Code", "Hazard statement"), rows);
        }
    }

    private static void cares(Draft draft, House.Hazards form) {
        if (form == House.Hazards.NO_CODE) {
            return;
        }
        draft.subheading("Precautionary statements");
        for (String code : draft.product.precautions()) {
            String words = Objects.requireNonNull(CARE.get(code));
            String printed = draft.chance(2) ? code.replace("+", " + ") : code;
            draft.paragraph(printed + " " + words + ".");
            draft.truth(ValueKind.PRECAUTION, new Content.Statement(code, words, true));
        }
    }
}
