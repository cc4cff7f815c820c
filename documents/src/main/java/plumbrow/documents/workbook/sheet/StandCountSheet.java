package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.stand.StandCount;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;

/** Stands that were counted, for the decision to keep or to replant. */
public final class StandCountSheet {
    static final Column<String> FIELD = Words.field("the field; it is counted once for the whole field");
    static final Column<LocalDate> PLANTED = Column.of(
                    "planted", new DateKind(), "when the crop that stands was planted", "2026-04-25")
            .need();
    static final Column<LocalDate> COUNTED = Column.of(
                    "counted",
                    new DateKind(),
                    "when it was counted; a seed pass after this day replants its share of the acres",
                    "2026-05-14")
            .need();
    static final DistributionColumns PLANTS = DistributionColumns.of(
                    "plants_*_ac",
                    NumberKind.between(0, 3_000_000),
                    "plants/ac",
                    "plants that live and will go on living",
                    14_000,
                    16_000,
                    18_000)
            .need();
    static final DistributionColumns GAPS = DistributionColumns.of(
                    "gaps_*_pct",
                    Words.PERCENT,
                    "% of yield",
                    "yield lost besides to gaps and uneven plants: 0 for even rows; corn with several gaps of 1 to 3 ft 2, with "
                            + "many of 4 to 6 ft 4 to 6, uneven from dry spots 8 to 10",
                    0,
                    2,
                    4)
            .blankMeans("nobody judged it: drawn from 0 to 6, and said");
    static final Column<Double> PAYMENT = Column.of(
                    "replant_payment_usd_ac",
                    NumberKind.between(0, 1_000),
                    "what the insurance pays the operator for each acre that is replanted, by the agent's word",
                    "32")
            .in("$/ac")
            .blankMeans("not asked: counted as nothing, and said");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<StandCount> SHEET = Sheet.<StandCount>named(
                    "stand_counts",
                    "Poor stands that were counted: one row for a field on which keeping the stand and replanting are compared.",
                    season -> season.work().stands())
            .optional()
            .column(FIELD, StandCount::field)
            .column(PLANTED, StandCount::planted)
            .column(COUNTED, StandCount::counted)
            .distribution(PLANTS, StandCount::plantsPerAcre)
            .distribution(GAPS, StandCount::gapsLossPct)
            .column(PAYMENT, StandCount::paymentUsdPerAcre)
            .column(SOURCE, StandCount::source)
            .once(FIELD)
            .check(Words.ordered(PLANTED, COUNTED, "a day no later than"))
            .build(row -> new StandCount(
                    row.get(FIELD),
                    row.get(PLANTED),
                    row.get(COUNTED),
                    PLANTS.read(row),
                    GAPS.find(row),
                    row.find(PAYMENT),
                    row.get(SOURCE)));

    private StandCountSheet() {}
}
