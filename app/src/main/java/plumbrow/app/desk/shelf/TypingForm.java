package plumbrow.app.desk.shelf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.text.TextRule;
import plumbrow.app.book.TypedSheet;
import plumbrow.app.book.TypedValue;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.shelf.FiledPaper;

/**
 * What somebody types from a page that has no text.
 *
 * @param who as typed
 * @param values as typed, by what they are; blank where nothing was
 * @param fault what is wrong; empty where nothing is
 */
public record TypingForm(String who, Map<String, String> values, String fault) {
    private static final TextRule VALUE = new TextRule(2000, true);

    /** What is asked for: what a person needs first. */
    static final List<String> ASKED = List.of(
            ValueKind.PRODUCT_NAME.title(),
            ValueKind.REGISTRATION_NUMBER.title(),
            ValueKind.REVISION_DATE.title(),
            ValueKind.EMERGENCY_PHONE.title(),
            ValueKind.SIGNAL_WORD.title(),
            ValueKind.INGREDIENT.title(),
            ValueKind.FIRST_AID.title(),
            ValueKind.PROTECTION.title(),
            ValueKind.REPORTABLE_QUANTITY.title(),
            ValueKind.HAZARD_STATEMENT.title(),
            ValueKind.ACUTE_TOXICITY.title(),
            ValueKind.DENSITY.title(),
            ValueKind.VAPOUR_PRESSURE.title(),
            ValueKind.FLASH_POINT.title(),
            ValueKind.STORAGE.title(),
            ValueKind.SPILL.title(),
            ValueKind.UN_NUMBER.title(),
            TypedSheet.KIND);

    private static final Map<String, String> EXAMPLES = Map.of(
            ValueKind.REVISION_DATE.title(), "March 4, 2025",
            ValueKind.INGREDIENT.title(), "Atrazine, 1912-24-9, 42.2 %; several parted by semicolons",
            ValueKind.FIRST_AID.title(), "If swallowed: call a poison control center; If on skin: rinse 15 minutes",
            ValueKind.PROTECTION.title(), "Eye protection: goggles; Hand protection: butyl rubber gloves",
            ValueKind.REPORTABLE_QUANTITY.title(), "1 lb",
            ValueKind.HAZARD_STATEMENT.title(), "H302 Harmful if swallowed; H410 Very toxic to aquatic life",
            ValueKind.ACUTE_TOXICITY.title(), "Oral LD50 (rat): 500 mg/kg; Dermal LD50 (rabbit): > 5000 mg/kg",
            ValueKind.DENSITY.title(), "1.12 g/cm3",
            ValueKind.VAPOUR_PRESSURE.title(), "1.9 x 10-5 mm Hg at 25 °C",
            ValueKind.FLASH_POINT.title(), "62 °C");

    /** The kinds of paper that may be chosen. */
    public static final List<String> KINDS = List.of(FiledPaper.Kind.SAFETY_SHEET.word(), FiledPaper.Kind.LABEL.word());

    static final TypingForm EMPTY = new TypingForm("", Map.of(), "");

    /** The key of a box. */
    public static String box(String about) {
        return "v" + ASKED.indexOf(about);
    }

    static TypingForm read(Map<String, String> typed) {
        Map<String, String> values = new LinkedHashMap<>();
        ASKED.forEach(about -> values.put(
                about, typed.getOrDefault(box(about), "").replace("\r\n", "\n").strip()));
        String who = typed.getOrDefault("who", "").strip();
        String fault = "";
        String kind = values.getOrDefault(TypedSheet.KIND, "");
        if (!kind.isEmpty() && !KINDS.contains(kind)) {
            fault = "This paper is a “" + kind + "”? Expected " + String.join(" or ", KINDS) + ".";
        } else if (values.values().stream().allMatch(String::isEmpty)) {
            fault = "Nothing was typed; expected at least one value from the page.";
        } else if (who.isEmpty() || TextRule.NAME.objection(who).isPresent()) {
            fault = "Who typed it? Expected "
                    + TextRule.NAME.objection(who).orElse("a name of up to " + TextRule.NAME.longest() + " letters")
                    + ".";
        } else if (values.values().stream().anyMatch(value -> value.length() > VALUE.longest())) {
            fault = "One of the values is longer than 2,000 letters; expected what the page says in short.";
        } else if (values.values().stream()
                .anyMatch(value -> VALUE.unreadable(value).isPresent())) {
            fault = "One of the values has characters that can't be seen; expected what the page says.";
        }
        return new TypingForm(who, values, fault);
    }

    List<TypedValue> typed(int paper, int page, Instant when) {
        List<TypedValue> typed = new ArrayList<>();
        values.forEach((about, value) -> {
            if (!value.isEmpty()) {
                typed.add(new TypedValue(paper, page, about, value, who, when));
            }
        });
        return typed;
    }

    /** How a value may be typed; empty where that needs no saying. */
    public static String example(String about) {
        return EXAMPLES.getOrDefault(about, "");
    }

    /** What stands in the box of a value. */
    public String value(String about) {
        return values.getOrDefault(about, "");
    }
}
