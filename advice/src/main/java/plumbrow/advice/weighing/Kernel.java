package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import plumbrow.advice.weighing.CourseModel.Cut;
import plumbrow.advice.weighing.CourseModel.Injury;
import plumbrow.advice.weighing.CourseModel.Insect;
import plumbrow.advice.weighing.CourseModel.Lot;
import plumbrow.advice.weighing.CourseModel.Mode;
import plumbrow.advice.weighing.CourseModel.Term;
import plumbrow.advice.weighing.CourseModel.Weed;
import plumbrow.science.weeds.HyperbolicLoss;

/**
 * Yield and margin of a course, draw by draw: the arithmetic of the weighing, and the only place it stands.
 *
 *   margin = (price·share − handling)·yield − cost·costShare
 *   yield  = Σ lots w·{ attainable·stand·Π insects(1 − loss)·(1 − Lweed)·Π(1 − Linjury)·(1 − Ldelay) + gain − lag·years }
 *
 *   insect loss  b·P·left·[ u·(1 − n) + (1 − u)·(1 − T) ], at most 1
 *                b loss per unit, P untreated pressure (at most its cap), left = Π(1 − cut) over the passes,
 *                u share of plants without the trait, n what their neighbours make up,
 *                T = 1 − Π(1 − mode) over the trait groups, a mode counting its control where it works
 *   weed loss    hyperbola of Σ I·D·left, with the largest A of the weeds that stand
 *   delay loss   per day × days, at most 1
 *
 * <p>Plain arrays in blocks that stay in the cache, nothing made per draw. A yield never falls below 0. Which control is
 * independent of which is an upper bound on what they do together (reference: combined tactics).
 */
final class Kernel {
    private static final int BLOCK = 512;

    private final FieldModel model;
    private final double[] common = new double[BLOCK];
    private final double[] left = new double[BLOCK];
    private final double[] through = new double[BLOCK];
    private final double[] lotYield = new double[BLOCK];
    private final double[] sum = new double[BLOCK];
    private final double[][] hits;

    Kernel(FieldModel model) {
        this.model = model;
        int insects =
                model.courses().isEmpty() ? 0 : model.courses().get(0).insects().size();
        this.hits = new double[insects][BLOCK];
    }

    /**
     * Fills in yield [bu/ac] and margin [$/ac] of a course for every draw.
     *
     * @param columns the draws of each input, by its place
     * @param yields as long as the columns, or empty where the yield is not asked for
     */
    void run(CourseModel course, double[][] columns, double[] yields, double[] margins) {
        for (int from = 0; from < margins.length; from += BLOCK) {
            int size = Math.min(BLOCK, margins.length - from);
            block(course, columns, from, size);
            double cost = course.costUsdPerAcre() * model.farm().costShare();
            double share = model.farm().cropShare();
            double[] price = columns[model.price()];
            double[] handling = columns[model.handling()];
            for (int i = 0; i < size; i++) {
                double yield = Math.max(0, sum[i]);
                sum[i] = yield;
                margins[from + i] = (price[from + i] * share - handling[from + i]) * yield - cost;
            }
            if (yields.length > 0) {
                System.arraycopy(sum, 0, yields, from, size);
            }
        }
    }

    private void block(CourseModel course, double[][] columns, int from, int size) {
        System.arraycopy(columns[model.yield()], from, common, 0, size);
        weeds(course.weeds(), columns, from, size);
        for (Injury injury : course.injuries()) {
            double[] loss = columns[injury.loss()];
            double share = injury.share() / 100;
            for (int i = 0; i < size; i++) {
                common[i] *= 1 - share * loss[from + i];
            }
        }
        if (course.delayDays() > 0) {
            double[] perDay = columns[model.delayLoss()];
            double days = course.delayDays() / 100;
            for (int i = 0; i < size; i++) {
                common[i] *= 1 - Math.min(1, perDay[from + i] * days);
            }
        }
        for (int j = 0; j < course.insects().size(); j++) {
            hit(course.insects().get(j), columns, from, size, hits[j]);
        }
        Arrays.fill(sum, 0, size, 0);
        for (Lot lot : course.lots()) {
            lot(lot, course.insects(), columns, from, size);
        }
    }

