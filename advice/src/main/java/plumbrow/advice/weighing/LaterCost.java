package plumbrow.advice.weighing;

import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/** What the programs of a field cost in the years after this season: the <i>future</i> term of the weighing. */
public interface LaterCost {

    /**
     * The cost of each program of the field, in the season's order, draw by draw of the weighing [$/ac of this season's money]:
     * the operator's, below 0 where the program leaves the field better than it was found.
     */
    double[][] of(Season season, Field field, WeighingOptions options);

    /** How it is reckoned, in one sentence. */
    String says();
}
