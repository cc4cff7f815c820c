package plumbrow.advice.gates;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;
import plumbrow.science.figure.Numbers;
import plumbrow.science.safety.PeopleNearby;

/**
 * Whether the zone around the sprayer is free of people, wherever it runs, and whether houses and schools lie within it.
 *
 * <p>Protects people. The zone moves with the sprayer and reaches beyond the fence: 100 ft from the air or with droplets
 * finer than medium, 25 ft with medium or coarser from more than 12 in over the soil, else none: the height of a
 * crop counts, and so do sprinklers and hand-held nozzles. Droplets not planned count as fine, a boom or crop height not
 * planned as high. A zone is a condition of the day everywhere; a house, school or public road noted inside it is one more. The
 * owner and his family may stay in a closed house of their own. Unknown where its distance is not measured.
 *
 * <p>Source: 40 CFR 170.405(a), 170.505(b), 2024 rule (89 FR 80767); 170.601(a) for the owner's family (value from memory). Needs: houses, schools and roads with their distance; method,
 * droplets, boom and height of the crop.
 */
final class ExclusionZone extends Question {
    private static final Set<FeatureKind> PEOPLE =
            Set.of(FeatureKind.DWELLING, FeatureKind.SCHOOL, FeatureKind.OWN_HOUSE, FeatureKind.PUBLIC_ROAD);
    private static final double LOW_BOOM_IN = 12;

    ExclusionZone() {
        super("exclusion-zone", Protects.PEOPLE, "Are houses and schools outside the zone around the sprayer?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .filter(Application::throughAir)
                .flatMap(application -> judge(at, application))
                .toList();
    }

    private Stream<Finding> judge(Case at, Application application) {
        SprayPlan plan = application.plan();
        int zone = plan == null ? PeopleNearby.WIDE_FEET : zone(plan);
        return Stream.concat(
                        Stream.of(anywhere(application, zone)),
                        at.features().stream()
                                .filter(feature -> zone > 0 && PEOPLE.contains(feature.kind()))
                                .map(feature -> held(application, zone, feature)))
                .map(finding -> finding.standingIn("40 CFR 170.405(a), 170.505(b)"));
    }

    /** The zone binds wherever the sprayer runs: on the road, across the fence, whether or not a house is noted. */
    private Finding anywhere(Application application, int zone) {
        return zone == 0
                ? clear(
                        application.subject(),
                        "Medium or coarser droplets from 12 in over the ground or less: no zone.")
                : conditional(
                        application.subject(),
                        "Nobody but trained handlers may be within " + zone
                                + " ft of the sprayer, on this field, on the road or across the fence.",
                        "Stop while anyone is within " + zone + " ft, and go on when he has left.");
    }

    private static int zone(SprayPlan plan) {
        Droplets droplets = plan.droplets();
        return plan.method() == Method.AERIAL
                ? PeopleNearby.WIDE_FEET
                : PeopleNearby.sprayZoneFeet(droplets != null && droplets.compareTo(Droplets.MEDIUM) >= 0, low(plan));
    }

    /** The height counts from the soil: over a crop its own height is added to that of the boom over the target. */
    private static boolean low(SprayPlan plan) {
        Double boom = plan.boomIn();
        Double crop = plan.cropHeightIn();
        return boom != null && crop != null && plan.method() != Method.CHEMIGATION && boom + crop <= LOW_BOOM_IN;
    }

    /** What is done along a house or road inside the zone; the owner's own family may stay in a closed house. */
    private static String duty(FeatureKind kind, String what, int zone) {
        return switch (kind) {
            case PUBLIC_ROAD ->
                "Along " + what + ", stop while anyone walks, rides, drives or stands within " + zone
                        + " ft, and spray when the wind blows away from it.";
            case OWN_HOUSE ->
                "Along " + what
                        + ", the owner's family stays inside with doors and windows closed, or leaves; stop while "
                        + "anyone else is within " + zone + " ft.";
            default ->
                "Along " + what + ", spray only while nobody but trained handlers is within " + zone
                        + " ft, and stop when someone comes.";
        };
    }

    private Finding held(Application application, int zone, Lying feature) {
        String what = "the " + feature.kind().word() + " " + feature.name();
        Double distance = feature.nearestFt();
        if (distance == null) {
            return unknown(
                    application.subject(),
                    "How far " + what + " lies from the field is not measured; people must stay " + zone
                            + " ft from the sprayer.",
                    "Measure the distance from the field's edge to " + what + ".");
        }
        String says = what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1) + " lies "
                + Numbers.read(distance) + " ft from the field; people must stay " + zone + " ft from the sprayer."
                + feature.whence();
        Finding finding = Rounding.below(distance, zone)
                ? conditional(application.subject(), says, duty(feature.kind(), what, zone))
                : clear(application.subject(), says);
        return finding.against(distance, zone, "ft");
    }
}
