package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Yield given up by saved seed because breeding went on.
 *
 *   lag = g·n [bu/ac];  n* = (cost bought − cost saved) / (g·P) [years]
 *
 *   g  yield gained by breeding each year [bu/ac/yr];  n years since the variety was current;  P price [$/bu]
 *
 * Soybean about 0.3 to 0.43 (maturity groups II to IV), 0.15 to 0.26 (V to VII), corn 1.67 to 1.96, hard winter wheat 0 to
 * 0.3. g is uncertain and contested: trials have found no lag at all, seed-industry pages 5 bu: use low, likely and high.
 *
 * Source: Rincker et al. 2014 Crop Sci.; Boehm et al. 2019 Crop Sci. 59:1838; Graybosch & Peterson 2010 Crop Sci. 50:1882.
 */
public final class GeneticLag {
    private static final Input GAIN =
            number("gain_bu_ac_year", "Yield gained by breeding each year", "bu/ac/yr", Range.NOT_NEGATIVE, "0.43");

    public static final Figure FIGURE = Figure.declare("genetic-lag", Subject.ECONOMICS)
            .question("What does saved seed give up because breeding went on?")
            .input(GAIN)
            .input(number("years", "Years since the variety was current", "yr", Range.closed(0, 100), "3"))
            .input(Asked.PRICE)
            .output("lag_bu_ac", "Yield given up", "bu/ac")
            .output("lag_usd_ac", "Money given up", "$/ac")
            .formula("lag = gain per year × years; × price in $")
            .source("[rincker-2014]; [boehm-2019]", VERIFIED)
            .validity(
                    "Straight line over the years. The first year of saving a current variety lags by about one year's gain.")
            .caution(
                    "The yearly gain is uncertain and contested: trials in 2012–2014 found no significant difference, a seed-industry page 5.2 bu.")
            .example(
                    "gain_bu_ac_year=0.431 years=10.2 price_usd_bu=10.50",
                    "lag_usd_ac=46.2",
                    "at the break-even age the lag is the saving of 46.26 $/ac",
                    COMPUTED)
            .model(GeneticLag::solve);

    public static final Figure BREAK_EVEN_AGE = Figure.declare("saved-seed-age", Subject.ECONOMICS)
            .question("After how many years does saved seed cost more than it saves?")
            .input(number("bought_usd_ac", "Cost of bought seed", "$/ac", Range.NOT_NEGATIVE, "63.97"))
            .input(number("saved_usd_ac", "Cost of saved seed", "$/ac", Range.NOT_NEGATIVE, "17.71"))
            .input(GAIN)
            .input(Asked.PRICE)
            .output("years", "Age at which the lag eats the saving", "yr")
            .formula("years = (bought − saved) ÷ (gain per year × price)")
            .source("Lag of variety trials, [rincker-2014], set equal to the saving", VERIFIED)
            .validity("Where bought seed is not dearer the answer is 0. Without a yearly gain it is the word never.")
            .caution("The right to save this seed comes first: read the bag and the agreement, ask the seller.")
            .caution("Cost alone favours saving for long; seed quality and the right to save decide earlier.")
            .example(
                    "bought_usd_ac=63.97 saved_usd_ac=17.71 gain_bu_ac_year=.431 price_usd_bu=10.50",
                    "years=10.2",
                    "soybean",
                    COMPUTED)
            .model(GeneticLag::solveAge);

    private GeneticLag() {}

    /** g·n [bu/ac]. */
    public static double buPerAcre(double gainBuPerAcreYear, double years) {
        return gainBuPerAcreYear * years;
    }

    private static Outputs solve(Given given, Working working) {
        double gain = given.number("gain_bu_ac_year");
        double years = given.number("years");
        double price = given.number("price_usd_bu");
        double lag =
                working.line("yield given up", buPerAcre(gain, years), "bu/ac", "{} bu/ac/yr × {} yr", gain, years);
        return new Outputs()
                .put("lag_bu_ac", lag)
                .put(
                        "lag_usd_ac",
                        working.line("money given up", lag * price, "$/ac", "{} bu/ac × {} $/bu", lag, price));
    }

    private static Outputs solveAge(Given given, Working working) {
        double bought = given.number("bought_usd_ac");
        double saved = given.number("saved_usd_ac");
        double gain = given.number("gain_bu_ac_year");
        double price = given.number("price_usd_bu");
        double saving = working.line("saving", bought - saved, "$/ac", "{} − {} $/ac", bought, saved);
        if (saving <= 0) {
            working.caution("Bought seed is not dearer: saving has nothing to pay for its lag.");
            return new Outputs().put("years", 0);
        }
        double perYear = working.line("lag per year", gain * price, "$/ac/yr", "{} bu/ac/yr × {} $/bu", gain, price);
        if (perYear == 0) {
            return new Outputs().put("years", "never");
        }
        return new Outputs()
                .put("years", working.line("age", saving / perYear, "yr", "{} $/ac ÷ {} $/ac/yr", saving, perYear));
    }
}
