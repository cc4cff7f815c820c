package plumbrow.app.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Feature.Spot;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.app.book.Outlines.Mark;

/** What lies around the fields and comes after them. */
final class GroundRows {
    /** What was looked for; no kind for everything. */
    static final RowKind<Looked> LOOKED = new RowKind<>(
            "looked_for",
            "field kind",
            season -> season.ground().looked(),
            (looked, cells) -> cells.text(looked.field()).word(looked.kind()),
            row -> new Looked(row.text(), row.maybeWord(FeatureKind.class)));

    /** Features; the points of their shapes come with {@link #POINT}. */
    static final RowKind<Found> FEATURE = new RowKind<>(
            "feature",
            "field kind name shape nearest_ft source",
            season -> season.ground().features().stream()
                    .map(feature -> new Found(feature, form(feature.shape())))
                    .toList(),
            (found, cells) -> cells.text(found.feature().field())
                    .word(found.feature().kind())
                    .text(found.feature().name())
                    .word(found.form())
                    .real(found.feature().nearestFt())
                    .text(found.feature().source()),
            row -> {
                String field = row.text();
                FeatureKind kind = row.word(FeatureKind.class);
                String name = row.text();
                Form form = row.maybeWord(Form.class);
                return new Found(new Feature(field, kind, name, null, row.maybeReal(), row.text()), form);
            });

    static final RowKind<Corner> POINT = new RowKind<>(
            "feature_point",
            "feature polygon ring longitude latitude",
            season -> corners(season.ground().features()),
            (corner, cells) -> cells.whole(corner.feature())
                    .whole(corner.mark().polygon())
                    .whole(corner.mark().ring())
                    .real(corner.mark().point().longitude())
                    .real(corner.mark().point().latitude()),
            row -> new Corner(row.whole(), new Mark(row.whole(), row.whole(), new Point(row.real(), row.real()))));

    static final RowKind<AlsoIn> ALSO_IN = new RowKind<>(
            "also_in",
            "field state county",
            season -> season.ground().alsoIn(),
            (also, cells) -> cells.text(also.field()).text(also.state()).text(also.county()),
            row -> new AlsoIn(row.text(), row.text(), row.text()));

    static final RowKind<NextCrop> NEXT_CROP = new RowKind<>(
            "next_crop",
            "field crop planted planted_as fed",
            season -> season.ground().nextCrops(),
            (next, cells) -> cells.text(next.field())
                    .text(next.crop())
                    .date(next.planted())
                    .word(next.use())
                    .maybeYes(next.fed()),
            row -> new NextCrop(row.text(), row.text(), row.maybeDate(), row.word(NextCrop.Use.class), row.maybeYes()));

    /** What a shape is. */
    enum Form {
        SPOT,
        LINE,
        AREA
    }

    /** A feature and what its shape is; null where it has none. */
    record Found(Feature feature, @Nullable Form form) {}

    /** One point of a feature's shape; the feature by its position. */
    record Corner(int feature, Mark mark) {}

    private GroundRows() {}

    private static @Nullable Form form(@Nullable Shape shape) {
        return shape == null ? null : shape instanceof Spot ? Form.SPOT : shape instanceof Line ? Form.LINE : Form.AREA;
    }

    private static List<Corner> corners(List<Feature> features) {
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < features.size(); i++) {
            int position = i + 1;
            marks(features.get(i)).forEach(mark -> corners.add(new Corner(position, mark)));
        }
        return corners;
    }

    private static List<Mark> marks(Feature feature) {
        Shape shape = feature.shape();
        if (shape instanceof Spot spot) {
            return List.of(new Mark(0, 0, spot.at()));
        } else if (shape instanceof Line line) {
            return line.points().stream().map(point -> new Mark(0, 0, point)).toList();
        }
        return shape instanceof Area area ? Outlines.marks(feature.name(), area.outline()) : List.of();
    }

    /** The features with their shapes. */
    static List<Feature> shaped(List<Found> found, List<Corner> corners) {
        Map<Integer, List<Corner>> byFeature = Grouped.by(Corner::feature, corners);
        return IntStream.range(0, found.size())
                .mapToObj(i -> shaped(
                        found.get(i),
                        byFeature.getOrDefault(i + 1, List.of()).stream()
                                .map(Corner::mark)
                                .toList()))
                .toList();
    }

    private static Feature shaped(Found found, List<Mark> marks) {
        Feature bare = found.feature();
        Form form = found.form();
        return new Feature(
                bare.field(),
                bare.kind(),
                bare.name(),
                form == null ? null : shape(bare.name(), form, marks),
                bare.nearestFt(),
                bare.source());
    }

    private static Shape shape(String name, Form form, List<Mark> marks) {
        if (marks.isEmpty() && form != Form.LINE) {
            throw new BookException("The book is damaged: the shape of " + name + " has no points.");
        }
        return switch (form) {
            case SPOT -> new Spot(marks.get(0).point());
            case LINE -> new Line(marks.stream().map(Mark::point).toList());
            case AREA -> new Area(Outlines.boundary(marks));
        };
    }
}
