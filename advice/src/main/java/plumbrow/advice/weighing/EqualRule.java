package plumbrow.advice.weighing;

import plumbrow.science.figure.Numbers;

/**
 * When one program is told to be ahead of another, and when the two are told as about equal. Nothing else decides it anywhere.
 *
 *   ahead: gain ≥ t, and it leads in at least 55 of 100 of the simulated seasons that tell the two apart, or gain ≥ 3·t;
 *   else about equal
 *
 *   gain  mean of the difference of margins on the same draws [$/ac];  t  the least gain worth telling [$/ac]
 *
 * <p>A season in which the two differ by less than t is level and tells nothing, as ties tell nothing in a sign test (Dixon &amp;
 * Mood 1946, J. Am. Stat. Assoc. 41:557, value from memory). So a program that costs a dollar of scouting in most seasons and earns
 * ten in some is ahead of one that does neither. The amounts and 55 of 100 are common practice, no source: a gain below the price of
 * a trip is not worth an order, and one that shows up in every second season only must be large to be taken on trust.
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
     * @param leads how often it leads, with seasons level that differ by less than t
     */
    public boolean ahead(double gainUsdPerAcre, Leads leads) {
        return gainUsdPerAcre >= LARGE * leastUsdPerAcre
                || (gainUsdPerAcre >= leastUsdPerAcre && leads.ofTellingSeasons() >= LEADS_IN);
    }

    /**
     * How often one program leads another.
     *
     * @param one margins draw by draw, in so many times $/ac
     * @param times what a dollar per acre comes to in them: acres of a field, years of a look ahead
     */
    public Leads leads(double[] one, double[] other, double times) {
        return Leads.of(one, other, leastUsdPerAcre * times);
    }

    /** The rule in one sentence, for the page. */
    public String words() {
        return "Two programs are told as about equal unless one leads by " + Numbers.dollars(leastUsdPerAcre, 2)
                + "/ac on average and in at least 55 of 100 of the simulated seasons that tell them apart, or by "
                + Numbers.dollars(LARGE * leastUsdPerAcre, 2)
                + "/ac on average; a season in which they differ by less than "
                + Numbers.dollars(leastUsdPerAcre, 2)
                + "/ac is level and does not. None that earns less than the baseline on"
                + " average is advised.";
    }
}
