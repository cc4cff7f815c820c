package plumbrow.app.lookback;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.lookback.AssumptionBias;
import plumbrow.advice.lookback.Expectation;
import plumbrow.advice.lookback.FieldLook;
import plumbrow.advice.lookback.Honesty;
import plumbrow.advice.lookback.LookBack;
import plumbrow.advice.weighing.Quantities;
import plumbrow.science.economics.BrierParts;
import plumbrow.science.figure.Numbers;

/** What looking back says, in sentences: the same on the desk and by command. */
public final class LookBackWords {
    /** What is assumed of a program that did not grow. */
    public static final String NOT_OBSERVED =
            "What another program would have brought was not observed. Told is what it would have earned with the same bushels and price"
                    + " at its own costs, and the yield at which it would have been equal.";

    private LookBackWords() {}

    /** The answer in one sentence. */
    public static String answer(LookBack back) {
        List<FieldLook> whole = back.fields().stream().filter(FieldLook::whole).toList();
        if (back.fields().isEmpty()) {
            return "Nothing was harvested yet.";
        }
        if (whole.isEmpty()) {
            return count(back.fields().size(), "field") + " harvested; none can be held against what was expected yet.";
        }
        double earned = 0;
        double expected = 0;
        for (FieldLook look : whole) {
            Double margin = look.marginUsdPerAcre();
            Expectation then = look.expected();
            if (margin != null && then != null) {
                earned += margin * look.acres();
                expected += then.meanMarginUsdPerAcre() * look.acres();
            }
        }
        double gap = earned - expected;
        return count(whole.size(), "field") + " of " + count(back.honesty().seasons(), "season") + " earned "
                + Numbers.dollars(earned, 0) + " over these inputs, " + Numbers.dollars(Math.abs(gap), 0)
                + (gap < 0 ? " less" : " more") + " than was expected at the choice.";
    }

    /** A field in sentences. */
    public static List<String> sentences(FieldLook look) {
        List<String> said = new ArrayList<>();
        Double margin = look.marginUsdPerAcre();
        Double price = look.priceUsdPerBushel();
        Expectation expected = look.expected();
        if (margin != null && price != null) {
            said.add(look.program() + " earned " + Quantities.dollarsPerAcre(margin) + " with "
                    + Numbers.fixed(look.yieldBuPerAcre(), 1) + " bu/ac" + " at " + Numbers.dollars(price, 2) + "/bu.");
        }
        if (expected != null) {
            said.add("Expected were " + Quantities.dollarsPerAcre(expected.meanMarginUsdPerAcre())
                    + ", in 80 of 100 simulated seasons between "
                    + Quantities.drawnDollars(expected.margin().low())
                    + " and " + Quantities.drawnDollars(expected.margin().high()) + "; "
                    + Numbers.fixed(expected.meanYieldBuPerAcre(), 1) + " bu/ac" + " at "
                    + Numbers.dollars(expected.meanPriceUsdPerBushel(), 2) + "/bu."
                    + (margin == null
                            ? ""
                            : margin < expected.margin().low()
                                    ? " It came out below that range."
                                    : margin > expected.margin().high() ? " It came out above that range." : ""));
        } else if (look.expectedMeanUsdPerAcre() != null) {
            said.add("Expected were " + Quantities.dollarsPerAcre(look.expectedMeanUsdPerAcre()) + " on average.");
        }
        FieldLook.Other other = look.other();
        if (other != null && margin != null) {
            said.add("Next was " + other.program() + ": with the same bushels it would have earned "
                    + Quantities.dollarsPerAcre(other.sameBushelsUsdPerAcre()) + ", as much as this with "
                    + Numbers.fixed(other.equalYieldBuPerAcre(), 1) + " bu/ac" + "; the weighing expected it to yield "
                    + Numbers.fixed(Math.abs(other.expectedYieldDifference()), 1)
                    + (other.expectedYieldDifference() < 0 ? " bu/ac less." : " bu/ac more."));
        }
        look.strips()
                .forEach(strip -> said.add("A strip of " + strip.program() + " brought "
                        + Numbers.fixed(strip.yieldBuPerAcre(), 1) + " bu/ac" + " and "
                        + Quantities.dollarsPerAcre(strip.marginUsdPerAcre())
                        + ": " + look.program() + (strip.ahead() ? " was ahead" : " was not ahead")
                        + (strip.statedAhead() == null
                                ? "."
                                : ", stated in " + of100(strip.statedAhead()) + " of 100.")));
        if (!look.lacks().isEmpty()) {
            said.add(look.lacks());
        }
        return said;
    }

