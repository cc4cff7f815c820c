package plumbrow.documents.workbook.sheet;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.RowCheck;

/** Rates per acre and the column with their unit, which a lowest and a highest rate share. */
final class RateCells {
    static final NumberKind RATE = NumberKind.above(0).upTo(1_000_000);

    private RateCells() {}

    /** The unit stands there if a rate does, and the lowest rate is not above the highest. */
    static RowCheck lowAndHigh(Column<Double> low, Column<Double> high, Column<RateUnit> unit) {
        RowCheck ordered = Words.ordered(low, high);
        return (row, objections) -> {
            if (row.blank(unit) && !(row.blank(low) && row.blank(high))) {
                objections.at(row, unit, unit.kind().words());
            }
            ordered.check(row, objections);
        };
    }

    static @Nullable Amount rate(Row row, Column<Double> value, Column<RateUnit> unit) {
        Double written = row.find(value);
        return written == null ? null : row.get(unit).rate(written);
    }

    /** The highest rate in the unit of the lowest. */
    static @Nullable Amount highAsLow(@Nullable Amount low, @Nullable Amount high) {
        return high == null || low == null ? high : high.in(low.unit());
    }

    static @Nullable Double value(@Nullable Amount amount) {
        return amount == null ? null : amount.value();
    }

    static @Nullable RateUnit unit(@Nullable Amount amount) {
        return amount == null ? null : RateUnit.perAcre(amount.unit());
    }
}
