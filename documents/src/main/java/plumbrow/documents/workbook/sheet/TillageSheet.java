package plumbrow.documents.workbook.sheet;

import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weeds.Tool;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** How tillage passes are run. */
public final class TillageSheet {
    public static final Column<String> FIELD = Words.field("the field");
    public static final Column<String> PROGRAM = Column.of(
                    "program", TextKind.NAME, "the program of that field", "Worked in")
            .formerly("course")
            .need();
    public static final Column<Integer> PASS = Column.of(
                    "pass", new WholeKind(1, 99), "number of the tillage pass on the sheet passes", "2")
            .need();
    static final Column<Tool> TOOL = tool();
    static final Column<Double> DEPTH = depth("operating depth; all but a rotary tiller mix half as deep");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<TillageWork> SHEET = Sheet.<TillageWork>named(
                    "tillage",
                    "How tillage passes are run: one row for a pass of a program.",
                    season -> season.pests().weedBook().tillage())
            .optional()
            .column(FIELD, TillageWork::field)
            .column(PROGRAM, TillageWork::program)
            .column(PASS, TillageWork::pass)
            .column(TOOL, TillageWork::tool)
            .column(DEPTH, TillageWork::depthIn)
            .column(SOURCE, TillageWork::source)
            .once(FIELD, PROGRAM, PASS)
            .build(row -> new TillageWork(
                    row.get(FIELD), row.get(PROGRAM), row.get(PASS), row.get(TOOL), row.get(DEPTH), row.get(SOURCE)));

    private TillageSheet() {}

    static Column<Tool> tool() {
        return Column.of("tool", WordKind.of(Tool.class, Tool::word), "the tool", "field cultivator")
                .need();
    }

    static Column<Double> depth(String meaning) {
        return Column.of("depth_in", NumberKind.above(0).upTo(24), meaning, "4")
                .in("in")
                .need();
    }
}
