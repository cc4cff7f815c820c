package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** The candidate answers for each field, without their passes. */
public final class ProgramSheet {
    public static final Column<String> FIELD =
            Column.of("field", TextKind.NAME, "the field", "East 80").need().from(FieldSheet.SHEET, FieldSheet.FIELD);
    public static final Column<String> PROGRAM = Column.of(
                    "program", TextKind.NAME, "name of the program, used once on a field", "Trait, no insecticide")
            .formerly("course")
            .need();
    public static final Column<Boolean> BASELINE = Column.of(
                    "baseline",
                    WordKind.yesNo(),
                    "yes for the one program of the field with which the others are compared, no for the others",
                    "yes")
            .need();
    static final Column<Double> DISTANCE = Column.of(
                    "refuge_distance_ft",
                    NumberKind.between(0, 100_000),
                    "distance from the trait corn to its block refuge, edge to edge; 0 in the field or adjacent",
                    "0")
            .in("ft")
            .blankMeans("unknown, or no block refuge");
    static final Column<Integer> ROWS = Column.of(
                    "refuge_rows", new WholeKind(1, 10_000), "width of the refuge strips", "6")
            .in("rows")
            .blankMeans("unknown, or no strips");
    static final Column<String> NOTE = Column.of("note", TextKind.PROSE, "a remark for the grower", "as last year")
            .otherwise("");

    public static final Sheet<Program> SHEET = Sheet.<Program>named(
                    "programs",
                    "One row for each program: one candidate answer for a field. Its passes stand on the next sheet.",
                    Season::programs)
            .formerly("courses")
            .column(FIELD, Program::field)
            .column(PROGRAM, Program::name)
            .column(BASELINE, Program::baseline)
            .column(DISTANCE, program -> program.refuge().distanceFt())
            .column(ROWS, program -> program.refuge().rows())
            .column(NOTE, Program::note)
            .once(FIELD, PROGRAM)
            .build(row -> new Program(
                    row.get(FIELD),
                    row.get(PROGRAM),
                    row.get(BASELINE),
                    new RefugePlan(row.find(DISTANCE), row.find(ROWS)),
                    row.get(NOTE),
                    List.of()));

    private ProgramSheet() {}
}
