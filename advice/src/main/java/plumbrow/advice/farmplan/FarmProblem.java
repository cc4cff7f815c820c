package plumbrow.advice.farmplan;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A farm in plain numbers: each place takes one of its options, and all of them share limits.
 *
 * <pre>
 *   most   Σ mean·x + Σ goods (list·used − list·own − Σ tier price·bought)
 *   under  Σ use·x ≤ limit                                       each limit
 *          own + Σ bought ≥ used,  own = min(on hand, used),  Σ bought ≤ most   each good, one tier of it at a time
 *          Σ cost·x − Σ goods (list·used − Σ tier price·bought) ≤ money
 *          mean of the worst tenth of the scenarios ≥ floor
 * </pre>
 *
 * What lies in the shed is used before anything is bought. It counts at list price, which it would cost to replace, and takes no
 * money.
 *
 * @param money [$]; null for no limit
 * @param floor [$]; null for no limit
 */
record FarmProblem(
        List<Place> places,
        List<Limit> limits,
        List<Good> goods,
        @Nullable Double money,
        @Nullable Double floor) {
    FarmProblem {
        places = List.copyOf(places);
        limits = List.copyOf(limits);
        goods = List.copyOf(goods);
    }

    /**
     * @param counted whether what it brings counts; else it only takes of what is shared
     */
    record Place(String name, List<Option> options, boolean counted) {
        Place {
            options = List.copyOf(options);
        }

        Place(String name, List<Option> options) {
            this(name, options, true);
        }
    }

    /**
     * @param cost what the operator still has to pay for it at list prices [$]
     * @param spent what he has spent on it already, which no choice brings back [$]
     * @param scenarios margin in each scenario at list prices [$]
     * @param uses how much of each limit it takes
     * @param goods how much of each good it takes
     */
    @SuppressWarnings("ArrayRecordComponent") // Plain columns of numbers, read only.
    record Option(String name, double cost, double spent, double[] scenarios, double[] uses, double[] goods) {
        double mean() {
            return Arrays.stream(scenarios).sum() / scenarios.length;
        }
    }

    /** @param most the sum of uses that is allowed */
    record Limit(String name, double most) {}

    /**
     * @param list price at which the options reckon it [$ per unit]
     * @param onHand what need not be bought, and is used first
     * @param most the most that can be bought
     * @param tiers from which quantity on each unit bought costs what; the first from 0
     */
    record Good(String name, double list, double onHand, double most, List<Tier> tiers) {
        Good {
            tiers = List.copyOf(tiers);
        }
    }

    record Tier(double from, double price) {}

    int scenarios() {
        return places.get(0).options().get(0).scenarios().length;
    }

    /** How many scenarios are the worst tenth, at least one. */
    int worst() {
        return Math.max(1, (int) Math.round(scenarios() / 10.0));
    }

    int choices() {
        return places.stream().mapToInt(place -> place.options().size()).sum();
    }
}
