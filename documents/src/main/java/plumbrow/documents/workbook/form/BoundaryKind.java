package plumbrow.documents.workbook.form;

import plumbrow.advice.field.Boundary;
import plumbrow.documents.workbook.ground.GeoJson;
import plumbrow.documents.workbook.ground.NoBoundary;

/** A field's outline as the text of a GeoJSON geometry. */
public record BoundaryKind() implements Kind<Boundary> {
    @Override
    public String words() {
        return "a GeoJSON Polygon or MultiPolygon";
    }

    @Override
    public Boundary read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        try {
            return GeoJson.read(cell.found());
        } catch (NoBoundary noBoundary) {
            throw new Misread(noBoundary.expected());
        }
    }

    @Override
    public Cell show(Boundary value) {
        return new Cell.Text(GeoJson.write(value));
    }

    @Override
    public Storage<Boundary> storage() {
        return new Storage.Outline();
    }
}
