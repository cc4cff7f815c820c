package plumbrow.advice.calendar;

import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.Odds;
import plumbrow.advice.weighing.Quantities;
import plumbrow.science.figure.Numbers;

/** What a change to a program does, in sentences. */
public final class TrialWords {
    private static final double SAME_USD = 0.05;

    private TrialWords() {}

    /** The answer in one or two sentences, with its band. */
    public static String sentence(SeasonTrial trial) {
        Band margin = trial.now().margin();
        String earns = Numbers.dollars(trial.now().meanMarginUsdPerAcre(), 0) + "/ac; 80 of 100 seasons bring "
                + Numbers.dollars(margin.low(), 0) + " to " + Numbers.dollars(margin.high(), 0);
        Double loss = trial.calendar().lossPct();
        String weeds = loss == null ? "" : " Weeds take " + Numbers.fixed(loss, 1) + " % of the yield.";
        if (!trial.changed()) {
            return trial.program() + " as it is kept earns " + earns + "." + weeds;
        }
        double gain = trial.overKept().meanGainUsdPerAcre();
        String than = Math.abs(gain) < SAME_USD
                ? "So changed, " + trial.program() + " earns as much as before: "
                : "So changed, " + trial.program() + " earns " + Quantities.dollarsPerAcre(Math.abs(gain))
                        + (gain < 0 ? " less" : " more") + " than as kept, and is better in "
                        + Odds.words(trial.overKept().chanceBetter()) + " seasons: ";
        return than + earns + "." + weeds;
    }

    /** What the gates say of it, in a sentence. */
    public static String gates(SeasonTrial trial) {
        return switch (trial.standing()) {
            case BARRED -> "Barred: it may not be done so.";
            case UNKNOWN -> "Not clear: something must be looked up first.";
            case CONDITIONAL -> "Allowed on conditions.";
            case CLEAR -> "No check bars it.";
            case NOTHING_ASKED -> "No check has anything to ask of it.";
        };
    }
}
