package plumbrow.documents.confirm;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.paper.Quote;

/**
 * One value that a label proposes for the shelf, or one that the shelf asks for and the label doesn't clearly state.
 *
 * @param proposed as text; empty where the label doesn't clearly state it
 * @param ground what the label says of it
 */
public record ProposedValue(RowName row, String property, String proposed, LabelReading ground) {
    private static final int LONGEST = 400;

    static String id(RowName row, String property) {
        return row.id() + "." + property.replace('_', '-');
    }

    /** What older links call it. */
    String formerId() {
        String former = ShelfTable.formerly(property, row.table());
        return id(row, former.replaceAll("(\\p{Lu})", "-$1").toLowerCase(java.util.Locale.ROOT));
    }

    /** A name for links and commands: "label-uses.corn.high-rate". */
    public String id() {
        return id(row, property);
    }

    /** What it is called. */
    public String title() {
        return row.table().title(property);
    }

    /** A value of this property with its unit. */
    public String shown(String value) {
        return row.table().shown(property, value);
    }

    /** Its unit where the box for typing needs one beside it; empty where the value carries its own. */
    public String unit() {
        String unit = row.table().unit(property);
        return unit.equals("/ac") ? "" : unit;
    }

    /** What may be typed. */
    public String expected() {
        return ValueText.expected(row.table().attribute(property));
    }

    /** Whether the label states it in one way. */
    public boolean clear() {
        return !proposed.isEmpty();
    }

    /** The words on the page; of contradicting statements all; empty where it stands nowhere. */
    public List<Quote> quotes() {
        if (ground instanceof LabelReading.Differing differing) {
            return differing.statements().stream()
                    .map(LabelReading.Stated::quote)
                    .toList();
        }
        return ground instanceof LabelReading.OnPaper paper ? List.of(paper.quote()) : List.of();
    }

    public Optional<Quote> quote() {
        return quotes().stream().findFirst();
    }

    /**
     * A value that was typed, in the spelling of the shelf.
     *
     * @throws NotSoException if it is none; the message says what was expected
     */
    public String read(@Nullable String typed) {
        String text = typed == null ? "" : typed.strip();
        if (text.isEmpty()) {
            throw new NotSoException("Nothing was typed for " + title() + "; expected " + expected() + ".");
        }
        if (text.length() > LONGEST) {
            throw new NotSoException("What was typed for " + title() + " has more than " + LONGEST
                    + " letters; expected " + expected() + ".");
        }
        String unit = unit();
        if (!unit.isEmpty()
                && text.toLowerCase(java.util.Locale.ROOT).endsWith(unit.toLowerCase(java.util.Locale.ROOT))) {
            text = text.substring(0, text.length() - unit.length()).strip();
        }
        var value = row.table().attribute(property);
        return StageCheck.checked(this, ValueText.show(value, ValueText.read(value, text)));
    }
}
