package plumbrow.advice.weighing;

import java.util.List;
import java.util.Set;
import plumbrow.science.years.WeedResponse;

/** A weed of a field under one program, for looks ahead: what becomes of a seedling, by what it resists. */
public sealed interface WeedOn permits WeedByPasses, WeedBySeason {
    String weed();

    /** Seedlings of the season if nothing is done, draw by draw [1/m²]. */
    double[] seedlingsM2();

    /** The highest loss that the weed goes to [%]. */
    double mostLossPct();

    /** Sites of action of the passes that take some of it, pass by pass; passes of unknown site are left out. */
    List<Set<String>> sites();

    /** Whether any pass takes some of it. */
    boolean touched();

    /** Whether its control is that of susceptible plants; else it is as seen on the plants of this field. */
    boolean ratedOnSusceptible();

    /** Competitive load [%] of one seedling/m² that no pass touches, draw by draw. */
    double[] untreatedLoad();

    /**
     * What becomes of one seedling.
     *
     * @param groups bit l of a biotype's number says that the l-th of these does not kill it
     * @param seedsPerPlant viable seed of a plant that is left, draw by draw; where the season says it by day, that is taken
     * @param crowdingM2 likewise
     */
    WeedResponse response(List<String> groups, double[] seedsPerPlant, double crowdingM2);
}
