package plumbrow.science.safety;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How poisonous a mixture is, from its ingredients.
 *
 *   100/ATE = Σ C_i/ATE_i;  where ingredients of unknown toxicity pass 10 %: (100 − U)/ATE = Σ C_i/ATE_i
 *
 *   C  share by weight [%];  ATE  half-lethal dose or its estimate, all of one route [mg/kg, ppm or mg/L];  U  unknown [%]
 *
 * Ingredients known not to be poisonous are left out; so are those below 1 % unless there is reason to think of them.
 *
 * Source: UN GHS 3.1.3.6 (formula and examples of the United Nations; the 1 % rule seen in CLP Annex I 3.1.3).
 */
public final class MixtureAte {
    private static final double UNKNOWN_LIMIT_PCT = 10;
    private static final double WHOLE = 100;
    private static final double ROUNDING = 1e-9;

    public static final Figure FIGURE = Figure.declare("mixture-ate", Subject.SAFETY)
            .question("How poisonous is a mixture, reckoned from its ingredients?")
            .input(list("shares_pct", "Share by weight of each poisonous ingredient", "%", Range.PERCENT, "25,15"))
            .input(list(
                    "ates",
                    "Half-lethal dose of each, or the estimate for its class, one route",
                    "mg/kg or mg/L",
                    Range.POSITIVE,
                    "200,1800"))
            .input(number(
                            "unknown_pct",
                            "Ingredients of unknown toxicity, 1 % or more each, together",
                            "%",
                            Range.below(0, 100),
                            "20")
                    .orElse("0"))
            .output("ate", "Acute toxicity estimate of the mixture", "mg/kg or mg/L")
            .formula("ATE = 100 ÷ Σ(share ÷ ATE); above 10 % unknown (100 − unknown) ÷ Σ(share ÷ ATE)")
            .source("[ghs], 3.1.3.6, as in [un-ghs-examples]", VERIFIED)
            .validity(
                    "One route and one physical form. Shares and unknown together at most 100 %. Harmless ingredients are left out.")
            .caution("Estimated from ingredients: a test of the mixture itself, or its own label, outranks it.")
            .example("shares_pct=16,4,80 ates=1600,200,3450", "ate=1880", "[un-ghs-examples], 3.1(a)", VERIFIED)
            .example(
                    "shares_pct=26,23,40 ates=2737,4500,400",
                    "ate=873",
                    "[un-ghs-examples], 3.1(d), by mouth",
                    VERIFIED)
            .example(
                    "shares_pct=26,23,40 ates=11,19,4 unknown_pct=11",
                    "ate=6.6",
                    "[un-ghs-examples], 3.1(d), breathed in",
                    VERIFIED)
            .example("shares_pct=16,4 ates=1600,860", "ate=6825", "pattern of the ECHA guidance on CLP", COMPUTED)
            .example("shares_pct=25,15 ates=200,1800", "ate=750", "independent arithmetic", COMPUTED)
            .example("shares_pct=10 ates=50 unknown_pct=20", "ate=400", "independent arithmetic", COMPUTED)
            .example("shares_pct=10 ates=50 unknown_pct=10", "ate=500", "no correction at 10", COMPUTED)
            .example("shares_pct=5,10 ates=5,500", "ate=98.0", "categories 2 and 4 by mouth", COMPUTED)
            .example("shares_pct=40,10 ates=1100,300", "ate=1435", "independent arithmetic", COMPUTED)
            .example("shares_pct=36.1,8 ates=.05,1.5", "ate=.1375", "independent arithmetic", COMPUTED)
            .model(MixtureAte::solve);

    private MixtureAte() {}

    /** ATE of a mixture, in the unit of its ingredients' values. */
    public static double ate(double[] sharesPct, double[] ates, double unknownPct) {
        double sum = 0;
        for (int i = 0; i < sharesPct.length; i++) {
            sum += sharesPct[i] / ates[i];
        }
        return (unknownPct > UNKNOWN_LIMIT_PCT ? WHOLE - unknownPct : WHOLE) / sum;
    }

    private static Outputs solve(Given given, Working working) {
        double[] shares = given.list("shares_pct");
        double[] ates = given.list("ates");
        double unknown = given.number("unknown_pct");
        if (ates.length != shares.length) {
            throw given.refuse("ates", "as many numbers as shares_pct has (" + shares.length + ")");
        }
        double total = unknown;
        double sum = 0;
        StringBuilder terms = new StringBuilder();
        for (int i = 0; i < shares.length; i++) {
            total += shares[i];
            sum += shares[i] / ates[i];
            terms.append(i == 0 ? "" : " + ")
                    .append(Numbers.plain(shares[i]))
                    .append(" ÷ ")
                    .append(Numbers.plain(ates[i]));
        }
        if (total > WHOLE * (1 + ROUNDING)) {
            throw given.refuse(
                    "shares_pct",
                    "shares that with the unknown come to 100 % at most (these come to " + Numbers.plain(total)
                            + " %)");
        }
        working.step("sum of share over toxicity", terms.toString(), sum, "");
        boolean corrected = unknown > UNKNOWN_LIMIT_PCT;
        double counted =
                corrected ? working.line("share that counts", WHOLE - unknown, "", "100 − {}", unknown) : WHOLE;
        double ate = working.line("estimate of the mixture", ate(shares, ates, unknown), "", "{} ÷ {}", counted, sum);
        if (unknown > 0) {
            working.caution("Ingredients of unknown toxicity make up " + Numbers.plain(unknown) + " % of it.");
        }
        return new Outputs().put("ate", ate);
    }
}
