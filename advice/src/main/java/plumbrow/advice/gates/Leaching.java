package plumbrow.advice.gates;

import java.util.List;
import plumbrow.advice.field.Texture;
import plumbrow.science.fate.LeachingScore;
import plumbrow.science.fate.RunoffRating;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Property;

/**
 * Whether an ingredient is likely to go down to ground water under this soil.
 *
 * <p>Protects water. A screen: it never bars. Rating of the ingredient by its ground-water ubiquity score,
 *
 * <pre>  score = log10(half-life in d) × (4 − log10(Koc));  above 2.8 high, 1.8 to 2.8 intermediate, below low</pre>
 *
 * and with it the rating of the soil, see {@link SoilScreen}. High together is conditional. A half-life or Koc that the
 * reference data lack counts as the worst and is conditional on every soil. A texture that is not known is unknown. Clear
 * means not flagged by this screen, not safe.
 *
 * <p>Source: Gustafson 1989; Goss and Wauchope 1990 (table from memory). Needs: texture of the field; half-life and Koc of
 * the reference data.
 */
final class Leaching extends Question {
    private static final double HIGH = 2.8;
    private static final String SOURCE = "Gustafson 1989, Environ. Toxicol. Chem. 8:339; Goss and Wauchope 1990";
    private static final String CARE =
            "Keep it off the sandiest ground and away from wells and sinkholes, and put it on "
                    + "when no heavy rain is ahead; or choose an ingredient that binds more or lasts less.";

    Leaching() {
        super("leaching", Protects.WATER, "Is it likely to go down to ground water?");
    }

    @Override
    public List<Finding> check(Case at) {
        Texture texture = at.field().texture();
        String soil = SoilScreen.leaching(texture);
        List<Ingredient> ingredients =
                Dose.outdoors(at).stream().map(Dose::ingredient).distinct().toList();
        if (ingredients.isEmpty()) {
            return List.of();
        }
        if (texture == null || soil == null) {
            return List.of(unknown(
                    at.field().name(),
                    "The texture of the soil is not known, so nobody knows how readily it lets things through.",
                    "Look up the texture on the soil map or a soil test."));
        }
        return ingredients.stream()
                .map(one -> judge(one, soil, texture.word()).standingIn(SOURCE))
                .toList();
    }

    private Finding judge(Ingredient ingredient, String soil, String texture) {
        Double halfLife = ingredient.number(Property.FIELD_HALF_LIFE);
        Double koc = ingredient.number(Property.KOC);
        if (halfLife == null || koc == null) {
            return conditional(
                            ingredient.name(),
                            "The reference data lack half-life or Koc of " + ingredient.name()
                                    + ": unknown, and counted as one that leaches.",
                            CARE)
                    .lacking(ingredient.name(), "half-life or Koc");
        }
        double score = LeachingScore.of(halfLife, koc);
        String together = RunoffRating.leachingWithSoil(soil, RunoffRating.leaching(score));
        String says =
                "Leaching score " + Numbers.fixed(score, 2) + " on " + texture + ": " + together + " by this screen.";
        Finding finding =
                together.equals("high") ? conditional(ingredient.name(), says, CARE) : clear(ingredient.name(), says);
        return finding.against(score, HIGH, "score");
    }
}
