package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;

/** What must hold within a row of the assumptions: the numbers its form asks for, in the range of its quantity. */
final class AssumptionCheck {
    private static final List<Column<Double>> ABC = List.of(AssumptionSheet.A, AssumptionSheet.B, AssumptionSheet.C);

    private AssumptionCheck() {}

    static void whose(Row row, Objections objections) {
        boolean crop = !row.blank(AssumptionSheet.CROP);
        boolean field = !row.blank(AssumptionSheet.FIELD);
        if (crop == field) {
            objections.at(
                    row,
                    crop ? AssumptionSheet.FIELD : AssumptionSheet.CROP,
                    crop ? "nothing, since the line is for a crop" : "a crop, or a field in the next column");
        }
    }

    static void numbers(Row row, Objections objections) {
        DistributionForm form = row.find(AssumptionSheet.FORM);
        AssumptionQuantity quantity = row.find(AssumptionSheet.QUANTITY);
        if (form == null || quantity == null) {
            return;
        }
        if ((quantity == AssumptionQuantity.PRICE_YIELD_TIE || quantity == AssumptionQuantity.WEATHER_YIELD_TIE)
                && form != DistributionForm.NUMBER) {
            objections.at(row, AssumptionSheet.FORM, "number, the only form of a " + quantity.word());
            return;
        }
        if (form == DistributionForm.PRICE && quantity != AssumptionQuantity.PRICE) {
            objections.at(row, AssumptionSheet.FORM, "another form; price is for the quantity price");
            return;
        }
        for (int i = 0; i < ABC.size(); i++) {
            part(row, form, quantity, i, objections);
        }
        order(row, form, objections);
        past(row, form, quantity, objections);
    }

    private static void part(
            Row row, DistributionForm form, AssumptionQuantity quantity, int index, Objections objections) {
        Column<Double> column = ABC.get(index);
        boolean wanted = index < form.parts().size();
        Double value = row.find(column);
        if (wanted && row.blank(column)) {
            objections.at(row, column, "a number: the " + form.parts().get(index) + " of the form " + form.word());
        } else if (!wanted && !row.blank(column)) {
            objections.at(row, column, "nothing, since the form " + form.word() + " has no use for it");
        } else if (value != null) {
            NumberKind range = form.inUnit(index) ? range(quantity, form) : spread(form);
            if (!range.holds(value)) {
                objections.at(
                        row, column, range.words() + " for the " + form.parts().get(index) + " of " + quantity.word());
            }
        }
    }

    private static void order(Row row, DistributionForm form, Objections objections) {
        Double low = row.find(AssumptionSheet.A);
        Double likely = row.find(AssumptionSheet.B);
        Double high = row.find(AssumptionSheet.C);
        if (!form.ordered() || low == null || likely == null || high == null) {
            return;
        }
        if (low > likely) {
            objections.at(
                    row,
                    AssumptionSheet.A,
                    "no more than b, the most likely, which is " + row.found(AssumptionSheet.B));
        } else if (likely > high) {
            objections.at(
                    row,
                    AssumptionSheet.C,
                    "no less than b, the most likely, which is " + row.found(AssumptionSheet.B));
        } else if (low.equals(high)) {
            objections.at(row, AssumptionSheet.A, "less than c; where there is no doubt use the form number");
        }
    }

    private static void past(Row row, DistributionForm form, AssumptionQuantity quantity, Objections objections) {
        List<Double> values = row.find(AssumptionSheet.VALUES);
        if (form != DistributionForm.PAST) {
            if (!row.blank(AssumptionSheet.VALUES)) {
                objections.at(row, AssumptionSheet.VALUES, "nothing, since the form is " + form.word());
            }
        } else if (row.blank(AssumptionSheet.VALUES) || (values != null && values.size() < 2)) {
            objections.at(row, AssumptionSheet.VALUES, "at least two past values parted by semicolons");
        } else if (values != null && !values.stream().allMatch(range(quantity, form)::holds)) {
            objections.at(row, AssumptionSheet.VALUES, range(quantity, form).words() + " for each " + quantity.word());
        }
    }

    private static NumberKind range(AssumptionQuantity quantity, DistributionForm form) {
        return switch (quantity) {
            case PRICE -> NumberKind.above(0).upTo(1000);
            case YIELD ->
                form == DistributionForm.NORMAL || form == DistributionForm.WEIBULL
                        ? NumberKind.above(0).upTo(1000)
                        : NumberKind.between(0, 1000);
            case HANDLING, DRYING ->
                form == DistributionForm.WEIBULL ? NumberKind.above(0).upTo(100) : NumberKind.between(0, 100);
            case GENETIC_LAG, DELAY_LOSS ->
                form == DistributionForm.WEIBULL ? NumberKind.above(0).upTo(100) : NumberKind.between(0, 100);
            case BEST_STAND -> NumberKind.between(12_000, 250_000);
            case PRICE_YIELD_TIE, WEATHER_YIELD_TIE -> NumberKind.between(-0.95, 0.95);
        };
    }

    /** Coefficient of variation above 0; volatility and years of a price 0 or more. */
    private static NumberKind spread(DistributionForm form) {
        return form == DistributionForm.PRICE
                ? NumberKind.between(0, 10)
                : NumberKind.above(0).upTo(5);
    }
}
