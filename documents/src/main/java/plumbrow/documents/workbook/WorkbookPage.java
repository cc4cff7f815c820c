package plumbrow.documents.workbook;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** The manual's page on the workbook, made from the same description as the template and the reader. */
public final class WorkbookPage {
    private static final String INTRODUCTION = """
            # The workbook

            A season goes into Plumbrow and out of it as a workbook: one spreadsheet (XLSX) with the sheets below, or a
            folder with one CSV file for each sheet, the outlines of the fields in `boundaries.geojson` and what lies around
            them in `features.geojson`. Both hold the same. What is written out reads back to the last digit.

            Start with an empty one:

                plumbrow workbook template season.xlsx
                plumbrow workbook check season.xlsx

            ## Filling it in

            - The first row holds the column names, the rows below it one thing each. Blank rows do no harm.
            - Point at a column name in the template to see what belongs there. Dark names must be filled in on every row.
            - A blank cell is unknown, never allowed. Where a label was not read, leave it blank. Do not guess. The current
              label is the law.
            - Write decimals with a point: 4.5. Write no commas in numbers and no units behind them.
            - Write dates as year-month-day: 2026-05-04. Spreadsheet dates are read too.
            - Spell a name the same way on every sheet.
            - A name that refers to something must find it: a product, program or person on its sheet, a pest on a field or
              among the known ones, an ingredient, crop or county by its common name. Capitals, plurals and salts of
              ingredients, plurals and kinds of crops (winter wheat) do not count. Else it is a fault that suggests the nearest.
            - Rates are per acre: `fl oz/ac`, or `fl oz` for short. Metric labels: `L/ha`, `mL/ha`, `kg/ha` and `g/ha` are
              turned into rates per acre.
            - All amounts of a product are of one kind. What is priced by the gallon is not put out by the pound.
            - Where low, likely and high stand side by side, fill in all three, or only likely: it is then without doubt, or spread as
              fields and years differ in it, as its columns say.
            - Part several entries in one cell by semicolons: `IA; IL`. The word `none` says that someone looked and there is
              none.
            - Growth stages are written as labels write them. Corn: VE, V1 to V22, VT, R1 to R6. Soybean: VE, VC, V1 to V20,
              R1 to R8. Wheat: Feekes 1 to 11.4. PRE is before the crop is up.
            - Of a formula, the value it shows is read. A formula that failed is a fault.

            ## If something is wrong

            Nothing is taken over, and everything that is wrong is told at once, one sentence each:

                fields, row 4, column acres: found "4,50", expected a number above 0 and up to 50000, with a point and not a comma: 4.50.

            A pass above the highest rate of the label is refused here already. Refused are also workbooks with macros or a
            password, the old XLS format, files that unpack to far more than they should, more than 20,000 rows on a sheet,
            and CSV files that are not UTF-8 with commas between the columns.

            ## Outlines

            An outline is a GeoJSON Polygon or MultiPolygon in WGS 84, longitude before latitude. In a folder,
            `boundaries.geojson` is a FeatureCollection, and each feature names its field in the property `field`. Acres are
            measured along the ellipsoid; holes are taken off. If acres are written too, they are kept, and must be within
            10 % of what the outline holds. Outlines are also read from `boundaries.kml`, where each placemark with an area
            bears the name of its field; pins and paths in it are left alone.

            The county written down must be one of its state, and the outline must lie in it or less than a mile from it by the
            census map (docs/land.md). Where the outline crosses a county line, both counties judge the field.

            ## Around the fields

            A creek, a well, a house or a bee yard is one row of the sheet `surroundings`, with its distance from the field's
            edge, its shape, or both. A shape is a GeoJSON Point, LineString, Polygon or MultiPolygon. In a folder,
            `features.geojson` holds the shapes. Each feature says in the properties `field`, `kind` and `name` whose row it
            belongs to. One that no row fits makes a row by itself, if it has the property `source` too; `nearest_ft` may
            stand beside it. A thing on the list does not say that somebody looked for more. Once he has looked all around the
            field, write one row of the kind `none`, for nothing else; where he looked for some things only, one row each of
            the kind `no dwelling`, `no stream` and so on. What nobody looked for is unknown.

            ## The sheets

            All of them must be there, if only with their column names, but for those called optional. What an optional sheet
            would say is unknown where it is left out. `*` marks columns that every row must fill in. Other columns may be
            left out.
            """;

    private WorkbookPage() {}

    /** The page in Markdown. */
    public static String markdown() {
        return INTRODUCTION + Sheets.ALL.stream().map(WorkbookPage::section).collect(Collectors.joining());
    }

    private static String section(Sheet<?> sheet) {
        String rows = sheet.columns().stream().map(WorkbookPage::row).collect(Collectors.joining());
        return "\n### " + sheet.name() + "\n\n" + sheet.purpose() + once(sheet)
                + (sheet.optional() ? " Optional." : "")
                + "\n\n| column | meaning | holds | unit | example |\n|---|---|---|---|---|\n" + rows;
    }

    private static String once(Sheet<?> sheet) {
        return sheet.unique().stream()
                .map(columns -> " Each " + names(columns) + " once.")
                .collect(Collectors.joining());
    }

    private static String names(List<Column<?>> columns) {
        return columns.stream().map(Column::key).collect(Collectors.joining(", "));
    }

    private static String row(Column<?> column) {
        return "| " + column.key() + (column.required() ? "\\*" : "") + " | "
                + cell(column.meaning() + (column.blank().isEmpty() ? "" : "; " + column.blank())) + " | "
                + cell(column.kind().words() + reference(column)) + " | " + cell(column.unit()) + " | "
                + cell(column.example()) + " |\n";
    }

    private static String reference(Column<?> column) {
        Column.Reference reference = column.reference();
        return reference == null
                ? ""
                : "; stands in " + reference.sheet().name() + ", "
                        + reference.column().key();
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }
}
