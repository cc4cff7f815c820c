package plumbrow.advice.farmplan;

import plumbrow.advice.weighing.WeighingOptions;

/**
 * How to plan.
 *
 * @param scenarios draws of all fields together, 100 to 5,000; the worst tenth of them counts for the floor
 * @param seed from which all draws come
 * @param worths whether each limit is to be eased by one and the farm planned again, to say what that is worth
 */
public record PlanOptions(int scenarios, long seed, boolean worths) {
    /** What is used where nobody says otherwise. */
    public static final PlanOptions DEFAULT = new PlanOptions(500, WeighingOptions.DEFAULT.seed(), true);

    public PlanOptions {
        if (scenarios < 100 || scenarios > 5_000) {
            throw new IllegalArgumentException("the number of scenarios is " + scenarios + "; expected 100 to 5,000");
        }
    }
}
