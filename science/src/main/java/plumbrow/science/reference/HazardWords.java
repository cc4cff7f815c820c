package plumbrow.science.reference;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import plumbrow.science.fate.BeeToxicityClass;
import plumbrow.science.fate.WildlifeToxicity;
import plumbrow.science.safety.RatOralCategory;

/**
 * The category of a toxicity that may be a limit. A limit has a category only where all that it can stand for lies in it:
 * {@code >2000} mg/kg by mouth is "III or IV".
 *
 * Source: 40 CFR 156.62 (rat, by mouth; verified); EPA terms for birds, water and bees (values from memory). The limits
 * themselves stand in the classes named.
 */
public final class HazardWords {
    private HazardWords() {}

    /** "II", "III or IV", "highly toxic or moderately toxic"; empty for a property that has no categories. */
    public static Optional<String> of(Property property, Bound value) {
        return scale(property).map(scale -> scale.words(value));
    }

    private static Optional<Scale> scale(Property property) {
        return switch (property) {
            case RAT_ORAL -> Optional.of(new Scale(List.of("I", "II", "III", "IV"), RatOralCategory::of));
            case BOBWHITE_ORAL, MALLARD_ORAL, QUAIL_ORAL -> Optional.of(wildlife(WildlifeToxicity::oral));
            case TROUT, DAPHNIA -> Optional.of(wildlife(WildlifeToxicity::water));
            case BEE_CONTACT, BEE_ORAL ->
                Optional.of(new Scale(
                        List.of("highly toxic", "moderately toxic", "practically nontoxic"), BeeToxicityClass::of));
            default -> Optional.empty();
        };
    }

    private static Scale wildlife(DoubleFunction<String> word) {
        return new Scale(
                List.of(
                        "very highly toxic",
                        "highly toxic",
                        "moderately toxic",
                        "slightly toxic",
                        "practically nontoxic"),
                word);
    }

    /** Categories from the most poisonous on. */
    private record Scale(List<String> categories, DoubleFunction<String> of) {
        String words(Bound value) {
            int worst = categories.indexOf(of.apply(value.least()));
            int mildest = categories.indexOf(of.apply(value.most()));
            return String.join(" or ", categories.subList(worst, mildest + 1));
        }
    }
}
