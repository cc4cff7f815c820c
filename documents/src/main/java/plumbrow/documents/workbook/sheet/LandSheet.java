package plumbrow.documents.workbook.sheet;

import plumbrow.advice.land.FieldLand;
import plumbrow.advice.shelf.Ask;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;

/** What labels ask of the land of a field beside its soil. */
public final class LandSheet {
    static final Column<String> FIELD = Words.field("the field");
    static final Column<Ask> ERODIBLE =
            Words.ask("erodible", "whether it is highly erodible land, as the county office of the farm agency has it");
    static final Column<Double> RESIDUE =
            Words.number("residue_pct", Words.PERCENT, "%", "share of the ground under crop residue at planting", "35");
    static final Column<Double> GROUND_WATER = Words.number(
            "ground_water_ft",
            NumberKind.between(0, 2_000),
            "ft",
            "least depth down to ground water in the season, by soil map or well record",
            "6");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<FieldLand> SHEET = Sheet.<FieldLand>named(
                    "land",
                    "What labels ask of the land of a field beside its soil: one row for a field.",
                    season -> season.ground().lands())
            .optional()
            .column(FIELD, FieldLand::field)
            .column(ERODIBLE, FieldLand::erodible)
            .column(RESIDUE, FieldLand::residuePct)
            .column(GROUND_WATER, FieldLand::groundWaterFt)
            .column(SOURCE, FieldLand::source)
            .once(FIELD)
            .build(row -> new FieldLand(
                    row.get(FIELD), row.get(ERODIBLE), row.find(RESIDUE), row.find(GROUND_WATER), row.get(SOURCE)));

    private LandSheet() {}
}
