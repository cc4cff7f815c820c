package plumbrow.advice.gates;

import java.util.List;
import java.util.Set;
import plumbrow.advice.field.FeatureKind;
import plumbrow.science.fate.VolatilityClass;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Property;

/**
 * Whether vapour of an ingredient may reach a sensitive crop or an organic field, hours or days after the spraying.
 *
 * <p>Protects neighbours. Asked where such a crop is noted at any distance: vapour knows no buffer. Class by vapour
 * pressure: low is clear, intermediate and high are conditional. A pressure that the reference data lack counts as high.
 *
 * <p>Source: Kerle, Jenkins and Vogue, Oregon State University EM 8561 (cut-offs from memory); other systems put high ten
 * times lower. Needs: sensitive crops and organic fields around.
 */
final class VapourDrift extends Question {
    private static final Set<FeatureKind> CROPS = Set.of(FeatureKind.SENSITIVE_CROP, FeatureKind.ORGANIC_FIELD);
    private static final double PASCALS_PER_MILLIPASCAL = 1e-3;
    private static final double LOW_BELOW = 10;
    private static final String CARE =
            "Not when the day or the next will be hot or still, and not in an inversion; take a "
                    + "form that gives off less, or work it in where the label allows.";

    VapourDrift() {
        super("vapour-drift", Protects.NEIGHBOURS, "May vapour reach a neighbour's crop?");
    }

    @Override
    public List<Finding> check(Case at) {
        boolean neighbours = at.features().stream().anyMatch(feature -> CROPS.contains(feature.kind()));
        return neighbours
                ? Dose.outdoors(at).stream()
                        .filter(dose -> dose.application().throughAir())
                        .map(Dose::ingredient)
                        .distinct()
                        .map(one -> judge(one).standingIn("Oregon State University EM 8561"))
                        .toList()
                : List.of();
    }

    private Finding judge(Ingredient ingredient) {
        Double pressure = ingredient.number(Property.VAPOUR_PRESSURE);
        if (pressure == null) {
            return conditional(
                            ingredient.name(),
                            "The reference data lack the vapour pressure of " + ingredient.name()
                                    + ": unknown, and counted as volatile.",
                            CARE)
                    .lacking(ingredient.name(), "vapour pressure");
        }
        double index = VolatilityClass.index(pressure * PASCALS_PER_MILLIPASCAL);
        String word = VolatilityClass.of(index);
        String says = "Vapour pressure " + Numbers.read(pressure) + " mPa: " + word + " volatility by Oregon State.";
        Finding finding =
                word.equals("low") ? clear(ingredient.name(), says) : conditional(ingredient.name(), says, CARE);
        return finding.against(index, LOW_BELOW, "index");
    }
}
