package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import plumbrow.science.years.WeedResponse;

/**
 * A weed weighed by what passes leave of it.
 *
 *   left of a biotype = Π over passes of left^(1 − groups it resists/groups of the product)
 *   seed = left·seeds a plant;  load = left·I, I drawn
 *
 * <p>The partners of a premix are taken to do equal parts of its work: the control sheet rates the product as a whole (common
 * practice, no source). A product whose groups are not known is taken to be resisted by nothing.
 */
@SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
record WeedByPasses(
        String weed, double[] seedlingsM2, double[] lossPerPlantPct, double mostLossPct, List<OnePass> passes)
        implements WeedOn {

    /**
     * @param sites groups of the product; empty where not known
     * @param left share that the pass leaves, draw by draw
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
    record OnePass(Set<String> sites, double[] left) {
        boolean takes() {
            return Arrays.stream(left).anyMatch(share -> share < 1);
        }

        /** The part of the pass that still works on plants that resist some groups. */
        double works(List<String> groups, int biotype) {
            int resisted = 0;
            for (int l = 0; l < groups.size(); l++) {
                resisted += (biotype >> l & 1) == 1 && sites.contains(groups.get(l)) ? 1 : 0;
            }
            return resisted == 0 ? 1 : 1 - (double) resisted / sites.size();
        }
    }

    @Override
    public List<Set<String>> sites() {
        return passes.stream()
                .filter(pass -> pass.takes() && !pass.sites().isEmpty())
                .map(OnePass::sites)
                .toList();
    }

    @Override
    public boolean touched() {
        return passes.stream().anyMatch(OnePass::takes);
    }

    @Override
    public boolean ratedOnSusceptible() {
        return false;
    }

    @Override
    public double[] untreatedLoad() {
        return lossPerPlantPct.clone();
    }

    @Override
    public WeedResponse response(List<String> groups, double[] seedsPerPlant, double crowdingM2) {
        int biotypes = 1 << groups.size();
        int draws = seedlingsM2.length;
        double[][] survive = new double[biotypes][draws];
        double[][] seeds = new double[biotypes][draws];
        double[][] load = new double[biotypes][draws];
        for (int b = 0; b < biotypes; b++) {
            Arrays.fill(survive[b], 1);
            for (OnePass pass : passes) {
                double works = pass.works(groups, b);
                for (int k = 0; k < draws; k++) {
                    survive[b][k] *= works == 1 ? pass.left()[k] : Math.pow(pass.left()[k], works);
                }
            }
            for (int k = 0; k < draws; k++) {
                seeds[b][k] = survive[b][k] * seedsPerPlant[k];
                load[b][k] = survive[b][k] * lossPerPlantPct[k];
            }
        }
        return new WeedResponse(survive, seeds, load, crowdingM2);
    }
}
