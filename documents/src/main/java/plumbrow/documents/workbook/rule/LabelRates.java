package plumbrow.documents.workbook.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.Amount;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.FieldSheet;
import plumbrow.documents.workbook.sheet.LabelUseSheet;
import plumbrow.documents.workbook.sheet.PassSheet;

/** No pass is planned above the highest rate that the label allows on the field's crop. */
final class LabelRates implements Rule {
    /** Lets a rate pass that is the label's own, converted from another unit and rounded [share]. */
    private static final double ROUNDING = 1e-6;

    @Override
    public void check(Tables tables, Objections objections) {
        Map<String, Row> fields = tables.index(FieldSheet.SHEET, FieldSheet.FIELD);
        Map<List<Object>, Row> labels = labels(tables);
        for (Row pass : tables.rows(PassSheet.SHEET)) {
            Row field = fields.get(String.valueOf(pass.find(PassSheet.FIELD)));
            Crop crop = field == null ? null : field.find(FieldSheet.CROP);
            String product = pass.find(PassSheet.PRODUCT);
            Row label = crop == null || product == null ? null : labels.get(List.of(product, crop));
            if (label != null) {
                check(pass, label, objections);
            }
        }
    }

    private static Map<List<Object>, Row> labels(Tables tables) {
        Map<List<Object>, Row> labels = new HashMap<>();
        for (Row row : tables.rows(LabelUseSheet.SHEET)) {
            String product = row.find(LabelUseSheet.PRODUCT);
            Crop crop = row.find(LabelUseSheet.CROP);
            if (product != null && crop != null) {
                labels.put(List.of(product, crop), row);
            }
        }
        return labels;
    }

    private static void check(Row pass, Row label, Objections objections) {
        Amount planned = amount(pass, PassSheet.RATE, PassSheet.RATE_UNIT);
        Amount highest = amount(label, LabelUseSheet.HIGH, LabelUseSheet.RATE_UNIT);
        if (planned != null
                && highest != null
                && planned.comparableWith(highest)
                && planned.inBase() > highest.inBase() * (1 + ROUNDING)) {
            objections.at(
                    pass,
                    PassSheet.RATE,
                    "no more than the label's " + label.found(LabelUseSheet.HIGH) + " "
                            + label.found(LabelUseSheet.RATE_UNIT) + " on " + label.found(LabelUseSheet.CROP)
                            + "; the label is the law");
        }
    }

    private static @Nullable Amount amount(Row row, Column<Double> value, Column<RateUnit> unit) {
        Double written = row.find(value);
        RateUnit in = row.find(unit);
        return written == null || in == null ? null : in.rate(written);
    }
}
