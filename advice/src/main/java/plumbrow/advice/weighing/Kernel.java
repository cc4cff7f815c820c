package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import plumbrow.advice.weighing.ProgramModel.Cut;
import plumbrow.advice.weighing.ProgramModel.Injury;
import plumbrow.advice.weighing.ProgramModel.Insect;
import plumbrow.advice.weighing.ProgramModel.Lot;
import plumbrow.advice.weighing.ProgramModel.Mode;
import plumbrow.advice.weighing.ProgramModel.Term;
import plumbrow.advice.weighing.ProgramModel.Trigger;
import plumbrow.advice.weighing.ProgramModel.Weed;
import plumbrow.science.weeds.HyperbolicLoss;

/**
 * Yield and margin of a program, draw by draw: the arithmetic of the weighing, and the only place it stands.
 *
 *   margin = (price·crop share − handling·hauling share − drying·drying share)·yield − cost − later
 *   yield  = Σ lots w·{ attainable·plants·stand·Π insects(1 − loss)·(1 − Lweed)·Π(1 − Linjury)·(1 − Ldelay) + gain − lag·years }
 *
 *   plants       share of the yield that the lot's final stand keeps: seeds, germination and emergence, then the crop's
 *                response ({@link LotStand}); stand is what a seed keeps besides
 *   cost         the operator's shares of the cost lines
 *   insect loss  b·P·left·[ u·(1 − n) + (1 − u)·(1 − T) ], at most 1
 *                b loss per unit, P untreated pressure (at most its cap), left = Π(1 − cut) over the passes,
 *                u share of plants without the trait, n what their neighbours make up,
 *                T = 1 − Π(1 − mode) over the trait groups, a mode counting its control where it works
 *   weed loss    hyperbola of Σ I·D·left, with the largest A of the weeds that stand; where the season of weeds is followed,
 *                of Σ I·D·(load of one plant by the season, as a factor on I)
 *   delay loss   per day × days, at most 1
 *
 * <p>What a pass that waits for scouting controls, injures, delays and costs is times 1 or 0, whether it is made in the draw.
 *
 * <p>Plain arrays, nothing made per draw. All programs are worked over one block of draws before the next, so that the
 * block stays in the cache. Arrays of the kernel's own are as long as the draws and counted by the same index: only then
 * does the compiler of Java 17 turn a loop into vector instructions, for it can't tell an array at another index from
 * the same array. A yield never falls below 0. Which control is independent of which is an upper bound on what they do
 * together (reference: combined tactics).
 */
final class Kernel {
    private static final int BLOCK = 512;
    private static final double SHARE_PER_PCT = 0.01;
    private static final double[] NOT_ASKED = {};

    private final FieldModel model;
    private SeasonLoads loads;
    private double[] common = NOT_ASKED;
    private double[] through = NOT_ASKED;
    private double[] lotYield = NOT_ASKED;
    private double[] yield = NOT_ASKED;
    private double[][] untreated = {};
    private double[][] treated = {};
    private double[][] hits = {};
    private double[][] made = {};
    private double[][] kept = {};
    private List<LotStand> stands = List.of();

    Kernel(FieldModel model) {
        this(model, SeasonLoads.NONE);
    }

    /** @param loads of the programs whose weeds are followed through the season, on the draws that will be run */
    Kernel(FieldModel model, SeasonLoads loads) {
        this.model = model;
        this.loads = loads;
    }

    /** The same kernel with other loads. */
    Kernel with(SeasonLoads others) {
        loads = others;
        return this;
    }

    /**
     * Fills in yield [bu/ac] and margin [$/ac] of a program for every draw.
     *
     * @param columns the draws of each input, by its place
     * @param yields as long as the columns, or empty where the yield is not asked for
     */
    void run(ProgramModel program, double[][] columns, double[] yields, double[] margins) {
        run(List.of(program), columns, new double[][] {yields}, new double[][] {margins});
    }

    /** The same for several programs; yields and margins have a row for each. */
    void run(List<ProgramModel> programs, double[][] columns, double[][] yields, double[][] margins) {
        int draws = columns[model.yield()].length;
        makeRoom(draws);
        stands(programs);
        for (int from = 0; from < draws; from += BLOCK) {
            int to = Math.min(from + BLOCK, draws);
            pressures(programs.get(0).insects(), columns, from, to);
            for (int k = 0; k < stands.size(); k++) {
                stands.get(k).kept(columns, from, to, kept[k]);
            }
            for (int c = 0; c < programs.size(); c++) {
                double[] sum = yields[c].length == 0 ? yield : yields[c];
                through = margins[c]; // room that is free until the money is counted
                block(programs.get(c), columns, from, to, sum);
                money(programs.get(c), columns, from, to, sum, margins[c]);
            }
        }
    }

