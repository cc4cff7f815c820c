package plumbrow.advice.strips;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Numbers;
import plumbrow.science.trials.Contrast;
import plumbrow.science.trials.ManyMeans;
import plumbrow.science.trials.MixedModel;
import plumbrow.science.trials.SpatialModel;

/**
 * Compares the treatments of a trial of strips: yields = treatment + block + error, so that a pair of strips gives the paired t
 * and complete blocks the analysis of variance, and a lost strip costs only itself.
 *
 * <p>Beside it, where places are known, the gain with errors that go together by nearness; it is shown, never put in the place of
 * the other, for the order of strips was drawn by lot for the blocks.
 */
public final class StripAnalysis {
    private static final int WEAK_BLOCKS = 4;
    private static final int FEWEST_BY_PLACE = 12;
    /** A strip this many of its own standard deviations off is looked at again; common practice. */
    private static final double FAR = 3;

    /**
     * What gains are worth.
     *
     * @param priceUsdPerBushel of the grain [$/bu]; empty where unknown
     * @param costUsdPerAcre what each treatment costs more than the check [$/ac]; those not named are unknown
     */
    public record Stakes(OptionalDouble priceUsdPerBushel, Map<String, Double> costUsdPerAcre) {
        /**
         * @throws IllegalArgumentException with a sentence, where the price is not above nothing
         */
        public Stakes {
            costUsdPerAcre = Map.copyOf(costUsdPerAcre);
            if (priceUsdPerBushel.isPresent() && !(priceUsdPerBushel.getAsDouble() > 0)) {
                throw new IllegalArgumentException(
                        "The price is " + priceUsdPerBushel.getAsDouble() + "; expected dollars a bushel above 0.");
            }
        }

        @Nullable
        Double breakEven(String treatment) {
            Double cost = costUsdPerAcre.get(treatment);
            return cost == null || priceUsdPerBushel.isEmpty()
                    ? null
                    : Double.valueOf(cost / priceUsdPerBushel.getAsDouble());
        }
    }

    private StripAnalysis() {}

    /**
     * What the trial says.
     *
     * @param confidence of the intervals, .5 to .999
     * @throws IllegalArgumentException with a sentence, where a cost is of no treatment of the trial
     */
    public static StripAnswer of(StripTrial trial, Stakes stakes, double confidence) {
        List<String> treatments = trial.treatments();
        for (String priced : stakes.costUsdPerAcre().keySet()) {
            if (!treatments.contains(priced)) {
                throw new IllegalArgumentException("A cost is told of '" + priced
                        + "', which no strip has; the treatments are " + String.join(", ", treatments) + ".");
            }
        }
        List<Strip> strips = trial.strips();
        List<String> blocks = trial.blocks();
        int t = treatments.size();
        double[] yields = strips.stream().mapToDouble(Strip::yieldBuPerAcre).toArray();
        double[][] design = new double[strips.size()][t + blocks.size() - 1];
        for (int i = 0; i < strips.size(); i++) {
            design[i][treatments.indexOf(strips.get(i).treatment())] = 1;
            int block = blocks.indexOf(strips.get(i).block());
            for (int b = 1; b < blocks.size(); b++) {
                // deviations that add up to nothing over blocks: a treatment's mean is that of an average block
                design[i][t + b - 1] = block == b ? 1 : block == 0 ? -1 : 0;
            }
        }
        MixedModel fit = MixedModel.fit(yields, design, List.of())
                .orElseThrow(() -> new IllegalArgumentException(
                        "Strips of one treatment and block agree to the last digit, so nothing tells chance from treatment;"
                                + " expected yields as weighed."));
        double sd = fit.standardDeviations()[0];
        double mean = Arrays.stream(yields).average().orElseThrow();
        double df = (double) yields.length - design[0].length;
        double dunnett = ManyMeans.againstControl(confidence, t - 1, df);
        Optional<SpatialModel> place = byPlace(trial, yields, treatments);
        List<StripAnswer.Compared> compared = new ArrayList<>();
        for (int k = 1; k < t; k++) {
            String treatment = treatments.get(k);
            Contrast gain = fit.contrast(against(design[0].length, k));
            Double breakEven = stakes.breakEven(treatment);
            int against = k;
            compared.add(new StripAnswer.Compared(
                    treatment,
                    strips(trial, treatment),
                    fit.means()[k],
                    gain.estimate(),
                    gain.standardError(),
                    gain.estimate() - gain.halfWidth(confidence),
                    gain.estimate() + gain.halfWidth(confidence),
                    gain.bothTails(),
                    Math.abs(gain.t()) > dunnett,
                    breakEven,
                    breakEven == null ? null : Double.valueOf(gain.chanceAbove(breakEven)),
                    place.map(of -> near(of.contrast(against(t, against)), breakEven))
                            .orElse(null)));
        }
        return new StripAnswer(
                trial.check(),
                fit.means()[0],
                strips(trial, trial.check()),
                blocks.size(),
                sd,
                100 * sd / mean,
                df,
                confidence,
                List.copyOf(compared),
                doubts(trial, fit.residuals(), sd, df));
    }

