package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.Comparator;
import plumbrow.science.chance.SortedDraws;

/**
 * From which count on a pass should be made, found on the draws: with the draws sorted by what is counted, highest first,
 *
 *   best = argmax over n of Σ of the first n gains
 *
 * where a gain is the margin of a draw with the pass above that without it. The threshold is the lowest count among these n.
 *
 * @param threshold 0 where making it in any case earns most, infinite where never making it does [as counted]
 * @param usdPerAcre mean margin at that threshold above that at the entered one [$/ac], 0 or more
 * @param alwaysUsdPerAcre the same of making it in any case [$/ac]
 * @param neverUsdPerAcre the same of never making it [$/ac]
 */
record BestThreshold(double threshold, double usdPerAcre, double alwaysUsdPerAcre, double neverUsdPerAcre) {
    /** Less than this the entered threshold is as good as any [$/ac]: common practice, no source. */
    private static final double AS_GOOD = 0.5;

    /**
     * The best threshold of a pass of a program, its other passes as they are.
     *
     * @param trigger its place among the triggers of the program
     * @param columns the draws of each input, by its place
     */
    static BestThreshold of(
            FieldModel model, SeasonLoads loads, ProgramModel program, int trigger, double[][] columns) {
        int draws = columns[model.yield()].length;
        Kernel kernel = new Kernel(model, loads);
        double[] always = margins(kernel, program.withThreshold(trigger, 0), columns, draws);
        double[] never = margins(kernel, program.withThreshold(trigger, Double.POSITIVE_INFINITY), columns, draws);
        double[] gain = FieldWeighing.difference(always, never);
        ProgramModel.Trigger pass = program.triggers().get(trigger);
        double[] counts = new double[draws];
        Arrays.setAll(counts, i -> pass.count(columns, i));
        Integer[] order = new Integer[draws];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> -counts[i]));
        double entered = 0;
        double sum = 0;
        double most = 0;
        double best = Double.POSITIVE_INFINITY;
        for (int n = 0; n < draws; n++) {
            double count = counts[order[n]];
            sum += gain[order[n]];
            entered += count >= pass.from() ? gain[order[n]] : 0;
            boolean last = n == draws - 1 || counts[order[n + 1]] < count; // equal counts go together
            if (last && sum > most) {
                most = sum;
                best = n == draws - 1 ? 0 : count;
            }
        }
        double all = SortedDraws.mean(gain);
        return new BestThreshold(best, Math.max(0, (most - entered) / draws), all - entered / draws, -entered / draws);
    }

    private static double[] margins(Kernel kernel, ProgramModel program, double[][] columns, int draws) {
        double[] margins = new double[draws];
        kernel.run(program, columns, new double[0], margins);
        return margins;
    }

    String says(String entered, String unit) {
        if (usdPerAcre < AS_GOOD) {
            return "In these seasons no other threshold earns more than " + Quantities.dollarsPerAcre(AS_GOOD)
                    + " above " + entered + ".";
        }
        String gain = Quantities.dollarsPerAcre(usdPerAcre) + " more on average than " + entered;
        if (threshold == 0) {
            return "In these seasons making it in any case earns " + gain + ".";
        }
        return Double.isInfinite(threshold)
                ? "In these seasons never making it earns " + gain + "."
                : "In these seasons " + Quantities.text(threshold, unit) + " would be the best threshold, " + gain
                        + ". A published threshold guards against more than this field and price: do not go below it for that.";
    }
}
