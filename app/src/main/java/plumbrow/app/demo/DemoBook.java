package plumbrow.app.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.WorkbookReader;

/**
 * An invented season: three growers, sixteen fields of corn, soybeans and wheat in two states, whose honest answers
 * differ. People, farms and products are invented; states, counties and the ground, active ingredients and the sources
 * named for science are real.
 *
 * <p>It travels inside Plumbrow as a workbook folder and is read by the same reader as anyone's workbook.
 */
public final class DemoBook {
    /** A folder inside a jar can't be listed, so its sheets are named here. */
    private static final List<String> FILES = List.of(
            "season.csv",
            "farms.csv",
            "fields.csv",
            "boundaries.geojson",
            "history.csv",
            "insects.csv",
            "trait_doubts.csv",
            "weeds.csv",
            "shelf.csv",
            "seeds.csv",
            "traits.csv",
            "actives.csv",
            "label_uses.csv",
            "active_limits.csv",
            "control.csv",
            "programs.csv",
            "passes.csv",
            "assumptions.csv",
            "terms.csv",
            "soil_rates.csv",
            "setbacks.csv",
            "plant_backs.csv",
            "mix_rules.csv",
            "special_labels.csv",
            "care.csv",
            "tolerances.csv",
            "surroundings.csv",
            "features.geojson",
            "also_in.csv",
            "land.csv",
            "bulletins.csv",
            "next_crops.csv",
            "resistance.csv",
            "sprays.csv",
            "people.csv",
            "crew.csv",
            "climate.csv",
            "crop_days.csv",
            "ratings.csv",
            "tillage.csv",
            "floor_checks.csv",
            "log.csv",
            "machines.csv",
            "work_windows.csv",
            "farm_limits.csv",
            "price_breaks.csv",
            "supplies.csv",
            "sprayers.csv",
            "nozzles.csv",
            "mixing.csv",
            "water_tests.csv",
            "additions.csv");

    private DemoBook() {}

    /** The demo season. */
    public static Season season() {
        try {
            Path folder = Files.createTempDirectory("plumbrow-demo");
            try {
                copyTo(folder);
                return WorkbookReader.read(folder);
            } finally {
                for (String file : FILES) {
                    Files.deleteIfExists(folder.resolve(file));
                }
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Writes the demo workbook into a folder, to be looked at and changed.
     *
     * @param folder made where it is not there; files of the same names in it are not overwritten
     * @throws java.nio.file.FileAlreadyExistsException where one of them is there already
     */
    public static void copyTo(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (String file : FILES) {
            try (InputStream packed = DemoBook.class.getResourceAsStream("/demo/" + file)) {
                if (packed == null) {
                    throw new IOException("the demo workbook lacks " + file);
                }
                Files.copy(packed, folder.resolve(file));
            }
        }
    }
}
