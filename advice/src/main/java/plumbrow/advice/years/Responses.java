package plumbrow.advice.years;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbrow.advice.gates.ProductGroups;
import plumbrow.advice.weighing.CourseSeason;
import plumbrow.advice.weighing.CourseSeason.PassOnWeed;
import plumbrow.advice.weighing.CourseSeason.WeedOn;
import plumbrow.science.years.WeedResponse;

/**
 * What a course leaves of each biotype of a weed, from what its passes leave in the weighing.
 *
 *   left of a biotype = Π over passes of left^(1 − groups it resists/groups of the product)
 *   seed = left·seeds a plant;  load = left·I
 *
 * <p>The partners of a premix are taken to do equal parts of its work: the control sheet rates the product as a whole (common
 * practice, no source). A product whose groups are not known is taken to be resisted by nothing.
 */
final class Responses {
    private Responses() {}

    /**
     * @param groups of the genes, in their order
     * @param seeds viable seed of a plant that is left, draw by draw
     */
    static WeedResponse of(CourseSeason course, WeedOn weed, List<String> groups, double[] seeds, double crowdingM2) {
        int biotypes = 1 << groups.size();
        int draws = seeds.length;
        double[][] survive = new double[biotypes][draws];
        double[][] shed = new double[biotypes][draws];
        double[][] load = new double[biotypes][draws];
        for (int b = 0; b < biotypes; b++) {
            Arrays.fill(survive[b], 1);
            for (PassOnWeed pass : weed.passes()) {
                double works = works(course, pass, groups, b);
                for (int k = 0; k < draws; k++) {
                    survive[b][k] *= works == 1 ? pass.left()[k] : Math.pow(pass.left()[k], works);
                }
            }
            for (int k = 0; k < draws; k++) {
                shed[b][k] = survive[b][k] * seeds[k];
                load[b][k] = survive[b][k] * weed.firstPlantLossPct();
            }
        }
        return new WeedResponse(survive, shed, load, crowdingM2);
    }

    /** The part of a pass that still works on a biotype. */
    private static double works(CourseSeason course, PassOnWeed pass, List<String> groups, int biotype) {
        Optional<Set<String>> known = groups(course, pass);
        if (known.isEmpty()) {
            return 1;
        }
        int resisted = 0;
        for (int l = 0; l < groups.size(); l++) {
            resisted += (biotype >> l & 1) == 1 && known.get().contains(groups.get(l)) ? 1 : 0;
        }
        return 1 - (double) resisted / known.get().size();
    }

    static Optional<Set<String>> groups(CourseSeason course, PassOnWeed pass) {
        return ProductGroups.of(course.season().shelf(), pass.product());
    }
}
