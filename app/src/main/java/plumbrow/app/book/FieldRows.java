package plumbrow.app.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.CostShares;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Outlines.Mark;

/** Farms, fields with their outlines, and what they carried. */
final class FieldRows {
    static final RowKind<Farm> FARM = new RowKind<>(
            "farm",
            "name grower crop_share cost_share seed_share herbicide_share insecticide_share fungicide_share trips_share "
                    + "drying_share hauling_share",
            Season::farms,
            (farm, cells) -> cells.text(farm.name())
                    .text(farm.grower())
                    .real(farm.cropShare())
                    .real(farm.costShare())
                    .real(farm.shares().seed())
                    .real(farm.shares().herbicide())
                    .real(farm.shares().insecticide())
                    .real(farm.shares().fungicide())
                    .real(farm.shares().trips())
                    .real(farm.shares().drying())
                    .real(farm.shares().hauling()),
            row -> new Farm(
                    row.text(),
                    row.text(),
                    row.real(),
                    row.real(),
                    new CostShares(
                            row.maybeReal(),
                            row.maybeReal(),
                            row.maybeReal(),
                            row.maybeReal(),
                            row.maybeReal(),
                            row.maybeReal(),
                            row.maybeReal())));

    /** Fields; the outline comes with {@link #POINT}. */
    static final RowKind<Field> FIELD = new RowKind<>(
            "field",
            "name farm acres state county crop texture organic_matter_pct ph slope_pct",
            Season::fields,
            (field, cells) -> cells.text(field.name())
                    .text(field.farm())
                    .real(field.acres())
                    .text(field.state())
                    .text(field.county())
                    .word(field.crop())
                    .word(field.texture())
                    .real(field.organicMatterPct())
                    .real(field.ph())
                    .real(field.slopePct()),
            row -> new Field(
                    row.text(),
                    row.text(),
                    row.real(),
                    null,
                    row.text(),
                    row.text(),
                    row.word(Crop.class),
                    row.maybeWord(Texture.class),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal()));

    static final RowKind<Corner> POINT = new RowKind<>(
            "boundary_point",
            "field polygon ring longitude latitude",
            season -> corners(season.fields()),
            (corner, cells) -> cells.text(corner.field())
                    .whole(corner.mark().polygon())
                    .whole(corner.mark().ring())
                    .real(corner.mark().point().longitude())
                    .real(corner.mark().point().latitude()),
            row -> new Corner(row.text(), new Mark(row.whole(), row.whole(), new Point(row.real(), row.real()))));

    static final RowKind<CropYear> CROP_YEAR = new RowKind<>(
            "crop_year",
            "field year crop yield_bu_ac herbicide_traits",
            Season::history,
            (year, cells) -> cells.text(year.field())
                    .whole(year.year())
                    .text(year.crop())
                    .real(year.yieldBuPerAcre())
                    .names(year.herbicideTraits()),
            row -> new CropYear(row.text(), row.whole(), row.text(), row.maybeReal(), row.maybeNames()));

    /** One point of a field's outline. */
    record Corner(String field, Mark mark) {}

    private FieldRows() {}

    /** The fields with their outlines. */
    static List<Field> outlined(List<Field> fields, List<Corner> corners) {
        Map<String, List<Corner>> byField = Grouped.by(Corner::field, corners);
        return fields.stream()
                .map(field -> outlined(field, byField.get(field.name())))
                .toList();
    }

    private static Field outlined(Field field, @Nullable List<Corner> corners) {
        return new Field(
                field.name(),
                field.farm(),
                field.acres(),
                corners == null
                        ? null
                        : Outlines.boundary(corners.stream().map(Corner::mark).toList()),
                field.state(),
                field.county(),
                field.crop(),
                field.texture(),
                field.organicMatterPct(),
                field.ph(),
                field.slopePct());
    }

    private static List<Corner> corners(List<Field> fields) {
        List<Corner> corners = new ArrayList<>();
        for (Field field : fields) {
            Boundary boundary = field.boundary();
            if (boundary != null) {
                Outlines.marks(field.name(), boundary).forEach(mark -> corners.add(new Corner(field.name(), mark)));
            }
        }
        return corners;
    }
}