    /** How honest odds and ranges were, in sentences. */
    public static List<String> honest(Honesty honesty) {
        List<String> said = new ArrayList<>();
        BrierParts odds = honesty.odds().parts();
        said.add(
                odds == null
                        ? "No odds between two programs can be held against what came: that takes a strip of the other program, harvested"
                                + " by itself."
                        : "Odds between programs: " + count(honesty.odds().cases(), "case") + " with a strip beside, "
                                + points(honesty.odds().meanGap()) + " points between stated and come, Brier score "
                                + parts(odds) + ".");
        BrierParts levels = honesty.levels().parts();
        if (levels != null) {
            said.add("Margins above the levels that 90, 50 and 10 of 100 were to reach: "
                    + points(honesty.levels().meanGap()) + " points between stated and come over "
                    + count(honesty.levels().cases() / 3, "field") + ", Brier score " + parts(levels) + ".");
        }
        honesty.coverage()
                .forEach(one -> said.add("Ranges of 80 of 100 for the " + one.what() + " held " + one.inside()
                        + " of " + one.cases() + " times (" + of100(one.low()) + " to " + of100(one.high())
                        + " of 100 would come, were fields independent; those of one season are not)."));
        if (honesty.fields() < FEW) {
            said.add("So few fields tell little: honest odds may look like this.");
        }
        return said;
    }

    private static final int FEW = 30;

    private static String parts(BrierParts parts) {
        return Numbers.fixed(parts.brier(), 3) + " = reliability " + Numbers.fixed(parts.reliability(), 3)
                + " − resolution " + Numbers.fixed(parts.resolution(), 3) + " + uncertainty "
                + Numbers.fixed(parts.uncertainty(), 3);
    }

    /** By how much an assumption ran high or low, in a sentence. */
    public static String bias(AssumptionBias bias) {
        String what = capital(bias.of().word()) + " of " + bias.crop().word();
        String over = "came " + percent(Math.abs(bias.mean())) + (bias.mean() < 0 ? " below" : " above")
                + " what was expected, over " + count(bias.fields(), "field") + " of "
                + count(bias.seasons(), "season");
        Double error = bias.standardError();
        Double low = bias.low();
        Double high = bias.high();
        if (error == null || low == null || high == null) {
            return what + " " + over + ". One season can't tell a habit from a year.";
        }
        String range = "standard error " + percent(error) + ", 80 % interval " + signed(low) + " to " + signed(high);
        return what + " " + over + " (" + range + "). "
                + (bias.found()
                        ? "Own assumptions run " + (bias.mean() < 0 ? "high" : "low") + "."
                        : "That may be chance.");
    }

    /** What is offered as next year's start. */
    public static String offer(AssumptionBias bias) {
        return "Next year’s start: " + bias.of().word() + " of " + bias.crop().word() + " times "
                + Numbers.fixed(bias.offered(), 3)
                + ", drawn towards no change by how little is known.";
    }

    private static String points(double share) {
        return Numbers.fixed(share * 100, 1);
    }

    private static String of100(double share) {
        return Numbers.fixed(share * 100, 0);
    }

    private static String percent(double share) {
        return Numbers.fixed(share * 100, 1) + " %";
    }

    private static String signed(double share) {
        return (share > 0 ? "+" : "") + Numbers.fixed(share * 100, 1) + " %";
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
