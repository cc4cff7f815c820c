package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Entry;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** Prices, yields and the other quantities that hold for a crop or a field as a whole. */
public final class AssumptionSheet {
    static final Column<Crop> CROP = Column.of(
                    "crop", Words.CROP, "the crop this line holds for; fill in crop or field, not both", "corn")
            .blankMeans("a line for one field");
    static final Column<String> FIELD = Column.of(
                    "field", TextKind.NAME, "the field this line holds for; it comes before its crop's line", "East 80")
            .from(FieldSheet.SHEET, FieldSheet.FIELD)
            .blankMeans("a line for a crop");
    static final Column<AssumptionQuantity> QUANTITY = Column.of(
                    "quantity",
                    WordKind.of(AssumptionQuantity.class, AssumptionQuantity::word),
                    "price [$/bu], attainable yield [bu/ac], handling [$/bu], drying [$/bu], genetic lag [bu/ac per year], delay loss"
                            + " [% per day], best stand [plants/ac], price-yield tie [rank correlation], weather-yield tie [rank correlation]",
                    "price")
            .need();
    static final Column<DistributionForm> FORM = Column.of(
                    "form",
                    WordKind.of(DistributionForm.class, DistributionForm::word),
                    "how it is uncertain: number: a; pert, triangular: a low, b likely, c high; normal, weibull: a"
                            + " mean, b coefficient of variation; price: a price today, b volatility in a year, c years;"
                            + " past: values",
                    "pert")
            .need();
    static final Column<Double> A = Column.of("a", NumberKind.any(), "first number of the form", "3.6");
    static final Column<Double> B = Column.of("b", NumberKind.any(), "second number of the form", "4.3");
    static final Column<Double> C = Column.of("c", NumberKind.any(), "third number of the form", "5.4");
    static final Column<List<Double>> VALUES = Column.of(
            "values",
            new ListKind<>(NumberKind.any(), "numbers parted by semicolons, such as 170; 182; 195"),
            "past values for the form past, each as likely as the next",
            "170; 182; 195");
    static final Column<String> SOURCE = Words.source();
    private static final String DISTRIBUTION = "distribution";

    public static final Sheet<AssumptionLine> SHEET = Sheet.<AssumptionLine>named(
                    "assumptions",
                    "What is uncertain about price and yield: one row for a quantity.",
                    Season::assumptions)
            .formerly("outlook")
            .column(CROP, AssumptionLine::crop)
            .column(FIELD, AssumptionLine::field)
            .column(QUANTITY, AssumptionLine::quantity)
            .whole(
                    DISTRIBUTION,
                    new Storage.Spread(),
                    AssumptionLine::distribution,
                    List.of(FORM, A, B, C, VALUES),
                    (line, entry) -> show(line.distribution(), entry))
            .column(SOURCE, AssumptionLine::source)
            .once(CROP, FIELD, QUANTITY)
            .check(AssumptionCheck::whose)
            .check(AssumptionCheck::numbers)
            .build(AssumptionSheet::line);

    private AssumptionSheet() {}

    private static void show(Distribution distribution, Entry entry) {
        entry.put(FORM, DistributionForm.of(distribution));
        List<Double> abc = DistributionForm.abc(distribution);
        for (int i = 0; i < abc.size(); i++) {
            entry.put(List.of(A, B, C).get(i), abc.get(i));
        }
        entry.put(VALUES, distribution instanceof Distribution.Past past ? past.values() : null);
    }

    private static AssumptionLine line(Row row) {
        return new AssumptionLine(
                row.find(CROP),
                row.find(FIELD),
                row.get(QUANTITY),
                row.known(DISTRIBUTION, row.whole(DISTRIBUTION, AssumptionSheet::distribution)),
                row.get(SOURCE));
    }

    private static Distribution distribution(Row row) {
        DistributionForm form = row.get(FORM);
        List<Double> abc = List.of(A, B, C).subList(0, form.parts().size()).stream()
                .map(row::get)
                .toList();
        return form.distribution(abc, form == DistributionForm.PAST ? row.get(VALUES) : List.of());
    }
}
