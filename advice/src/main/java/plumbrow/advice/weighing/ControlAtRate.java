package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.assumptions.SiteSpread;
import plumbrow.advice.program.Pass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.weighing.ProgramModel.Cut;
import plumbrow.advice.weighing.ProgramModel.Term;

/**
 * Control at the rate of a pass from the rates for which it is known.
 *
 *   at a known rate           that row
 *   between two               straight line between them
 *   below the lowest          in proportion to the rate, from nothing at zero
 *   above the highest         the highest row: more product is not credited with more
 *
 * Straight lines understate a curve that rises early and levels off; every step off a known rate is said in a caution.
 * Source: common practice, no source; enter a row for the rate that is weighed.
 */
final class ControlAtRate {
    private static final double SAME = 1e-9;

    private ControlAtRate() {}

    /**
     * @param spread how control entered as one number differs from trial to trial
     * @param trigger which of the program's triggers the pass waits for; −1 for none
     */
    static Cut cut(
            Pass pass,
            List<Control> known,
            Function<Distribution, SiteSpread.Drawn> spread,
            String field,
            Variables variables,
            List<String> cautions,
            int trigger) {
        Amount rate = Objects.requireNonNull(pass.rate());
        List<Control> rows = known.stream()
                .filter(row -> row.rate().comparableWith(rate))
                .sorted(Comparator.comparingDouble(row -> row.rate().inBase()))
                .toList();
        if (rows.isEmpty()) {
            throw new SeasonGapException("Control of " + known.get(0).pest() + " by '" + pass.product()
                    + "' is given per " + known.get(0).rate().unit().symbol() + ", but a pass uses "
                    + rate.text() + "; give both in the same kind of unit.");
        }
        double share = pass.sharePct() / 100;
        List<Term> terms = new ArrayList<>();
        double asked = rate.inBase();
        int above = 0;
        while (above < rows.size() && rows.get(above).rate().inBase() < asked * (1 - SAME)) {
            above++;
        }
        if (above == rows.size()) {
            Control top = rows.get(above - 1);
            terms.add(new Term(place(top, spread, field, variables), share));
            say(cautions, pass, top, "no more than at " + top.rate().text());
        } else if (Math.abs(rows.get(above).rate().inBase() - asked) <= asked * SAME) {
            terms.add(new Term(place(rows.get(above), spread, field, variables), share));
        } else if (above == 0) {
            Control low = rows.get(0);
            terms.add(new Term(
                    place(low, spread, field, variables),
                    share * asked / low.rate().inBase()));
            say(cautions, pass, low, "in proportion to that at " + low.rate().text());
        } else {
            Control low = rows.get(above - 1);
            Control high = rows.get(above);
            double part = (asked - low.rate().inBase())
                    / (high.rate().inBase() - low.rate().inBase());
            terms.add(new Term(place(low, spread, field, variables), share * (1 - part)));
            terms.add(new Term(place(high, spread, field, variables), share * part));
            say(
                    cautions,
                    pass,
                    low,
                    "on the straight line from " + low.rate().text() + " to "
                            + high.rate().text());
        }
        return new Cut(pass.product() + " at " + rate.text() + "/ac", terms, trigger);
    }

    /** Draws go by product and pest, not by rate: where it works well at one rate it does at another. */
    private static int place(
            Control control, Function<Distribution, SiteSpread.Drawn> spread, String field, Variables variables) {
        SiteSpread.Drawn drawn = spread.apply(control.share());
        String what = control.product() + " on " + control.pest() + " at "
                + control.rate().text();
        return variables.place(
                "control: " + what,
                "control of " + control.pest() + " by " + control.product() + " at "
                        + control.rate().text() + "/ac",
                "share",
                drawn.distribution(),
                drawn.source(control.source()),
                drawn.stream("control " + control.product() + " on " + control.pest(), field),
                DoubtKind.YEAR);
    }

    private static void say(List<String> cautions, Pass pass, Control row, String how) {
        String sentence = "Control of " + row.pest() + " by " + row.product() + " at "
                + Objects.requireNonNull(pass.rate()).text() + "/ac is not in the control sheet: counted " + how + ".";
        if (!cautions.contains(sentence)) {
            cautions.add(sentence);
        }
    }
}