    /** What an insect would cost plants without a trait: b·P·left, as a share of yield. */
    private void hit(Insect insect, double[][] columns, int from, int size, double[] hit) {
        left(insect.cuts(), columns, from, size);
        double[] pressure = columns[insect.pressure()];
        double[] loss = columns[insect.loss()];
        double cap = insect.cap();
        for (int i = 0; i < size; i++) {
            hit[i] = loss[from + i] / 100 * Math.min(cap, pressure[from + i]) * left[i];
        }
    }

    /** The share that all passes together leave: Π(1 − cut). */
    private void left(List<Cut> cuts, double[][] columns, int from, int size) {
        Arrays.fill(left, 0, size, 1);
        for (Cut cut : cuts) {
            Arrays.fill(through, 0, size, 1);
            for (Term term : cut.terms()) {
                double[] control = columns[term.control()];
                double weight = term.weight();
                for (int i = 0; i < size; i++) {
                    through[i] -= weight * control[from + i];
                }
            }
            for (int i = 0; i < size; i++) {
                left[i] *= Math.max(0, through[i]);
            }
        }
    }

    private void weeds(List<Weed> weeds, double[][] columns, int from, int size) {
        if (weeds.isEmpty()) {
            return;
        }
        double most = 0;
        Arrays.fill(sum, 0, size, 0);
        for (Weed weed : weeds) {
            left(weed.cuts(), columns, from, size);
            double[] density = columns[weed.density()];
            double first = weed.firstPlantLossPct();
            for (int i = 0; i < size; i++) {
                sum[i] += first * density[from + i] * left[i];
            }
            most = Math.max(most, weed.mostLossPct());
        }
        for (int i = 0; i < size; i++) {
            common[i] *= 1 - HyperbolicLoss.ofLoad(sum[i], most) / 100;
        }
    }

    private void lot(Lot lot, List<Insect> insects, double[][] columns, int from, int size) {
        double[] stand = columns[lot.stand()];
        for (int i = 0; i < size; i++) {
            lotYield[i] = common[i] * stand[from + i] / 100;
        }
        for (int j = 0; j < insects.size(); j++) {
            List<Mode> modes = lot.modes().get(j);
            double bare = modes.isEmpty() ? 1 : lot.unprotected();
            double refuge = bare * (1 - (modes.isEmpty() ? 0 : insects.get(j).neighbourShare()));
            through(modes, columns, from, size);
            double[] hit = hits[j];
            for (int i = 0; i < size; i++) {
                lotYield[i] *= 1 - Math.min(1, hit[i] * (refuge + (1 - bare) * through[i]));
            }
        }
        double[] gain = columns[lot.gain()];
        double[] lag = columns[model.geneticLag()];
        double years = lot.yearsBehind();
        double share = lot.share();
        for (int i = 0; i < size; i++) {
            sum[i] += share * (lotYield[i] + gain[from + i] - years * lag[from + i]);
        }
    }

    /** The share of injury that the trait groups let through: Π(1 − mode). */
    private void through(List<Mode> modes, double[][] columns, int from, int size) {
        Arrays.fill(through, 0, size, 1);
        for (Mode mode : modes) {
            double[] control = columns[mode.control()];
            if (mode.works() < 0) {
                for (int i = 0; i < size; i++) {
                    through[i] *= 1 - control[from + i];
                }
            } else {
                double[] works = columns[mode.works()];
                double failed = mode.ifFailed();
                for (int i = 0; i < size; i++) {
                    double w = works[from + i];
                    through[i] *= 1 - (w * control[from + i] + (1 - w) * failed);
                }
            }
        }
    }
}
