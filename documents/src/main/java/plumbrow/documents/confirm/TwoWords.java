package plumbrow.documents.confirm;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;

/** Two values of one property, the label's and the workbook's: whether they say the same, and which is the stricter. */
final class TwoWords {
    /** Of these the larger keeps people, crops and water safer: waits, distances, volumes, pounds that count. */
    private static final Set<String> LARGER = Set.of(
            "lowRate",
            "preHarvestDays",
            "reentryHours",
            "daysBetween",
            "grazingDays",
            "carrierLowGalPerAcre",
            "windLowestMph",
            "rainFreeHours",
            "rainAheadHours",
            "pounds",
            "acidEquivalentRatio",
            "feet",
            "days");

    /** Of these the smaller does: rates, counts, heights, wind. */
    private static final Set<String> SMALLER = Set.of(
            "highRate",
            "seasonMax",
            "mostApplications",
            "highestCropIn",
            "highestWeedIn",
            "boomHighestIn",
            "windHighestMph",
            "warmestF",
            "seasonMaxPounds");

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
            Object first = Rows.kind(table, property).read(one);
            Object second = Rows.kind(table, property).read(other);
            return (first instanceof Amount amount
                            && second instanceof Amount against
                            && amount.comparableWith(against))
                    ? Math.abs(amount.inBase() - against.inBase()) <= 1e-9 * Math.abs(amount.inBase())
                    : first.equals(second);
        } catch (NotSoException unreadable) {
            return false;
        }
    }

    /** The value that forbids more; empty where that can't be told. */
    static Optional<String> stricter(RowName row, String property, String one, String other) {
        CellText kind = Rows.kind(row.table(), property);
        if (property.endsWith("Stage")) {
            return stage(row, property, one, other);
        }
        Object first = kind.read(one);
        Object second = kind.read(other);
        if (LARGER.contains(property) || SMALLER.contains(property)) {
            Double apart = apart(first, second);
            return apart == null
                    ? Optional.empty()
                    : Optional.of((apart > 0) == LARGER.contains(property) ? one : other);
        }
        if (first instanceof Ask || first instanceof Boolean) {
            return Optional.of(one.equals("yes") ? one : other);
        }
        if (first instanceof Droplets drops && second instanceof Droplets against) {
            boolean coarser = drops.compareTo(against) > 0;
            return Optional.of(coarser == property.equals("finest") ? one : other);
        }
        if (first instanceof Set<?> set && second instanceof Set<?> against) {
            return both(property, set, against);
        }
        return Optional.empty();
    }

    /** What handlers wear by either; the ways of application that both allow. */
    private static Optional<String> both(String property, Set<?> one, Set<?> other) {
        Set<Object> both = new LinkedHashSet<>(one);
        if (property.equals("wear")) {
            both.addAll(other);
        } else {
            both.retainAll(other);
        }
        return both.isEmpty() ? Optional.empty() : Optional.of(CellText.show(both));
    }

    private static Optional<String> stage(RowName row, String property, String one, String other) {
        if (one.equals(NONE) || other.equals(NONE)) {
            return Optional.of(one.equals(NONE) ? other : one);
        }
        Crop crop = (Crop) CellText.CROP.read(row.key().getOrDefault("crop", ""));
        OptionalInt first = GrowthStage.place(crop, one);
        OptionalInt second = GrowthStage.place(crop, other);
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        boolean later = first.getAsInt() > second.getAsInt();
        return Optional.of(later == property.equals("earliestStage") ? one : other);
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
