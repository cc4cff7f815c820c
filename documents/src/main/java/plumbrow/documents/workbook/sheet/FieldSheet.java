package plumbrow.documents.workbook.sheet;

import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.land.Acres;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.BoundaryKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** The fields of the season: where they lie, how large they are, what they carry. */
public final class FieldSheet {
    /** Acres written and acres inside the boundary may differ by this share of the latter. */
    private static final double ACRES_SLACK = 0.10;

    public static final Column<String> FIELD = Column.of(
                    "field", TextKind.NAME, "name of the field, used once", "East 80")
            .need();
    static final Column<String> FARM = Column.of("farm", TextKind.NAME, "the farm it belongs to", "Home place")
            .need()
            .from(FarmSheet.SHEET, FarmSheet.FARM);
    static final Column<Double> ACRES = Column.of(
                    "acres",
                    NumberKind.above(0).upTo(50_000),
                    "area planted; needed where there is no boundary",
                    "78.4")
            .in("ac")
            .blankMeans("the area inside the boundary");
    public static final Column<Boundary> BOUNDARY = Column.of(
                    "boundary",
                    new BoundaryKind(),
                    "outline as a GeoJSON geometry, WGS 84; in a folder it stands in boundaries.geojson instead",
                    "{\"type\":\"Polygon\",\"coordinates\":"
                            + "[[[-93.6,42.0],[-93.59,42.0],[-93.59,42.004],[-93.6,42.004],[-93.6,42.0]]]}")
            .blankMeans("not on file");
    public static final Column<String> STATE = Column.of("state", Words.STATE, "state it lies in, postal code", "IA")
            .need();
    public static final Column<String> COUNTY = Column.of(
                    "county", TextKind.NAME, "county it lies in, without the word County", "Adams")
            .need();
    public static final Column<Crop> CROP =
            Column.of("crop", Words.CROP, "crop of this season", "corn").need();
    static final Column<Texture> TEXTURE = Column.of(
                    "texture",
                    WordKind.of(Texture.class, Texture::word),
                    "soil texture of most of the field",
                    "silt loam")
            .blankMeans("unknown");
    static final Column<Double> ORGANIC_MATTER = Column.of(
                    "organic_matter_pct", Words.PERCENT, "soil organic matter", "3.2")
            .in("%")
            .blankMeans("unknown");
    static final Column<Double> PH =
            Column.of("ph", NumberKind.between(3, 11), "soil pH", "6.4").blankMeans("unknown");
    static final Column<Double> SLOPE = Column.of("slope_pct", Words.PERCENT, "slope of most of the field", "4")
            .in("%")
            .blankMeans("unknown");

    public static final Sheet<Field> SHEET = Sheet.<Field>named("fields", "One row for each field.", Season::fields)
            .rows(1, Sheet.MOST_ROWS)
            .column(FIELD, Field::name)
            .column(FARM, Field::farm)
            .column(ACRES, Field::acres)
            .column(BOUNDARY, Field::boundary)
            .column(STATE, Field::state)
            .column(COUNTY, Field::county)
            .column(CROP, Field::crop)
            .column(TEXTURE, Field::texture)
            .column(ORGANIC_MATTER, Field::organicMatterPct)
            .column(PH, Field::ph)
            .column(SLOPE, Field::slopePct)
            .once(FIELD)
            .check(FieldSheet::checkAcres)
            .check(FieldSheet::checkCounty)
            .build(FieldSheet::field);

    private FieldSheet() {}

    private static void checkAcres(Row row, Objections objections) {
        if (!row.sound(ACRES) || !row.sound(BOUNDARY)) {
            return;
        }
        Double written = row.find(ACRES);
        Boundary boundary = row.find(BOUNDARY);
        if (boundary == null) {
            if (written == null) {
                objections.at(row, ACRES, "the acres, since the field has no boundary");
            }
            return;
        }
        double inside = Acres.inside(boundary);
        if (written != null && Math.abs(written - inside) > ACRES_SLACK * inside) {
            objections.at(row, ACRES, "within 10 %% of the %.1f ac inside the boundary".formatted(inside));
        }
    }

    private static void checkCounty(Row row, Objections objections) {
        String county = row.find(COUNTY);
        if (county != null && county.matches("(?i).*\\bcounty")) {
            objections.at(
                    row, COUNTY, "the name alone, without the word County, so that it can be compared with labels");
        }
    }

    private static Field field(Row row) {
        Boundary boundary = row.find(BOUNDARY);
        Double acres = row.find(ACRES);
        return new Field(
                row.get(FIELD),
                row.get(FARM),
                acres != null || boundary == null ? row.get(ACRES) : Acres.inside(boundary),
                boundary,
                row.get(STATE),
                row.get(COUNTY),
                row.get(CROP),
                row.find(TEXTURE),
                row.find(ORGANIC_MATTER),
                row.find(PH),
                row.find(SLOPE));
    }
}
