package plumbrow.documents.workbook.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Grid;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.ground.GeoJsonFile.Feature;
import plumbrow.documents.workbook.ground.NoBoundary;

/** Puts the shapes of a folder's file into the cells of the rows they belong to, where a spreadsheet has them. */
final class ShapeJoin {
    private final GeoFile file;
    private final Objections objections;

    ShapeJoin(GeoFile file, Objections objections) {
        this.file = file;
        this.objections = objections;
    }

    /** A feature and how many stand before it in the file, itself counted. */
    private record Numbered(int number, Feature feature) {}

    List<Grid> join(List<Grid> grids, String text) {
        Map<List<String>, Numbered> shapes = shapes(text);
        List<Grid> joined = new ArrayList<>();
        boolean found = false;
        for (Grid grid : grids) {
            boolean wanted = tidy(grid.name()).equals(file.sheet());
            found |= wanted;
            joined.add(wanted ? joined(grid, shapes) : grid);
        }
        if (!found && file.adds()) {
            joined.add(joined(new Grid(file.sheet(), file.csv(), List.of(), List.of()), shapes));
        }
        shapes.values()
                .forEach(left -> object(left.feature().property(file.keys().get(0)), file.owner()));
        return joined;
    }

    private static String tidy(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    private Map<List<String>, Numbered> shapes(String text) {
        Map<List<String>, Numbered> shapes = new LinkedHashMap<>();
        int number = 0;
        try {
            for (Feature feature : file.shapes(text)) {
                number++;
                List<String> key = file.keys().stream()
                        .map(column -> tidy(feature.property(column)))
                        .toList();
                if (!file.adds() && key.contains("")) {
                    object("", "a field's name at each outline: the property \"field\" in GeoJSON, the name in KML");
                } else if (shapes.put(key, new Numbered(number, feature)) != null) {
                    object(feature.property(file.keys().get(0)), "each " + String.join(", ", file.keys()) + " once");
                }
            }
        } catch (NoBoundary broken) {
            objections.at(file.name(), 0, "", "something else", broken.expected());
        }
        return shapes;
    }

    private void object(String found, String expected) {
        objections.at(file.name(), 0, file.keys().get(0), found, expected);
    }

    /** The grid with shapes filled in; those used are taken out of the map. */
    private Grid joined(Grid grid, Map<List<String>, Numbered> shapes) {
        List<String> names = new ArrayList<>(
                grid.header().stream().map(cell -> tidy(cell.found())).toList());
        List<Cell> header = new ArrayList<>(grid.header());
        add(file.shape(), names, header);
        List<Grid.Line> lines = new ArrayList<>();
        for (Grid.Line line : grid.rows()) {
            List<String> key = file.keys().stream()
                    .map(column -> tidy(line.cell(names.indexOf(column)).found()))
                    .toList();
            Numbered shape = shapes.remove(key);
            lines.add(shape == null ? line : filled(grid, line, names.indexOf(file.shape()), shape.feature()));
        }
        if (file.adds() && !shapes.isEmpty()) {
            columns().forEach(column -> add(column, names, header));
            shapes.values().forEach(shape -> lines.add(added(shape, names)));
            shapes.clear();
        }
        return new Grid(grid.name(), grid.place(), header, lines);
    }

    private static void add(String column, List<String> names, List<Cell> header) {
        if (!names.contains(column)) {
            names.add(column);
            header.add(new Cell.Written(column));
        }
    }

    private Grid.Line filled(Grid grid, Grid.Line line, int index, Feature shape) {
        if (!(line.cell(index) instanceof Cell.Blank)) {
            objections.at(
                    line.place(grid),
                    line.number(),
                    file.shape(),
                    line.cell(index).found(),
                    "nothing, since " + file.name() + " has a shape of this row too");
            return line;
        }
        List<Cell> cells = new ArrayList<>(line.cells());
        put(cells, index, geometry(shape));
        return new Grid.Line(line.number(), cells);
    }

    /** A row made of a feature by itself, which a person finds by its number in the file. */
    private Grid.Line added(Numbered shape, List<String> names) {
        List<Cell> cells = new ArrayList<>();
        for (String column : columns()) {
            String value = shape.feature().property(column);
            if (!value.isEmpty()) {
                put(cells, names.indexOf(column), value);
            }
        }
        put(cells, names.indexOf(file.shape()), geometry(shape.feature()));
        return new Grid.Line(shape.number(), cells, file.name());
    }

    /** The properties of a feature that make a row. */
    private List<String> columns() {
        return Stream.concat(file.keys().stream(), file.others().stream()).toList();
    }

    private static String geometry(Feature shape) {
        return shape.geometry().isEmpty() ? "no geometry" : shape.geometry();
    }

    private static void put(List<Cell> cells, int index, String text) {
        while (cells.size() <= index) {
            cells.add(Cell.BLANK);
        }
        cells.set(index, new Cell.Written(text));
    }
}