    private static StripAnswer.ByPlace near(Contrast gain, @Nullable Double breakEven) {
        return new StripAnswer.ByPlace(
                gain.estimate(),
                gain.standardError(),
                breakEven == null ? null : Double.valueOf(gain.chanceAbove(breakEven)));
    }

    private static Optional<SpatialModel> byPlace(StripTrial trial, double[] yields, List<String> treatments) {
        if (!trial.placed() || yields.length < FEWEST_BY_PLACE) {
            return Optional.empty();
        }
        double[][] design = new double[yields.length][treatments.size()];
        double[] across = new double[yields.length];
        for (int i = 0; i < yields.length; i++) {
            Strip strip = trial.strips().get(i);
            design[i][treatments.indexOf(strip.treatment())] = 1;
            Double at = strip.place();
            across[i] = at == null ? 0 : at;
        }
        return SpatialModel.fit(yields, design, across, new double[yields.length], SpatialModel.Shape.SPHERICAL);
    }

    private static double[] against(int columns, int treatment) {
        double[] weights = new double[columns];
        weights[0] = -1;
        weights[treatment] = 1;
        return weights;
    }

    private static int strips(StripTrial trial, String treatment) {
        return (int) trial.strips().stream()
                .filter(strip -> strip.treatment().equals(treatment))
                .count();
    }

    private static List<String> doubts(StripTrial trial, double[] residuals, double sd, double df) {
        List<String> doubts = new ArrayList<>();
        int blocks = trial.blocks().size();
        if (blocks == 1) {
            doubts.add(
                    "All strips are told as one block, so a slope of the ground counts as chance or, if treatments lie"
                            + " sorted, as treatment.");
        } else if (blocks < WEAK_BLOCKS) {
            doubts.add("Weak: " + blocks + " blocks. Four to six, drawn by lot side by side, make a trial.");
        }
        for (int i = 0; i < residuals.length; i++) {
            double off = residuals[i] / (sd * Math.sqrt(df / residuals.length));
            if (Math.abs(off) > FAR) {
                Strip strip = trial.strips().get(i);
                doubts.add("The strip of '" + strip.treatment() + "' in block " + strip.block() + " ("
                        + Numbers.read(strip.yieldBuPerAcre()) + " bu/ac) lies " + Numbers.fixed(Math.abs(off), 1)
                        + " standard deviations off; look at its weight and what happened there.");
            }
        }
        if (sorted(trial)) {
            doubts.add("The treatments lie in the same order in every block; where that order was not drawn by lot, a"
                    + " neighbour or a slope can pass for a treatment.");
        }
        doubts.add(
                "One season of one field. Another field or year differs by more than this error: several sites together"
                        + " say what to expect there.");
        return List.copyOf(doubts);
    }

    /** Whether strips with places lie in one order in each of three blocks or more. */
    private static boolean sorted(StripTrial trial) {
        if (!trial.placed() || trial.blocks().size() < 3) {
            return false;
        }
        return trial.blocks().stream()
                        .map(block -> trial.strips().stream()
                                .filter(strip -> strip.block().equals(block))
                                .sorted(Comparator.comparing(
                                        Strip::place, Comparator.nullsLast(Comparator.naturalOrder())))
                                .map(Strip::treatment)
                                .toList())
                        .distinct()
                        .count()
                == 1;
    }
}
