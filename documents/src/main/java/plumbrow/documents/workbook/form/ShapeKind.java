package plumbrow.documents.workbook.form;

import plumbrow.advice.field.Feature.Shape;
import plumbrow.documents.workbook.ground.FeatureShape;
import plumbrow.documents.workbook.ground.NoBoundary;

/** Where something in or near a field lies, as the text of a GeoJSON geometry. */
public record ShapeKind() implements Kind<Shape> {
    @Override
    public String words() {
        return "a GeoJSON Point, LineString, Polygon or MultiPolygon";
    }

    @Override
    public Shape read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        try {
            return FeatureShape.read(cell.found());
        } catch (NoBoundary noShape) {
            throw new Misread(noShape.expected());
        }
    }

    @Override
    public Cell show(Shape value) {
        return new Cell.Text(FeatureShape.write(value));
    }

    @Override
    public Storage<Shape> storage() {
        return new Storage.Place();
    }
}
