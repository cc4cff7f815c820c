package plumbrow.app.desk.map;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.land.CountyFit;
import plumbrow.advice.land.Zone;
import plumbrow.advice.land.Zones;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.json.LandSummary;
import plumbrow.documents.picture.Chart;
import plumbrow.science.figure.Numbers;

/**
 * What the map of a field shows.
 *
 * @param chart null where neither outline nor features are on file
 * @param program the program whose zones are drawn; null where the field has none
 */
public record MapSheet(
        Season season,
        Field field,
        LandSummary land,
        List<Feature> features,
        @Nullable Chart chart,
        List<Program> programs,
        @Nullable Program program,
        List<Zones> zones,
        List<List<Point>> countyLines,
        List<Tiles.Tile> tiles) {
    public static MapSheet of(Season season, Field field, @Nullable String asked, Tiles tiles) {
        List<Feature> features = season.ground().features(field.name());
        Chart chart = chart(field, features);
        List<Program> programs = season.programs(field.name());
        Gates gates = Gates.of(season);
        Program program = programs.stream()
                .filter(one -> one.name().equals(asked))
                .findFirst()
                .or(() -> programs.stream().max(Comparator.comparingDouble(one -> most(gates.zones(field, one)))))
                .orElse(null);
        Boundary outline = field.boundary();
        return new MapSheet(
                season,
                field,
                LandSummary.of(season, field),
                features,
                chart,
                programs,
                program,
                program == null ? List.of() : gates.zones(field, program),
                outline == null ? List.of() : CountyFit.of(outline).lines(),
                chart == null ? List.of() : tiles.under(chart));
    }

    /** The most that a product of a program must leave, so that the program that loses most is drawn first [ac]. */
    private static double most(List<Zones> zones) {
        return zones.stream().mapToDouble(MapSheet::lost).max().orElse(-1);
    }

    private static @Nullable Chart chart(Field field, List<Feature> features) {
        return Chart.around(
                        field.boundary(),
                        features.stream()
                                .flatMap(feature -> Stream.ofNullable(feature.shape()))
                                .toList())
                .orElse(null);
    }

    /** The one sentence at the top. */
    public String answer() {
        Double inside = land.acresInside();
        if (inside == null) {
            return "No outline of " + field.name() + " is on file; its acres, zones and county can't be measured";
        }
        Optional<Zones> worst =
                zones.stream().filter(one -> one.lostAcres() != null).max(Comparator.comparingDouble(MapSheet::lost));
        String acres = Numbers.fixed(inside, 1) + " ac inside the outline";
        Program drawn = program;
        if (!land.surveyed() && features.isEmpty()) {
            return acres + "; nobody has noted what lies around, so what setbacks take is unknown";
        }
        if (zones.stream()
                .anyMatch(one -> one.sprayableAcres() == null || !one.notRead().isEmpty())) {
            return acres + "; what setbacks leave of it is not all known";
        }
        return worst.isEmpty() || drawn == null || lost(worst.get()) < 0.005
                ? acres + "; " + (land.surveyed() ? "no setback" : "no setback from what is noted") + " takes any of it"
                        + (drawn == null ? "" : " with " + drawn.name())
                : acres + "; " + drawn.name() + " leaves " + Numbers.fixed(inside - lost(worst.get()), 1)
                        + " of them to spray";
    }

    private static double lost(Zones zones) {
        Double lost = zones.lostAcres();
        return lost == null ? 0 : lost;
    }

    /** Whether a feature has a shape that shows on the chart. */
    public boolean drawn(Feature feature) {
        Shape shape = feature.shape();
        Chart on = chart;
        return shape != null && on != null && on.shows(shape);
    }

    /** What the lines of the picture mean, as far as they are on it. */
    public String key() {
        List<Zone> drawn = zones.stream()
                .flatMap(one -> one.zones().stream())
                .filter(zone -> zone.area() != null)
                .toList();
        return Stream.of(
                        drawn.stream().anyMatch(zone -> !zone.downwindOnly())
                                ? "Close lines: to be left unsprayed."
                                : "",
                        drawn.stream().anyMatch(Zone::downwindOnly)
                                ? "Broken lines: to be left while the wind blows towards what they guard."
                                : "",
                        countyLines.isEmpty() ? "" : "Dotted: county line of the census map, exact to about a mile.")
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
