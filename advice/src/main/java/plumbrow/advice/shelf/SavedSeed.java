package plumbrow.advice.shelf;

/**
 * What saved seed costs instead of a price, and how far its genetics have fallen behind.
 *
 * @param yearsBehind years since the variety was current
 * @param binPriceUsdPerBu sale value of the grain, net of haul [$/bu]
 * @param cleaningUsdPerBu cleaning, storage and handling, per bushel drawn [$/bu]
 * @param treatmentUsdPerBu treatment, per bushel planted [$/bu]
 * @param cleanoutPct share of drawn bushels lost in cleaning [%], less than 100
 * @param testsUsd germination and other tests for the lot [$]
 * @param lotAcres acres over which the tests are spread [ac], more than 0
 */
public record SavedSeed(
        double yearsBehind,
        double binPriceUsdPerBu,
        double cleaningUsdPerBu,
        double treatmentUsdPerBu,
        double cleanoutPct,
        double testsUsd,
        double lotAcres) {}
