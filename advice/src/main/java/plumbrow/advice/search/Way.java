package plumbrow.advice.search;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.SprayPlan;

/**
 * One way to spray in a window: carrier, droplets, boom, growth stage and crop height, as one or more of the field's programs
 * have them. How tall the weeds are that a product is meant for is its own, since tank mates are aimed at different weeds.
 *
 * @param plan how it is sprayed, its program, pass, tank and weed height not counting; null where no program says
 * @param weedHeights tallest weed meant, by the products that the programs put on so [in]
 * @param tallest of them all; holds for any other product; null where no program says [in]
 * @param planted days on which the programs that have it plant: at that growth stage it holds over no other planting
 */
record Way(
        @Nullable SprayPlan plan,
        Map<String, Double> weedHeights,
        @Nullable Double tallest,
        Set<Optional<LocalDate>> planted) {
    Way {
        weedHeights = Map.copyOf(weedHeights);
        planted = Set.copyOf(planted);
    }

    /** Whether the crop is up: what is sprayed must then be one that the crop stands. */
    boolean afterEmergence() {
        return afterEmergence(plan);
    }

    static boolean afterEmergence(@Nullable SprayPlan plan) {
        String stage = plan == null ? null : plan.cropStage();
        return stage == null || !stage.toUpperCase(Locale.ROOT).equals("PRE");
    }

    /** The plan for a product. */
    @Nullable
    SprayPlan planFor(String product) {
        SprayPlan bare = plan;
        return bare == null ? null : bare.overWeeds(weedHeights.getOrDefault(product, tallest));
    }

    /** A way met again keeps the taller of two heights: the stricter word holds. */
    Way and(Way other) {
        Map<String, Double> heights = new HashMap<>(weedHeights);
        other.weedHeights.forEach((product, height) -> heights.merge(product, height, Math::max));
        Set<Optional<LocalDate>> days = new HashSet<>(planted);
        days.addAll(other.planted);
        return new Way(plan, heights, taller(tallest, other.tallest), days);
    }

    private static @Nullable Double taller(@Nullable Double one, @Nullable Double other) {
        return one == null ? other : other == null ? one : Double.valueOf(Math.max(one, other));
    }

    boolean sameAs(Way other) {
        return Objects.equals(plan, other.plan);
    }
}
