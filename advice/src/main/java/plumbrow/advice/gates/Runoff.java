package plumbrow.advice.gates;

import java.util.List;
import plumbrow.science.fate.RunoffRating;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Property;

/**
 * Whether an ingredient is likely to run off this field, dissolved or on soil that washes off.
 *
 * <p>Protects water. A screen: it never bars. The worse of the two ratings of the ingredient and the rating of the soil
 * together, see {@link SoilScreen}; high is conditional. What the reference data lack counts as the worst and is
 * conditional on every soil. A slope or texture that is not known is unknown. Clear means not flagged by this screen.
 *
 * <p>Source: Goss 1992, Weed Technol. 6:701; Goss and Wauchope 1990 (from memory). Needs: slope and texture of the field;
 * half-life, solubility and Koc of the reference data.
 */
final class Runoff extends Question {
    private static final String SOURCE = "Goss 1992, Weed Technol. 6:701; Goss and Wauchope 1990";
    private static final String CARE =
            "Keep a grass strip along the low side, put it on when no heavy rain is ahead, and "
                    + "work it in or band it where the label allows; or choose another ingredient.";

    Runoff() {
        super("runoff", Protects.WATER, "Is it likely to run off this field?");
    }

    @Override
    public List<Finding> check(Case at) {
        Double slope = at.field().slopePct();
        String soil = SoilScreen.runoff(at.field().texture(), slope);
        List<Ingredient> ingredients =
                Dose.outdoors(at).stream().map(Dose::ingredient).distinct().toList();
        if (ingredients.isEmpty()) {
            return List.of();
        }
        if (slope == null || soil == null) {
            return List.of(unknown(
                    at.field().name(),
                    "Slope or texture of the field is not known, so nobody knows how readily it sheds water.",
                    "Look up slope and texture on the soil map."));
        }
        return ingredients.stream()
                .map(one -> judge(one, soil, slope).standingIn(SOURCE))
                .toList();
    }

    private Finding judge(Ingredient ingredient, String soil, double slope) {
        Double halfLife = ingredient.number(Property.FIELD_HALF_LIFE);
        Double solubility = ingredient.number(Property.WATER_SOLUBILITY);
        Double koc = ingredient.number(Property.KOC);
        if (halfLife == null || solubility == null || koc == null) {
            return conditional(
                            ingredient.name(),
                            "The reference data lack half-life, solubility or Koc of " + ingredient.name()
                                    + ": unknown, and counted as one that runs off.",
                            CARE)
                    .lacking(ingredient.name(), "half-life, solubility or Koc");
        }
        String dissolved = RunoffRating.runoffWithSoil(soil, RunoffRating.solution(halfLife, solubility, koc));
        String onSoil = RunoffRating.runoffWithSoil(soil, RunoffRating.adsorbed(halfLife, solubility, koc));
        String says = "At " + Numbers.read(slope) + " % slope: dissolved " + dissolved + ", on washed soil " + onSoil
                + " by this screen.";
        boolean flagged = dissolved.equals("high") || onSoil.equals("high");
        return flagged ? conditional(ingredient.name(), says, CARE) : clear(ingredient.name(), says);
    }
}
