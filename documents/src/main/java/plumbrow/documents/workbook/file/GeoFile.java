package plumbrow.documents.workbook.file;

import java.util.List;
import plumbrow.documents.workbook.ground.GeoJsonFile;
import plumbrow.documents.workbook.ground.KmlFile;
import plumbrow.documents.workbook.ground.NoBoundary;

/**
 * A file of shapes beside the CSV files of a folder; a spreadsheet has them in a column.
 *
 * @param name name of the file
 * @param sheet the sheet whose rows the shapes belong to
 * @param keys the columns that tell whose a shape is; its properties of the same names say so
 * @param shape the column that holds the shape in a spreadsheet
 * @param owner a row of the sheet in words that follow "expected"
 * @param others further properties from which a shape that belongs to no row makes a row; empty where it may not
 */
record GeoFile(String name, String sheet, List<String> keys, String shape, String owner, List<String> others) {
    static final GeoFile BOUNDARIES = new GeoFile(
            "boundaries.geojson", "fields", List.of("field"), "boundary", "a field of the fields sheet", List.of());

    static final GeoFile FEATURES = new GeoFile(
            "features.geojson",
            "surroundings",
            List.of("field", "kind", "name"),
            "shape",
            "a row of the surroundings sheet",
            List.of("nearest_ft", "source"));

    /** The files that a written folder has. */
    static final List<GeoFile> WRITTEN = List.of(BOUNDARIES, FEATURES);

    private static final GeoFile KML = new GeoFile(
            "boundaries.kml",
            BOUNDARIES.sheet(),
            BOUNDARIES.keys(),
            BOUNDARIES.shape(),
            BOUNDARIES.owner(),
            BOUNDARIES.others());

    /** The files that are read. */
    static final List<GeoFile> READ = List.of(BOUNDARIES, KML, FEATURES);

    /** The shapes of the file's text. */
    List<GeoJsonFile.Feature> shapes(String text) throws NoBoundary {
        return equals(KML) ? KmlFile.read(text) : GeoJsonFile.read(text);
    }

    /** Whether a shape that belongs to no row makes one. */
    boolean adds() {
        return !others.isEmpty();
    }

    /** The sheet's CSV file. */
    String csv() {
        return sheet + CsvFolder.ENDING;
    }
}
