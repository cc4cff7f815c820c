package plumbrow.documents.workbook.form;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/**
 * An amount in two columns, its number and its unit.
 *
 * @param amount the amount of a number in a unit
 * @param shown the unit as its column has it
 */
public record AmountColumns<U>(
        Column<Double> value, Column<U> unit, BiFunction<U, Double, Amount> amount, Function<FarmUnit, U> shown) {
    /** An amount of a product, as it is sold or kept. */
    public static AmountColumns<FarmUnit> of(Column<Double> value, Column<FarmUnit> unit) {
        return new AmountColumns<>(value, unit, (of, number) -> new Amount(number, of), of -> of);
    }

    /** An amount for each acre; a metric label writes it per hectare. */
    public static AmountColumns<RateUnit> rate(Column<Double> value, Column<RateUnit> unit) {
        return new AmountColumns<>(value, unit, RateUnit::rate, RateUnit::perAcre);
    }

    public String key() {
        return value.key();
    }

    public List<Column<?>> columns() {
        return List.of(value, unit);
    }

    /** The amount of a row; null where it has none. */
    public @Nullable Amount find(Row row) {
        return row.whole(key(), this::ofCells);
    }

    private @Nullable Amount ofCells(Row row) {
        Double number = row.find(value);
        return number == null ? null : amount.apply(row.get(unit), number);
    }

    /** The amount of a row that needs one. */
    public Amount get(Row row) {
        return row.known(key(), find(row));
    }

    /** Fills the two cells, none for no amount. */
    public void show(@Nullable Amount filled, Entry entry) {
        if (filled != null) {
            entry.put(value, filled.value());
            entry.put(unit, shown.apply(filled.unit()));
        }
    }
}
