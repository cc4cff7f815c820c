package plumbrow.advice.weighing;

import plumbrow.science.figure.Numbers;

/**
 * When one program is told to be ahead of another, and when the two are told as about equal. Nothing else decides it anywhere.
 *
 *   ahead: gain ≥ t and it leads in at least 55 of 100 simulated seasons, or gain ≥ 3·t;  else about equal
 *
 *   gain  mean of the difference of margins on the same draws [$/ac];  t  the least gain worth telling [$/ac]
 *
 * <p>Common practice, no source: a gain below the price of a trip is not worth an order, and one that shows up in every second
 * season only must be large to be taken on trust.
 *
 * @param leastUsdPerAcre t, more than 0 [$/ac]
 */
public record EqualRule(double leastUsdPerAcre) {
    public static final EqualRule DEFAULT = new EqualRule(2);

    private static final double LEADS_IN = 0.55;
    private static final double LARGE = 3;

    public EqualRule {
        if (!(leastUsdPerAcre > 0 && leastUsdPerAcre <= 1000)) {
            throw new IllegalArgumentException(
                    "the least gain worth telling is $" + leastUsdPerAcre + "/ac; expected more than 0, up to 1,000");
        }
    }

    /**
     * Whether a program is ahead of another.
     *
     * @param gainUsdPerAcre its mean gain over the other [$/ac]
     * @param leads share of draws in which it earns more, a tie counting half
     */
    public boolean ahead(double gainUsdPerAcre, double leads) {
        return gainUsdPerAcre >= LARGE * leastUsdPerAcre || (gainUsdPerAcre >= leastUsdPerAcre && leads >= LEADS_IN);
    }

    /** The rule in one sentence, for the page. */
    public String words() {
        return "Two programs are told as about equal unless one leads by " + Numbers.dollars(leastUsdPerAcre, 2)
                + "/ac on average and in at least 55 of 100 simulated seasons, or by "
                + Numbers.dollars(LARGE * leastUsdPerAcre, 2)
                + "/ac on average. None that earns less than the baseline on"
                + " average is advised.";
    }
}