    /** The different stands of the programs: most programs of a field share one, which is worked once. */
    private void stands(List<ProgramModel> programs) {
        stands = programs.stream()
                .flatMap(program -> program.lots().stream())
                .map(Lot::plants)
                .distinct()
                .toList();
        if (kept.length < stands.size() || kept[0].length != common.length) {
            kept = new double[stands.size()][common.length];
        }
    }

    private void makeRoom(int draws) {
        if (common.length != draws) {
            common = new double[draws];
            lotYield = new double[draws];
            yield = new double[draws];
            int insects = model.programs().get(0).insects().size();
            untreated = new double[insects][draws];
            treated = new double[insects][draws];
            hits = new double[insects][];
            made = new double[0][];
        }
    }

    private void money(ProgramModel program, double[][] columns, int from, int to, double[] sum, double[] margin) {
        double cost = program.costUsdPerAcre();
        double share = model.farm().cropShare();
        double[] price = columns[model.price()];
        double hauling = model.farm().haulingShare();
        double[] handling = columns[model.handling()];
        for (int i = from; i < to; i++) {
            sum[i] = Math.max(0, sum[i]);
            margin[i] = (price[i] * share - handling[i] * hauling) * sum[i] - cost;
        }
        if (model.drying() >= 0) {
            double drying = model.farm().dryingShare();
            double[] perBushel = columns[model.drying()];
            for (int i = from; i < to; i++) {
                margin[i] -= perBushel[i] * drying * sum[i];
            }
        }
        for (int t = 0; t < program.triggers().size(); t++) {
            double once = program.triggers().get(t).costUsdPerAcre();
            double[] there = made[t];
            for (int i = from; i < to; i++) {
                margin[i] -= once * there[i];
            }
        }
        double[] later = program.laterUsdPerAcre();
        for (int i = from; i < to && later.length > 0; i++) {
            margin[i] -= later[i];
        }
    }

    private void block(ProgramModel program, double[][] columns, int from, int to, double[] sum) {
        System.arraycopy(columns[model.yield()], from, common, from, to - from);
        triggers(program.triggers(), columns, from, to);
        weeds(program, columns, from, to, sum);
        for (Injury injury : program.injuries()) {
            double[] loss = columns[injury.loss()];
            double share = injury.share() / 100;
            if (injury.trigger() >= 0) {
                double[] there = made[injury.trigger()];
                for (int i = from; i < to; i++) {
                    common[i] *= 1 - share * loss[i] * there[i];
                }
                continue;
            }
            for (int i = from; i < to; i++) {
                common[i] *= 1 - share * loss[i];
            }
        }
        delay(program, columns[model.delayLoss()], from, to);
        for (int j = 0; j < program.insects().size(); j++) {
            hits[j] = hit(j, program.insects().get(j).cuts(), columns, from, to);
        }
        Arrays.fill(sum, from, to, 0);
        for (Lot lot : program.lots()) {
            lot(lot, program.insects(), columns, from, to, sum);
        }
    }

    /** Which of the passes that wait for scouting are made. */
    private void triggers(List<Trigger> triggers, double[][] columns, int from, int to) {
        if (made.length < triggers.size()) {
            made = new double[triggers.size()][common.length];
        }
        for (int t = 0; t < triggers.size(); t++) {
            triggers.get(t).made(columns, from, to, made[t]);
        }
    }

    private void delay(ProgramModel program, double[] perDay, int from, int to) {
        List<Trigger> triggers = program.triggers();
        double days = program.delayDays() / 100;
        if (triggers.stream().allMatch(trigger -> trigger.delayDays() == 0)) {
            for (int i = from; i < to && days > 0; i++) {
                common[i] *= 1 - Math.min(1, perDay[i] * days);
            }
            return;
        }
        for (int i = from; i < to; i++) {
            double all = days;
            for (int t = 0; t < triggers.size(); t++) {
                all += triggers.get(t).delayDays() / 100 * made[t][i];
            }
            common[i] *= 1 - Math.min(1, perDay[i] * all);
        }
    }

    /** b·P of every insect, as a share of yield: the same for every program of a field. */
    private void pressures(List<Insect> insects, double[][] columns, int from, int to) {
        for (int j = 0; j < insects.size(); j++) {
            Insect insect = insects.get(j);
            double[] pressure = columns[insect.pressure()];
            double[] loss = columns[insect.loss()];
            double cap = insect.cap();
            double[] press = untreated[j];
            for (int i = from; i < to; i++) {
                press[i] = SHARE_PER_PCT * loss[i] * Math.min(cap, pressure[i]);
            }
        }
    }

    /** What an insect would cost plants without a trait: b·P·left, as a share of yield. */
    private double[] hit(int insect, List<Cut> cuts, double[][] columns, int from, int to) {
        if (cuts.isEmpty()) {
            return untreated[insect];
        }
        double[] hit = treated[insect];
        System.arraycopy(untreated[insect], from, hit, from, to - from);
        cut(cuts, columns, from, to, hit);
        return hit;
    }

