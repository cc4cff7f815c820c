package plumbrow.documents.workbook.sheet;

import plumbrow.advice.weeds.FloorDepth;
import plumbrow.advice.weeds.Tool;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** Depths dug behind a tool. */
public final class FloorSheet {
    public static final Column<String> FIELD = Words.field("the field");
    static final Column<Tool> TOOL = TillageSheet.tool();
    static final Column<String> PLACE = Column.of(
                    "place", TextKind.NAME, "where across its width", "left wing, 2nd shank")
            .need();
    static final Column<Double> DEPTH = TillageSheet.depth("from the surface to the floor");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<FloorDepth> SHEET = Sheet.<FloorDepth>named(
                    "floor_checks",
                    "Holes dug behind a tool: one row for a place across its width, ten or more for a judgement. Their mean counts"
                            + " before the depth in the sheet tillage.",
                    season -> season.pests().weedBook().floor())
            .optional()
            .column(FIELD, FloorDepth::field)
            .column(TOOL, FloorDepth::tool)
            .column(PLACE, FloorDepth::place)
            .column(DEPTH, FloorDepth::depthIn)
            .column(SOURCE, FloorDepth::source)
            .once(FIELD, TOOL, PLACE)
            .build(row ->
                    new FloorDepth(row.get(FIELD), row.get(TOOL), row.get(PLACE), row.get(DEPTH), row.get(SOURCE)));

    private FloorSheet() {}
}
