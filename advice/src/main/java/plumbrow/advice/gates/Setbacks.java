package plumbrow.advice.gates;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Cut;
import plumbrow.advice.shelf.Setback;
import plumbrow.science.figure.Numbers;

/**
 * Whether the distance that a label keeps from what lies around is kept; one gate for each of those it protects.
 *
 * <p>Something nearer to the field's edge than the label's setback makes it conditional: the strip in between stays
 * unsprayed. Exactly the setback is enough. Every row of the label holds: one that
 * always holds and one that holds downwind are two. Unknown where the label was not read for that kind of thing, or its distance
 * is not measured. Silent where nobody has looked around: {@link Surveyed} asks for that once.
 *
 * <p>Source: the label. Needs: the setback of each product from each kind of thing around, and its distance.
 */
final class Setbacks extends Question {
    private final Set<FeatureKind> kinds;

    private Setbacks(String id, Protects protects, String question, FeatureKind... kinds) {
        super(id, protects, question);
        this.kinds = Set.of(kinds);
    }

    static Setbacks fromWater() {
        return new Setbacks(
                "setback-water",
                Protects.WATER,
                "Does it keep the label's distance from water?",
                FeatureKind.STREAM,
                FeatureKind.DITCH,
                FeatureKind.POND,
                FeatureKind.WELL,
                FeatureKind.SINKHOLE,
                FeatureKind.TILE_INLET);
    }

    static Setbacks fromPeople() {
        return new Setbacks(
                "setback-people",
                Protects.PEOPLE,
                "Does it keep the label's distance from houses, schools and roads?",
                FeatureKind.DWELLING,
                FeatureKind.SCHOOL,
                FeatureKind.OWN_HOUSE,
                FeatureKind.PUBLIC_ROAD);
    }

    static Setbacks fromWildlife() {
        return new Setbacks(
                "setback-wildlife",
                Protects.WILDLIFE,
                "Does it keep the label's distance from bees and habitat?",
                FeatureKind.BEE_YARD,
                FeatureKind.HABITAT);
    }

    static Setbacks fromNeighbours() {
        return new Setbacks(
                "setback-neighbours",
                Protects.NEIGHBOURS,
                "Does it keep the label's distance from neighbours' crops?",
                FeatureKind.SENSITIVE_CROP,
                FeatureKind.ORGANIC_FIELD);
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .filter(Application::outdoors)
                .map(Application::product)
                .distinct()
                .flatMap(product -> at.features().stream()
                        .filter(feature -> kinds.contains(feature.kind()))
                        .flatMap(feature -> judge(at, product, feature)))
                .toList();
    }

    /** Every row of the label holds: 20 ft always and 240 ft downwind are two distances to keep. */
    private Stream<Finding> judge(Case at, String product, Lying feature) {
        List<Setback> rows = at.index().setbacks(product, feature.kind());
        return rows.isEmpty()
                ? Stream.of(unread(product, feature))
                : rows.stream().map(row -> judge(at.field(), product, row, feature));
    }

    private static String subject(String product, Lying feature) {
        return product + ", " + feature.kind().word() + " " + feature.name();
    }

    private Finding unread(String product, Lying feature) {
        return unknown(
                subject(product, feature),
                "How far the label keeps from a " + feature.kind().word() + " has not been read.",
                "Look up buffers and setbacks from a " + feature.kind().word() + " on the label of " + product + ".");
    }

    private Finding judge(Field field, String product, Setback row, Lying feature) {
        Double feet = row.feet();
        return (feet == null ? unread(product, feature) : held(field, subject(product, feature), row, feet, feature))
                .standingIn(row.source());
    }

    private Finding held(Field field, String subject, Setback row, double feet, Lying feature) {
        if (feet == 0) {
            return clear(
                    subject,
                    "The label keeps no distance from a " + feature.kind().word() + ".");
        }
        String asked = "the label keeps " + Numbers.read(feet) + " ft"
                + (row.downwindOnly() ? " where the wind blows towards it" : "");
        Double lies = feature.nearestFt();
        if (lies == null) {
            return unknown(
                    subject,
                    "How far it lies from the field is not measured; " + asked + ".",
                    "Measure the distance from the field's edge, or draw it on the field's map.");
        }
        String says = "The " + feature.kind().word() + " " + feature.name() + " lies " + Numbers.read(lies)
                + " ft from the field; " + asked + "." + feature.whence();
        if (!Rounding.below(lies, feet)) {
            return clear(subject, says).against(lies, feet, "ft");
        }
        Double acres = Cut.acres(field, feature.feature(), feet);
        String takes = acres == null ? "" : " That takes " + Numbers.read(tenthUp(acres)) + " ac of the field.";
        return conditional(subject, says + takes, condition(row, feet, lies, acres))
                .against(lies, feet, "ft");
    }

    /** Acres to leave, never too few for rounding. */
    private static double tenthUp(double acres) {
        return Math.max(0.1, Rounding.upToTenth(acres));
    }

    private static String condition(Setback row, double feet, double lies, @Nullable Double acres) {
        String strip = (acres == null ? "" : "the " + Numbers.read(tenthUp(acres)) + " ac, ")
                + (lies > 0
                        ? "the outer " + Numbers.read(feet - lies) + " ft of the field on that side"
                        : "all within " + Numbers.read(feet) + " ft of it")
                + (acres == null ? "" : ",");
        return row.downwindOnly()
                ? "Leave " + strip + " unsprayed, or spray when the wind blows away from it."
                : "Leave " + strip + " unsprayed.";
    }
}
