package plumbrow.advice.farmplan;

import java.util.List;

/**
 * One program for each field of a farm.
 *
 * @param fields in the order of the season; empty where the limits clash
 * @param setAside fields without a program that may be advised, which take of what is shared all the same
 * @param meanUsd mean margin of the farm, without what those bring [$]
 * @param boundUsd no choice of programs has a higher mean [$]
 * @param gapPct how far the plan can be below the best [%]
 * @param worstTenthUsd mean margin of the worst tenth of the scenarios [$]
 * @param freeUsd mean margin if no limit held [$]
 * @param limits what all fields share, with what one more of it is worth
 * @param buys what is bought where prices break, quantities are short or the shed holds some
 * @param says the plan in one sentence
 * @param cautions what it leaves out
 */
public record FarmPlan(
        String farm,
        String grower,
        int scenarios,
        List<Taken> fields,
        List<SetAside> setAside,
        double meanUsd,
        double boundUsd,
        double gapPct,
        double worstTenthUsd,
        double freeUsd,
        List<Shared> limits,
        List<Buy> buys,
        String says,
        List<String> cautions) {
    public FarmPlan {
        fields = List.copyOf(fields);
        setAside = List.copyOf(setAside);
        limits = List.copyOf(limits);
        buys = List.copyOf(buys);
        cautions = List.copyOf(cautions);
    }

    public boolean possible() {
        return !fields.isEmpty();
    }

    /**
     * The program that a field takes.
     *
     * @param alone the program that would be best for the field by itself
     * @param costUsd what it still costs at list prices [$]
     * @param spentUsd what was spent on it already, by the log [$]
     * @param meanUsd mean margin [$]
     * @param givesUpUsd how much less that is than the field alone would bring [$]
     * @param aboutEqual whether the two programs are about equal on the field itself
     */
    public record Taken(
            String field,
            double acres,
            String program,
            String alone,
            double costUsd,
            double spentUsd,
            double meanUsd,
            double givesUpUsd,
            boolean aboutEqual) {}

    /**
     * A field of which no program may be advised: what its likely program takes is not there for the others.
     *
     * @param costUsd what is set aside for it at list prices, without what is spent already [$]
     */
    public record SetAside(String field, double acres, String program, double costUsd, String says) {}

    /**
     * Something that all fields share.
     *
     * @param used how much the plan uses
     * @param most how much there is
     * @param worthUsd what one more step of it is worth [$]; no number where that was not asked
     * @param says one sentence
     */
    public record Shared(String name, double used, double most, String unit, double worthUsd, String says) {}

    /**
     * What is to be bought of one product.
     *
     * @param used what the fields take
     * @param own what comes out of the shed: no money now
     * @param ownWorthUsd what replacing that would cost at list price, as the margins count it [$]
     * @param bought what is bought
     * @param priceUsd of one unit bought [$]; 0 where nothing is
     */
    public record Buy(
            String product, double used, double own, double ownWorthUsd, double bought, String unit, double priceUsd) {}
}
