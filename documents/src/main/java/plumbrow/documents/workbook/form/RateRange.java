package plumbrow.documents.workbook.form;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;

/** A lowest and a highest rate per acre, of which a workbook shows the unit once. */
public record RateRange(Column<Double> low, Column<Double> high, Column<RateUnit> unit) implements RowCheck {
    public List<Column<?>> columns() {
        return List.of(low, high, unit);
    }

    /** The lowest rate of a row; null where it is unknown. */
    public @Nullable Amount low(Row row) {
        return AmountColumns.rate(low, unit).find(row);
    }

    /** The highest rate of a row; null where it is unknown. */
    public @Nullable Amount high(Row row) {
        return AmountColumns.rate(high, unit).find(row);
    }

    /** Fills the cells, the highest rate in the unit of the lowest. */
    void show(@Nullable Amount lowest, @Nullable Amount highest, Entry entry) {
        if (lowest != null) {
            entry.put(low, lowest.value());
        }
        if (highest != null) {
            entry.put(
                    high,
                    lowest == null ? highest.value() : highest.in(lowest.unit()).value());
        }
        Amount first = lowest != null ? lowest : highest;
        if (first != null) {
            entry.put(unit, RateUnit.perAcre(first.unit()));
        }
    }

    /** The unit stands there if a rate does, and the lowest rate is not above the highest. */
    @Override
    public void check(Row row, Objections objections) {
        if (row.blank(unit) && !(row.blank(low) && row.blank(high))) {
            objections.at(row, unit, unit.kind().words());
        }
        Double from = row.find(low);
        Double to = row.find(high);
        if (from != null && to != null && from > to) {
            objections.at(row, low, "no more than " + high.key() + ", which is " + row.found(high));
        }
    }
}
