package plumbrow.app.desk.shelf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.app.book.TypedValue;
import plumbrow.documents.sheet.ValueKind;

/**
 * What somebody types from a page that has no text.
 *
 * @param who as typed
 * @param values as typed, by what they are; blank where nothing was
 * @param fault what is wrong; empty where nothing is
 */
public record TypingForm(String who, Map<String, String> values, String fault) {
    private static final int LONGEST = 2000;

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
            ValueKind.REPORTABLE_QUANTITY.title());

    static final TypingForm EMPTY = new TypingForm("", Map.of(), "");

    /** The key of a box. */
    public static String box(String about) {
        return "v" + ASKED.indexOf(about);
    }

    static TypingForm read(Map<String, String> typed) {
        Map<String, String> values = new LinkedHashMap<>();
        ASKED.forEach(
                about -> values.put(about, typed.getOrDefault(box(about), "").strip()));
        String who = typed.getOrDefault("who", "").strip();
        String fault = "";
        if (values.values().stream().allMatch(String::isEmpty)) {
            fault = "Nothing was typed; expected at least one value from the page.";
        } else if (who.isEmpty() || who.length() > 100) {
            fault = "Who typed it? Expected a name of up to 100 letters.";
        } else if (values.values().stream().anyMatch(value -> value.length() > LONGEST)) {
            fault = "One of the values is longer than 2,000 letters; expected what the page says in short.";
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

    /** What stands in the box of a value. */
    public String value(String about) {
        return values.getOrDefault(about, "");
    }
}
