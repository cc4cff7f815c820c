package plumbrow.documents.confirm;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.documents.workbook.form.Attribute;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.StageKind;

/** Two values of one property, the label's and the workbook's: whether they say the same, and which is the stricter. */
final class TwoWords {
    private static final String NONE = "none";

    private TwoWords() {}

    /** Whether two texts are one value: 1.5 qt and 48 fl oz are. */
    static boolean same(ShelfTable table, String property, String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        if (one.isEmpty() || other.isEmpty()) {
            return false;
        }
        try {
            Object first = ValueText.kept(table.attribute(property), one);
            Object second = ValueText.kept(table.attribute(property), other);
            return (first instanceof Amount amount
                            && second instanceof Amount against
                            && amount.comparableWith(against))
                    ? Math.abs(amount.inBase() - against.inBase()) <= 1e-9 * Math.abs(amount.inBase())
                    : alike(first).equals(alike(second));
        } catch (NotSoException unreadable) {
            return false;
        }
    }

    /** A list says the same in whatever order. */
    private static Object alike(Object value) {
        return value instanceof List<?> entries ? Set.copyOf(entries) : value;
    }

    /** The value that forbids more; empty where that can't be told. */
    static Optional<String> stricter(RowName row, String property, String one, String other) {
        Attribute<?, ?> value = row.table().attribute(property);
        Stricter which = value.column().stricter();
        if (value.column().kind() instanceof StageKind) {
            return stage(row, which, one, other);
        }
        Object first = ValueText.kept(value, one);
        Object second = ValueText.kept(value, other);
        if (first instanceof Ask || first instanceof Boolean) {
            return Optional.of(one.equals("yes") ? one : other);
        }
        if (which == null) {
            return Optional.empty();
        }
        if (first instanceof Droplets drops && second instanceof Droplets against) {
            return Optional.of((drops.compareTo(against) > 0) == (which == Stricter.MORE) ? one : other);
        }
        if (first instanceof List<?> list && second instanceof List<?> against) {
            return both(value, which, list, against);
        }
        Double apart = apart(first, second);
        return apart == null ? Optional.empty() : Optional.of((apart > 0) == (which == Stricter.MORE) ? one : other);
    }

    /** What handlers wear by either; the ways of application that both allow. */
    private static Optional<String> both(Attribute<?, ?> value, Stricter which, List<?> one, List<?> other) {
        Set<Object> both = new LinkedHashSet<>(one);
        if (which == Stricter.MORE) {
            both.addAll(other);
        } else {
            both.retainAll(other);
        }
        return both.isEmpty() ? Optional.empty() : Optional.of(ValueText.show(value, List.copyOf(both)));
    }

    private static Optional<String> stage(RowName row, @Nullable Stricter which, String one, String other) {
        if (one.equals(NONE) || other.equals(NONE)) {
            return Optional.of(one.equals(NONE) ? other : one);
        }
        Crop crop =
                (Crop) ValueText.kept(row.table().attribute("crop"), row.key().getOrDefault("crop", ""));
        OptionalInt first = GrowthStage.place(crop, one);
        OptionalInt second = GrowthStage.place(crop, other);
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        boolean later = first.getAsInt() > second.getAsInt();
        return Optional.of(later == (which == Stricter.MORE) ? one : other);
    }

    /** By how much one is more than the other, in one unit; null where they can't be compared. */
    private static @Nullable Double apart(Object one, Object other) {
        if (one instanceof Amount amount && other instanceof Amount against) {
            return amount.comparableWith(against) ? Double.valueOf(amount.inBase() - against.inBase()) : null;
        }
        return one instanceof Number number && other instanceof Number against
                ? Double.valueOf(number.doubleValue() - against.doubleValue())
                : null;
    }
}
