package plumbrow.advice.gates;

import java.util.List;
import java.util.Set;
import plumbrow.advice.field.FeatureKind;
import plumbrow.science.figure.Numbers;

/**
 * Whether spray may drift onto a sensitive crop or an organic field.
 *
 * <p>Protects neighbours. How little harms that crop the book does not know, so anything noted around
 * the field is conditional; beyond 100 m, to which drift was measured, what falls is not known and counts as that at 100 m. Unknown where the distance is not measured. Drift in an
 * inversion and vapour are not in it.
 *
 * <p>Source: Rautmann et al. 2001. Needs: sensitive crops and organic fields with their distance; drift class of the
 * sprayer.
 */
final class DriftToNeighbours extends Question {
    private static final Set<FeatureKind> CROPS = Set.of(FeatureKind.SENSITIVE_CROP, FeatureKind.ORGANIC_FIELD);

    DriftToNeighbours() {
        super("drift-to-neighbours", Protects.NEIGHBOURS, "May spray drift onto a neighbour's crop?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .filter(Application::throughAir)
                .flatMap(application -> at.features().stream()
                        .filter(feature -> CROPS.contains(feature.kind()))
                        .map(feature -> judge(application, feature)
                                .standingIn("Rautmann et al. 2001, Mitt. Biol. Bundesanst. 383:133")))
                .toList();
    }

    private Finding judge(Application application, Lying feature) {
        String subject = application.subject() + ", " + feature.kind().word() + " " + feature.name();
        Double feet = feature.nearestFt();
        if (feet == null) {
            return unknown(
                    subject,
                    "How far it lies from the field is not measured.",
                    "Measure the distance from the field's edge.");
        }
        if (application.chemigated()) {
            return conditional(
                    subject,
                    "No curve tells what drifts from a sprinkler: unknown, and counted as the worst."
                            + feature.whence(),
                    "Irrigate when the wind blows away from it, with the end gun off and the pressure low.");
        }
        double deposit = Drift.of(application.plan()).depositPct(feet);
        String says = "The " + feature.kind().word() + " " + feature.name() + " lies " + Numbers.read(feet)
                + " ft away; "
                + (feet > Drift.FARTHEST_FT ? "beyond the 328 ft to which drift was measured at most " : "about ")
                + Numbers.read(deposit) + " % of the rate may fall there with wind towards it." + feature.whence();
        return conditional(
                subject,
                says,
                "Speak with the neighbour, and spray that side only when a steady wind blows away from it"
                        + (feature.kind() == FeatureKind.ORGANIC_FIELD
                                ? ": any trace may cost him his certificate."
                                : "."));
    }
}