    /** Takes from what there is the share that the passes remove: times Π(1 − cut). */
    private void cut(List<Cut> cuts, double[][] columns, int from, int to, double[] left) {
        for (Cut cut : cuts) {
            List<Term> terms = cut.terms();
            if (cut.trigger() >= 0) {
                waiting(terms, made[cut.trigger()], columns, from, to, left);
            } else if (terms.size() == 1) {
                cut(terms.get(0), columns, from, to, left);
            } else {
                blend(terms, columns, from, to, left);
            }
        }
    }

    private void cut(Term term, double[][] columns, int from, int to, double[] left) {
        double[] control = columns[term.control()];
        double weight = term.weight();
        for (int i = from; i < to; i++) {
            left[i] *= Math.max(0, 1 - weight * control[i]);
        }
    }

    private static void waiting(List<Term> terms, double[] made, double[][] columns, int from, int to, double[] left) {
        for (int i = from; i < to; i++) {
            double taken = 0;
            for (Term term : terms) {
                taken += term.weight() * columns[term.control()][i];
            }
            left[i] *= Math.max(0, 1 - made[i] * taken);
        }
    }

    private void blend(List<Term> terms, double[][] columns, int from, int to, double[] left) {
        Arrays.fill(through, from, to, 1);
        for (Term term : terms) {
            double[] control = columns[term.control()];
            double weight = term.weight();
            for (int i = from; i < to; i++) {
                through[i] -= weight * control[i];
            }
        }
        for (int i = from; i < to; i++) {
            left[i] *= Math.max(0, through[i]);
        }
    }

    private void weeds(ProgramModel program, double[][] columns, int from, int to, double[] load) {
        List<Weed> weeds = program.weeds();
        double[][] followed = loads.of(program);
        if (weeds.isEmpty()) {
            return;
        }
        double most = 0;
        double[] one = load; // the first weed's load is the load so far; each further one is worked beside it
        for (int j = 0; j < weeds.size(); j++) {
            Weed weed = weeds.get(j);
            double[] density = columns[weed.density()];
            double[] loss = columns[weed.loss()];
            if (followed.length > 0) {
                double[] each = followed[j];
                for (int i = from; i < to; i++) {
                    one[i] = each[i] * density[i] * loss[i];
                }
            } else {
                for (int i = from; i < to; i++) {
                    one[i] = loss[i] * density[i];
                }
                cut(weed.cuts(), columns, from, to, one);
            }
            if (one != load) {
                for (int i = from; i < to; i++) {
                    load[i] += one[i];
                }
            }
            one = lotYield;
            most = Math.max(most, weed.mostLossPct());
        }
        for (int i = from; i < to; i++) {
            common[i] *= 1 - HyperbolicLoss.ofLoad(load[i], most) * SHARE_PER_PCT;
        }
    }

    private void lot(Lot lot, List<Insect> insects, double[][] columns, int from, int to, double[] sum) {
        double[] plants = kept[stands.indexOf(lot.plants())];
        double[] stand = columns[lot.stand()];
        for (int i = from; i < to; i++) {
            lotYield[i] = common[i] * plants[i] * SHARE_PER_PCT * (stand[i] * SHARE_PER_PCT);
        }
        for (int j = 0; j < insects.size(); j++) {
            insect(insects.get(j), lot.modes().get(j), lot.unprotected(), columns, from, to, hits[j]);
        }
        double[] gain = columns[lot.gain()];
        double[] lag = columns[model.geneticLag()];
        double years = lot.yearsBehind();
        double share = lot.share();
        for (int i = from; i < to; i++) {
            sum[i] += share * (lotYield[i] + gain[i] - years * lag[i]);
        }
    }

    private void insect(
            Insect insect, List<Mode> modes, double bare, double[][] columns, int from, int to, double[] hit) {
        if (modes.isEmpty()) {
            for (int i = from; i < to; i++) {
                lotYield[i] *= 1 - Math.min(1, hit[i]);
            }
            return;
        }
        through(modes, columns, from, to);
        double refuge = bare * (1 - insect.neighbourShare());
        for (int i = from; i < to; i++) {
            lotYield[i] *= 1 - Math.min(1, hit[i] * (refuge + (1 - bare) * through[i]));
        }
    }

    /** The share of injury that the trait groups let through: Π(1 − mode). */
    private void through(List<Mode> modes, double[][] columns, int from, int to) {
        Arrays.fill(through, from, to, 1);
        for (Mode mode : modes) {
            double[] control = columns[mode.control()];
            if (mode.works() < 0) {
                for (int i = from; i < to; i++) {
                    through[i] *= 1 - control[i];
                }
            } else {
                double[] works = columns[mode.works()];
                double failed = mode.ifFailed();
                for (int i = from; i < to; i++) {
                    double w = works[i];
                    through[i] *= 1 - (w * control[i] + (1 - w) * failed);
                }
            }
        }
    }
}
