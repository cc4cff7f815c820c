package plumbrow.documents.workbook.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Grid;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.ground.BoundaryFile;
import plumbrow.documents.workbook.ground.NoBoundary;

/** Puts the outlines of a folder's GeoJSON file into the boundary cells of its fields, where a spreadsheet has them. */
final class BoundaryJoin {
    static final String SHEET = "fields";
    static final String FIELD = "field";
    static final String BOUNDARY = "boundary";

    private final Objections objections;

    BoundaryJoin(Objections objections) {
        this.objections = objections;
    }

    List<Grid> join(List<Grid> grids, String geoJson) {
        Map<String, String> outlines = outlines(geoJson);
        List<Grid> joined = new ArrayList<>();
        for (Grid grid : grids) {
            joined.add(grid.name().strip().toLowerCase(Locale.ROOT).equals(SHEET) ? joined(grid, outlines) : grid);
        }
        outlines.keySet().forEach(field -> object(field, "a field of the fields sheet"));
        return joined;
    }

    private Map<String, String> outlines(String geoJson) {
        Map<String, String> outlines = new HashMap<>();
        try {
            for (BoundaryFile.Feature feature : BoundaryFile.read(geoJson)) {
                if (feature.field().isEmpty()) {
                    object("", "a field's name in the property \"field\" of each feature");
                } else if (outlines.put(feature.field(), feature.geometry()) != null) {
                    object(feature.field(), "each field once");
                }
            }
        } catch (NoBoundary broken) {
            objections.at(CsvFolder.BOUNDARIES, 0, "", "something else", broken.expected());
        }
        return outlines;
    }

    private void object(String found, String expected) {
        objections.at(CsvFolder.BOUNDARIES, 0, FIELD, found, expected);
    }

    /** The grid with outlines filled in; those used are taken out of the map. */
    private Grid joined(Grid grid, Map<String, String> outlines) {
        List<String> names = grid.header().stream()
                .map(cell -> cell.found().strip().toLowerCase(Locale.ROOT))
                .toList();
        int field = names.indexOf(FIELD);
        int boundary = names.contains(BOUNDARY) ? names.indexOf(BOUNDARY) : names.size();
        List<Cell> header = new ArrayList<>(grid.header());
        if (boundary == names.size()) {
            header.add(new Cell.Written(BOUNDARY));
        }
        List<Grid.Line> lines = new ArrayList<>();
        for (Grid.Line line : grid.rows()) {
            String outline = outlines.remove(line.cell(field).found());
            lines.add(outline == null ? line : filled(grid, line, boundary, outline));
        }
        return new Grid(grid.name(), grid.place(), header, lines);
    }

    private Grid.Line filled(Grid grid, Grid.Line line, int boundary, String outline) {
        if (!(line.cell(boundary) instanceof Cell.Blank)) {
            objections.at(
                    grid.place(),
                    line.number(),
                    BOUNDARY,
                    line.cell(boundary).found(),
                    "nothing, since " + CsvFolder.BOUNDARIES + " has an outline of this field too");
            return line;
        }
        List<Cell> cells = new ArrayList<>(line.cells());
        while (cells.size() <= boundary) {
            cells.add(Cell.BLANK);
        }
        cells.set(boundary, new Cell.Written(outline.isEmpty() ? "no outline" : outline));
        return new Grid.Line(line.number(), cells);
    }
}
