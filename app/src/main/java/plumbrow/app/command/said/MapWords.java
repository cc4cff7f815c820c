package plumbrow.app.command.said;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.land.Zone;
import plumbrow.advice.land.Zones;
import plumbrow.app.json.LandSummary;
import plumbrow.app.json.ProgramZones;
import plumbrow.documents.map.MapImport;
import plumbrow.science.figure.Numbers;

/** The map said in text. */
public final class MapWords {
    private static final String UNKNOWN = "unknown";
    private static final int MOST_LINES = 20;

    private MapWords() {}

    /** Field by field: acres, counties, and what lies around with its distance. */
    public static String land(List<LandSummary> fields) {
        Paper paper = new Paper();
        for (LandSummary field : fields) {
            Double inside = field.acresInside();
            paper.heading(field.field() + ": " + acres(field.acresWritten()) + " ac written down, "
                    + (inside == null ? "no outline on file" : acres(inside) + " ac inside the outline"));
            if (!field.counties().isEmpty()) {
                paper.prose(
                        "  Counties: ",
                        field.counties().stream()
                                .map(county -> county.name() + ", " + county.state() + " (" + county.fips() + "), "
                                        + acres(county.acres()) + " ac")
                                .collect(Collectors.joining("; ")));
            }
            field.remarks().forEach(remark -> paper.prose("  ", remark));
            TextTable table = TextTable.empty().words("Around it").words("Name").numbers("Nearest", "ft");
            field.around().forEach(one -> table.row(one.kind(), one.name(), number(one.nearestFt())));
            if (table.hasRows()) {
                table.lines().forEach(paper::line);
            }
            if (!field.surveyed()) {
                paper.prose("  unknown: ", "what else lies around it; look over the field and note it.");
            }
            field.around().stream()
                    .filter(one -> !one.says().isEmpty())
                    .forEach(one -> paper.prose("  ", one.name() + ": " + one.says()));
        }
        return paper.text();
    }

    /** What setbacks leave of a field, product by product. */
    public static String zones(ProgramZones program) {
        Paper paper = new Paper().heading(program.field() + ", " + program.program());
        if (!program.surveyed()) {
            paper.prose("  unknown: ", "what else lies around it; look over the field and note it.");
        }
        if (program.passes().isEmpty()) {
            paper.prose("  ", "No product goes on it out of doors.");
        }
        for (Zones zones : program.passes()) {
            Double left = zones.sprayableAcres();
            paper.prose(
                    "  ",
                    "Pass " + zones.pass() + ", " + zones.product() + ": "
                            + (left == null
                                    ? "what may be sprayed is unknown: draw the field and what lies around it on the map"
                                    : (program.surveyed() && zones.notRead().isEmpty() ? "" : "at most ") + acres(left)
                                            + " of " + acres(zones.acres()) + " ac may be sprayed, whatever the wind")
                            + ".");
            TextTable table = TextTable.empty()
                    .words("Setback from")
                    .words("")
                    .numbers("Keeps", "ft")
                    .words("Holds")
                    .numbers("Takes", "ac");
            zones.zones().forEach(zone -> row(table, zone));
            if (table.hasRows()) {
                table.lines().forEach(paper::line);
            }
            zones.notRead()
                    .forEach(kind -> paper.prose(
                            "  unknown: ",
                            "how far the label of " + zones.product() + " keeps from the " + kind + "."));
        }
        return paper.gap()
                .prose("The current label is the law. Local code and licensed practice decide.")
                .text();
    }

    private static void row(TextTable table, Zone zone) {
        Double acres = zone.acres();
        table.row(
                zone.feature().kind().word(),
                zone.feature().name(),
                Numbers.read(zone.feet()),
                zone.downwindOnly() ? "wind towards it" : "always",
                acres == null ? UNKNOWN : Numbers.fixed(acres, 2));
    }

    /** What was taken out of a map file. */
    public static String taken(Path file, MapImport.Result result) {
        Paper paper = new Paper().heading(file.getFileName() + ": " + result.taken() + " taken in");
        TextTable table = TextTable.empty()
                .numbers("No.", "")
                .words("Name")
                .words("Field")
                .words("What became of it");
        result.rows().forEach(row -> row(table, row));
        table.lines().forEach(paper::line);
        return paper.text();
    }

    private static void row(TextTable table, MapImport.Row row) {
        String field = row.field();
        table.row(String.valueOf(row.number()), row.name(), field == null ? "none" : field, row.says());
    }

    /** Why nothing was taken out of a map file, a line for each shape that stands in the way. */
    public static String refused(Path file, MapImport.Result result) {
        return result.rows().stream()
                .filter(row -> row.wrong() || !result.wrong())
                .limit(MOST_LINES)
                .map(row -> file.getFileName() + ", shape " + row.number()
                        + (row.name().isEmpty() ? "" : " (" + row.name() + ")") + ": " + row.says()
                        + ". Nothing was taken in.")
                .collect(Collectors.joining("\n"));
    }

    private static String acres(double acres) {
        return Numbers.fixed(acres, 1);
    }

    private static String number(@Nullable Double feet) {
        return feet == null ? UNKNOWN : Numbers.read(feet);
    }
}
