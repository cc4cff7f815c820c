package plumbrow.documents.workbook.form;

import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** A unit in which a rate is written: per acre, or per hectare on a metric label. */
public record RateUnit(FarmUnit unit, boolean perHectare) {
    public static RateUnit perAcre(FarmUnit unit) {
        return new RateUnit(unit, false);
    }

    /** The rate per acre that {@code written} in this unit is. */
    public Amount rate(double written) {
        return new Amount(perHectare ? written / Amount.ACRES_PER_HECTARE : written, unit);
    }

    public String text() {
        return unit.symbol() + (perHectare ? "/ha" : "/ac");
    }
}
