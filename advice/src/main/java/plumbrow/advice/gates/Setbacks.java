package plumbrow.advice.gates;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.shelf.Setback;
import plumbrow.science.figure.Numbers;

/**
 * Whether the distance that a label keeps from what lies around is kept; one gate for each of those it protects.
 *
 * <p>Something nearer to the field's edge than the label's setback makes it conditional: the strip in between stays
 * unsprayed. Exactly the setback is enough. Unknown where the label was not read for that kind of thing, or its distance
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
                "Does it keep the label's distance from houses and schools?",
                FeatureKind.DWELLING,
                FeatureKind.SCHOOL);
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
                        .map(feature -> judge(at, product, feature)))
                .toList();
    }

    private Finding judge(Case at, String product, Feature feature) {
        Optional<Setback> row = at.index().setbacks(product).stream()
                .filter(setback -> setback.kind() == feature.kind())
                .findFirst();
        Double feet = row.map(Setback::feet).orElse(null);
        String subject = product + ", " + feature.kind().word() + " " + feature.name();
        if (row.isEmpty() || feet == null) {
            return unknown(
                    subject,
                    "How far the label keeps from a " + feature.kind().word() + " has not been read.",
                    "Look up buffers and setbacks from a " + feature.kind().word() + " on the label of " + product
                            + ".");
        }
        return held(subject, row.get(), feet, feature).standingIn(row.get().source());
    }

    private Finding held(String subject, Setback row, double feet, Feature feature) {
        if (feet == 0) {
            return clear(
                    subject,
                    "The label keeps no distance from a " + feature.kind().word() + ".");
        }
        String asked = "the label keeps " + Numbers.plain(feet) + " ft"
                + (row.downwindOnly() ? " where the wind blows towards it" : "");
        Double lies = feature.nearestFt();
        if (lies == null) {
            return unknown(
                    subject,
                    "How far it lies from the field is not measured; " + asked + ".",
                    "Measure the distance from the field's edge.");
        }
        String says = "It lies " + Numbers.plain(lies) + " ft from the field; " + asked + ".";
        Finding finding = Rounding.below(lies, feet)
                ? conditional(subject, says, condition(row, feet, lies))
                : clear(subject, says);
        return finding.against(lies, feet, "ft");
    }

    private static String condition(Setback row, double feet, double lies) {
        String strip = lies > 0
                ? "the outer " + Numbers.plain(feet - lies) + " ft of the field on that side"
                : "all within " + Numbers.plain(feet) + " ft of it";
        return row.downwindOnly()
                ? "Leave " + strip + " unsprayed, or spray when the wind blows away from it."
                : "Leave " + strip + " unsprayed.";
    }
}
