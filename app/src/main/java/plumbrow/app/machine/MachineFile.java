package plumbrow.app.machine;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.ratemap.RateMap;
import plumbrow.documents.machine.FileBundle;
import plumbrow.documents.machine.GridType;
import plumbrow.documents.machine.RateZones;
import plumbrow.documents.machine.TaskData;
import plumbrow.documents.machine.TaskDataVersion;

/** The kinds of file in which a machine, or the program of a machine, is told the rates of a pass. */
public enum MachineFile {
    TASK_DATA("task-data", "task-data.zip", "application/zip"),
    SHAPEFILE("shapefile", "rates-shapefile.zip", "application/zip"),
    GEOJSON("geojson", "rates.geojson", "application/geo+json");

    private final String word;
    private final String fileName;
    private final String contentType;

    MachineFile(String word, String fileName, String contentType) {
        this.word = word;
        this.fileName = fileName;
        this.contentType = contentType;
    }

    /** How task data are written; a shapefile and GeoJSON have no such choice. */
    public record Edition(TaskDataVersion version, GridType grid) {
        /** Edition 4 has been out for long, and a value in each cell is what most readers expect. */
        public static final Edition USUAL = new Edition(TaskDataVersion.V4, GridType.VALUES);

        /**
         * By their numbers as a person gives them.
         *
         * @throws IllegalArgumentException with a sentence
         */
        public static Edition of(String version, String grid) {
            TaskDataVersion edition = Arrays.stream(TaskDataVersion.values())
                    .filter(one -> String.valueOf(one.major()).equals(version.strip()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "There is no version “" + shown(version) + "” of task data here; expected 3 or 4."));
            GridType type = Arrays.stream(GridType.values())
                    .filter(one -> String.valueOf(one.number()).equals(grid.strip()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("There is no grid type “" + shown(grid)
                            + "”; expected 1 (a zone in each cell) or 2 (a value in" + " each cell)."));
            return new Edition(edition, type);
        }

        private static String shown(String typed) {
            return typed.length() > 40 ? typed.substring(0, 37) + "…" : typed;
        }
    }

    /** By the word of the command. */
    public static Optional<MachineFile> called(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    public String word() {
        return word;
    }

    public String fileName() {
        return fileName;
    }

    public String contentType() {
        return contentType;
    }

    /** The files inside, by their paths; one for GeoJSON. */
    public Map<String, byte[]> files(RateMap map, Edition edition) {
        return switch (this) {
            case TASK_DATA -> TaskData.files(map, edition.version(), edition.grid());
            case SHAPEFILE -> RateZones.shapefile(map);
            case GEOJSON -> Map.of(fileName, RateZones.geoJsonBytes(map));
        };
    }

    /** All in one file: a zip, or GeoJSON. */
    public byte[] content(RateMap map, Edition edition) {
        return this == GEOJSON ? RateZones.geoJsonBytes(map) : FileBundle.zip(files(map, edition));
    }
}
