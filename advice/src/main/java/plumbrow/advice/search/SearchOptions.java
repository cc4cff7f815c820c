package plumbrow.advice.search;

import plumbrow.advice.weighing.WeighingOptions;

/**
 * How to search.
 *
 * @param draws number of draws, as for the weighing
 * @param seed from which all draws come
 * @param mostWeighed programs weighed at most before the search stops and says what is left open
 * @param widthUsdPerAcre every program whose mean margin is this near to the best is found [$/ac]
 * @param sites sites of action that must work on each driver weed, as far as the shelf has them
 * @param mates most products in one tank
 */
public record SearchOptions(int draws, long seed, int mostWeighed, double widthUsdPerAcre, int sites, int mates) {
    /** What is used where nobody says otherwise. */
    public static final SearchOptions DEFAULT =
            new SearchOptions(WeighingOptions.DEFAULT.draws(), WeighingOptions.DEFAULT.seed(), 20_000, 10, 2, 2);

    public SearchOptions {
        hold(mostWeighed >= 1, "the programs weighed at most", mostWeighed, "1 or more");
        hold(widthUsdPerAcre >= 0 && widthUsdPerAcre <= 1000, "the width", widthUsdPerAcre, "0 to 1000 $/ac");
        hold(sites >= 0 && sites <= 5, "the number of sites of action", sites, "0 to 5");
        hold(mates >= 1 && mates <= 4, "the number of products in one tank", mates, "1 to 4");
        WeighingOptions.DEFAULT.withDraws(draws);
    }

    private static void hold(boolean good, String what, Number found, String expected) {
        if (!good) {
            throw new IllegalArgumentException(what + " is " + found + "; expected " + expected);
        }
    }

    public SearchOptions withDraws(int number) {
        return new SearchOptions(number, seed, mostWeighed, widthUsdPerAcre, sites, mates);
    }

    public SearchOptions withSeed(long number) {
        return new SearchOptions(draws, number, mostWeighed, widthUsdPerAcre, sites, mates);
    }

    public SearchOptions withMostWeighed(int number) {
        return new SearchOptions(draws, seed, number, widthUsdPerAcre, sites, mates);
    }

    public SearchOptions withWidth(double usdPerAcre) {
        return new SearchOptions(draws, seed, mostWeighed, usdPerAcre, sites, mates);
    }

    public SearchOptions withSites(int number) {
        return new SearchOptions(draws, seed, mostWeighed, widthUsdPerAcre, number, mates);
    }

    public SearchOptions withMates(int number) {
        return new SearchOptions(draws, seed, mostWeighed, widthUsdPerAcre, sites, number);
    }
}
