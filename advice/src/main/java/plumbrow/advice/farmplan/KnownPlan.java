package plumbrow.advice.farmplan;

import java.util.List;
import java.util.Map;
import plumbrow.advice.field.Farm;
import plumbrow.advice.season.Season;

/**
 * The plan of a farm with all that it came out of, so that it need not be made anew while that stays as it is.
 *
 * @param takenAfter what this plan and those of the farms before it take out of the shed, by product
 */
public record KnownPlan(From from, FarmPlan plan, Map<String, Double> takenAfter) {
    /**
     * What a plan comes out of.
     *
     * @param own the season of each field of the farm, with what fields share
     * @param takenBefore what the farms before it take out of the shed, by product
     */
    record From(Farm farm, List<Season> own, PlanOptions options, Map<String, Double> takenBefore) {}
}
