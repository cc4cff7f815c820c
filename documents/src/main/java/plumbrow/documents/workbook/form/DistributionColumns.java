package plumbrow.documents.workbook.form;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;

/**
 * An uncertain quantity in three columns. All three are its lowest, most likely and highest value; only the middle one filled is a
 * number without doubt, or one that the weighing spreads between fields and years ({@link #spreadWhereBlank}).
 */
public record DistributionColumns(Column<Double> low, Column<Double> likely, Column<Double> high) implements RowCheck {
    /** What blank low and high mean for what differs between fields. */
    public static final String SPREAD = "the number is spread as fields and years differ in it";

    /**
     * The three columns of one quantity.
     *
     * @param pattern the columns' names with * for low, likely and high: "loss_*_pct"
     * @param example low, likely and high as an example
     */
    public static DistributionColumns of(
            String pattern, NumberKind kind, String unit, String meaning, double... example) {
        return new DistributionColumns(
                one(pattern, "low", kind, unit, meaning + ", lowest believable", example[0]),
                one(pattern, "likely", kind, unit, meaning + ", most likely", example[1]),
                one(pattern, "high", kind, unit, meaning + ", highest believable", example[2]));
    }

    private static Column<Double> one(
            String pattern, String part, NumberKind kind, String unit, String meaning, double example) {
        Column<Double> column = Column.of(pattern.replace("*", part), kind, meaning, NumberKind.plain(example))
                .in(unit);
        return part.equals("likely") ? column : column.blankMeans("no doubt about the likely value");
    }

    public DistributionColumns need() {
        return new DistributionColumns(low, likely.need(), high);
    }

    /** Where low and high are blank, the weighing spreads the number as published trials differ. */
    public DistributionColumns spreadWhereBlank() {
        return new DistributionColumns(low.blankMeans(SPREAD), likely, high.blankMeans(SPREAD));
    }

    public DistributionColumns otherwise(double value) {
        return new DistributionColumns(low, likely.otherwise(value), high);
    }

    /** The name of the quantity: that of its columns without low, likely and high. */
    public String key() {
        return low.key().replaceFirst("_low", "");
    }

    public List<Column<?>> columns() {
        return List.of(low, likely, high);
    }

    @Override
    public void check(Row row, Objections objections) {
        if (!row.sound(low) || !row.sound(likely) || !row.sound(high) || (row.blank(low) && row.blank(high))) {
            return;
        }
        for (Column<Double> each : List.of(low, likely, high)) {
            if (row.blank(each)) {
                objections.at(row, each, "a number: " + names() + " go together, or only " + likely.key());
                return;
            }
        }
        if (row.get(low) > row.get(likely)) {
            objections.at(row, low, "no more than " + likely.key() + ", which is " + row.found(likely));
        } else if (row.get(likely) > row.get(high)) {
            objections.at(row, high, "no less than " + likely.key() + ", which is " + row.found(likely));
        } else if (row.get(low).equals(row.get(high))) {
            objections.at(
                    row, low, "less than " + high.key() + "; where there is no doubt fill in only " + likely.key());
        }
    }

    private String names() {
        return low.key() + ", " + likely.key() + " and " + high.key();
    }

    /** The distribution of a row, each number in its cells times {@code factor}. */
    public Distribution read(Row row, double factor) {
        return row.known(key(), row.whole(key(), cells -> ofCells(cells, factor)));
    }

    private Distribution ofCells(Row row, double factor) {
        Double least = row.find(low);
        Double most = row.find(high);
        double middle = row.get(likely) * factor;
        return least == null || most == null
                ? new Distribution.Fixed(middle)
                : new Distribution.Pert(least * factor, middle, most * factor);
    }

    public Distribution read(Row row) {
        return read(row, 1);
    }

    /** The distribution of a row; null where none of the three cells is filled in. */
    public @Nullable Distribution find(Row row) {
        return row.whole(key(), cells -> cells.blank(likely) ? null : ofCells(cells, 1));
    }

    /** The same three columns, which may all stay blank. */
    public DistributionColumns blankMeans(String what) {
        return new DistributionColumns(low, likely.blankMeans(what), high);
    }

    /** Fills the three cells, none for no distribution. Only a fixed number and a low-likely-high distribution fit into them. */
    public void show(@Nullable Distribution distribution, Entry entry) {
        if (distribution == null) {
            return;
        }
        if (distribution instanceof Distribution.Fixed fixed) {
            entry.put(likely, fixed.value());
        } else if (distribution instanceof Distribution.Pert pert) {
            entry.put(low, pert.low());
            entry.put(likely, pert.likely());
            entry.put(high, pert.high());
        } else {
            throw new IllegalArgumentException(names() + " hold a number or low, likely and high, not " + distribution);
        }
    }
}
