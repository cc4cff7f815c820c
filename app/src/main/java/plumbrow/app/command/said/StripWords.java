package plumbrow.app.command.said;

import plumbrow.advice.strips.StripAnswer;
import plumbrow.advice.strips.StripLayout;
import plumbrow.science.figure.Numbers;

/** Strip trials in words. */
public final class StripWords {
    private static final double OF_100 = 100;

    private StripWords() {}

    public static String of(StripLayout layout) {
        Paper paper = new Paper();
        paper.heading("From one side of the field to the other, a strip each:");
        for (int b = 0; b < layout.blocks().size(); b++) {
            paper.prose(
                    "  block " + (b + 1) + "  ",
                    String.join(" | ", layout.blocks().get(b)));
        }
        paper.gap();
        Double chance = layout.chance();
        if (chance != null) {
            Long needed = layout.needed();
            paper.prose("A true gain of that size would be shown in " + ofHundred(chance) + " such trials; "
                    + (needed == null
                            ? "no number of blocks that a field holds shows it in 80 of 100."
                            : needed + " blocks show it in 80 of 100."));
        } else {
            paper.prose(
                    "Tell the gain that matters and what strips vary (--gain, --spread), and the chance of showing it is"
                            + " said.");
        }
        paper.prose("The order was drawn by lot, number " + layout.seed()
                + ". Keep it: an order of choice lets a slope of the ground pass for a treatment. Make each strip wider than"
                + " the combine's head, and leave out turn rows and the first and last 50 ft or more.");
        return paper.text();
    }

    public static String of(StripAnswer answer) {
        Paper paper = new Paper();
        for (StripAnswer.Compared compared : answer.compared()) {
            paper.heading("'" + compared.treatment() + "' against '" + answer.check() + "': "
                    + signed(compared.gainBuPerAcre()) + " bu/ac"
                    + (compared.shown() ? "" : ", which this trial does not show"));
            paper.prose(
                    "  ",
                    "What fits the strips lies between " + signed(compared.lowBuPerAcre()) + " and "
                            + signed(compared.highBuPerAcre()) + " bu/ac (" + Numbers.read(OF_100 * answer.confidence())
                            + " %). A gain so far from nothing comes by chance in " + ofHundred(compared.p())
                            + " trials of treatments that do not differ.");
            Double breakEven = compared.breakEvenBuPerAcre();
            Double pays = compared.chanceOfPaying();
            if (breakEven != null && pays != null) {
                paper.prose(
                        "  ",
                        "It pays from " + signed(breakEven) + " bu/ac on: " + ofHundred(pays)
                                + " by this trial alone, nothing else being known.");
            } else {
                paper.prose(
                        "  ", "Whether it pays is unknown: tell --price and --cost '" + compared.treatment() + "=…'.");
            }
            StripAnswer.ByPlace near = compared.byPlace();
            if (near != null) {
                Double also = near.chanceOfPaying();
                paper.prose(
                        "  ",
                        "With the ground's slow changes taken out: " + signed(near.gainBuPerAcre())
                                + " bu/ac, give or take "
                                + Numbers.fixed(near.standardErrorBuPerAcre(), 1)
                                + (also == null ? "." : "; pays: " + ofHundred(also) + ".")
                                + " Where the two disagree, look at the map before deciding.");
            }
        }
        paper.heading("The strips");
        TextTable table = TextTable.empty()
                .words("treatment")
                .numbers("strips", "")
                .numbers("mean", "bu/ac")
                .row(
                        answer.check(),
                        Integer.toString(answer.checkStrips()),
                        Numbers.fixed(answer.checkMeanBuPerAcre(), 1));
        answer.compared()
                .forEach(each -> table.row(
                        each.treatment(), Integer.toString(each.strips()), Numbers.fixed(each.meanBuPerAcre(), 1)));
        paper.table(table);
        paper.prose(
                "  ",
                "Strips of one treatment vary by " + Numbers.fixed(answer.stripSdBuPerAcre(), 1)
                        + " bu/ac beyond their block (" + Numbers.fixed(answer.cvPct(), 1) + " % of the mean).");
        paper.heading("Mind");
        answer.doubts().forEach(doubt -> paper.prose("  ", doubt));
        paper.prose("  ", "A difference that is not shown is not a difference that is not there.");
        return paper.text();
    }

    private static String signed(double value) {
        String fixed = Numbers.fixed(Math.abs(value), 1);
        return fixed.equals("0.0") ? "0" : (value < 0 ? "−" : "+") + fixed;
    }

    private static String ofHundred(double chance) {
        double of = OF_100 * chance;
        return of > 99 ? "more than 99 of 100" : of < 1 ? "fewer than 1 of 100" : Math.round(of) + " of 100";
    }
}
