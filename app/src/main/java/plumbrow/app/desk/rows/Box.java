package plumbrow.app.desk.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.names.KnownNames;
import plumbrow.advice.names.NameColumn;
import plumbrow.advice.names.Refers;
import plumbrow.advice.season.Season;
import plumbrow.app.rows.JointForm;
import plumbrow.app.rows.TableNames;
import plumbrow.documents.workbook.form.BoundaryKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.ShapeKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;

/**
 * The box of one column of a row.
 *
 * @param column what stands in it
 * @param prefix sets boxes of several rows on one page apart; empty where there is one row
 * @param words what is said beside it
 * @param input how it is filled in
 * @param value what stands in it now
 * @param options words that may stand there, or names that are offered
 * @param within the column on which the offered names depend; empty where they depend on none
 * @param faults what is wrong with it, in the workbook's words
 * @param folded whether it is shown on request only
 */
public record Box(
        Column<?> column,
        String prefix,
        Words words,
        Input input,
        String value,
        List<String> options,
        String within,
        List<String> faults,
        boolean folded) {
    /** Choices up to this many are a list to choose from; more are offered while somebody types. */
    private static final int MOST_CHOICES = 60;

    /**
     * What is said beside a box.
     *
     * @param label what it is called
     * @param unit its unit; empty where there is none, or where another box says it
     * @param hint what belongs there; empty for what its column says
     * @param required whether it must be filled in
     */
    public record Words(String label, String unit, String hint, boolean required) {
        static Words of(Column<?> column) {
            boolean elsewhere = column.unit().contains("_") || column.unit().startsWith("as ");
            return new Words(TableNames.of(column), elsewhere ? "" : column.unit(), "", column.required());
        }

        Words with(JointForm.Asked asked) {
            return new Words(
                    asked.label().isEmpty() ? label : asked.label(),
                    asked.unit().isEmpty() ? unit : asked.unit(),
                    asked.hint(),
                    asked.needed());
        }
    }

    /** How a box is filled in. */
    public enum Input {
        /** One of a few words. */
        SELECT,
        /** Several of a few words. */
        CHECKS,
        DATE,
        NUMBER,
        /** Words on one line, with names offered where there are any. */
        LINE,
        /** Words on several lines. */
        TEXT
    }

    static Box of(
            @Nullable Season season,
            Sheet<?> sheet,
            Column<?> column,
            Map<String, String> row,
            List<String> faults,
            boolean folded) {
        Words said = Words.of(column);
        String value = row.getOrDefault(column.key(), "");
        List<String> choices = choices(column);
        NameColumn names = NameColumn.find(sheet.name(), column.key());
        if (!choices.isEmpty()) {
            Input input = column.kind() instanceof ListKind<?> ? Input.CHECKS : Input.SELECT;
            return new Box(column, "", said, input, value, choices, "", faults, folded);
        }
        if (column.kind() instanceof NumberKind || column.kind() instanceof WholeKind) {
            return new Box(column, "", said, Input.NUMBER, value, List.of(), "", faults, folded);
        }
        if (column.kind() instanceof DateKind) {
            return new Box(column, "", said, Input.DATE, value, List.of(), "", faults, folded);
        }
        boolean shape = column.kind() instanceof BoundaryKind || column.kind() instanceof ShapeKind;
        if (shape || (column.kind() instanceof TextKind text && text.lines())) {
            return new Box(column, "", said, Input.TEXT, value, List.of(), "", faults, folded);
        }
        List<String> offered = season == null || names == null
                ? List.of()
                : KnownNames.of(season, names, row.getOrDefault(names.within(), ""));
        boolean closed =
                names != null && closed(names.refers()) && names.within().isEmpty();
        boolean choose = closed
                && !offered.isEmpty()
                && offered.size() <= MOST_CHOICES
                && (value.isEmpty() || offered.contains(value))
                && !(column.kind() instanceof ListKind<?>);
        return new Box(
                column,
                "",
                said,
                choose ? Input.SELECT : Input.LINE,
                value,
                offered,
                names == null ? "" : names.within(),
                faults,
                folded);
    }

    /** Whether only names of the season itself may stand there. */
    private static boolean closed(Refers refers) {
        return switch (refers) {
            case FARM, FIELD, PRODUCT, PERSON, TRAIT_GROUP -> true;
            default -> false;
        };
    }

    private static List<String> choices(Column<?> column) {
        return column.kind() instanceof ListKind<?> list
                ? list.entry().choices()
                : column.kind().choices();
    }

    /** The same box in a form of several rows. */
    Box in(String row, JointForm.Asked asked) {
        return new Box(column, row, words.with(asked), input, value, options, within, faults, folded);
    }

    public String label() {
        return words.label();
    }

    public String unit() {
        return words.unit();
    }

    /** Its name in the form. */
    public String key() {
        return prefix + column.key();
    }

    public String id() {
        return "box-" + key().replace('.', '-');
    }

    /** The id of the box on which the offered names depend; empty for none. */
    public String withinId() {
        return within.isEmpty() ? "" : "box-" + (prefix + within).replace('.', '-');
    }

    /** What belongs there: the meaning, the range of a number, an example, what blank means. */
    public String hint() {
        if (!words.hint().isEmpty()) {
            return words.hint();
        }
        List<String> parts = new ArrayList<>();
        parts.add(column.meaning());
        if (input == Input.NUMBER
                || (input == Input.LINE && column.kind() instanceof ListKind<?>)
                || column.kind() instanceof ShapeKind
                || column.kind() instanceof BoundaryKind) {
            parts.add(column.kind().words());
        }
        if (input == Input.NUMBER || input == Input.LINE) {
            parts.add("such as " + column.example());
        }
        if (!column.required()) {
            parts.add(column.blank().isEmpty() ? "may be left blank" : column.blank());
        }
        return TableNames.words(String.join("; ", parts));
    }

    public boolean required() {
        return words.required();
    }

    public boolean faulty() {
        return !faults.isEmpty();
    }

    /** What the first choice of a list says, which leaves the cell blank. */
    public String none() {
        return column.required() ? "choose" : column.blank().isEmpty() ? "blank" : TableNames.words(column.blank());
    }

    /** Whether a word of several is chosen. */
    public boolean chosen(String word) {
        return Arrays.stream(value.split(";")).map(String::strip).anyMatch(word::equals);
    }
}
