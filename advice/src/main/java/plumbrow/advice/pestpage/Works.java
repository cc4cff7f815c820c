package plumbrow.advice.pestpage;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.gates.Kill;
import plumbrow.advice.quantity.Amount;

/**
 * How a product of the shelf works on a pest in a crop.
 *
 * @param rated the product, or the active ingredients of it that the rating is of
 * @param reach where it meets the pest
 * @param lowPct lowest, mean and highest control [%]; null where unrated
 * @param rate per acre at which that holds; null where not on file
 * @param heightIn height of the weed [in]; null on soil and for insects
 * @param groups sites of action; null where one of them is unknown
 * @param rank what the rating rests on
 */
public record Works(
        String product,
        String rated,
        Crop crop,
        Reach reach,
        @Nullable Double lowPct,
        @Nullable Double meanPct,
        @Nullable Double highPct,
        @Nullable Amount rate,
        @Nullable Double heightIn,
        @Nullable List<String> groups,
        Rank rank,
        String source) {
    /** Where a product meets a pest. */
    public enum Reach {
        SOIL("in the soil, before it is up"),
        LEAF("on leaves, when it is up"),
        PLANTING("at planting"),
        RESCUE("over the crop"),
        UNSAID("timing not written down");

        private final String word;

        Reach(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        boolean first() {
            return this == SOIL || this == PLANTING;
        }

        boolean second() {
            return this == LEAF || this == RESCUE;
        }
    }

    /** What a rating rests on, the nearest to the field first. */
    public enum Rank {
        OWN("own rating"),
        BOOK("control sheet"),
        TRAITS("traits sheet"),
        PUBLISHED("published"),
        UNRATED("unrated");

        private final String word;

        Rank(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Works {
        groups = groups == null ? null : List.copyOf(groups);
    }

    /** Whether it counts as working: {@link Kill#EFFECTIVE} or more on the mean. */
    public boolean works() {
        return meanPct != null && meanPct >= 100 * Kill.EFFECTIVE - 1e-9;
    }
}
