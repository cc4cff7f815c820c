package plumbrow.advice.weighing;

import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/**
 * All that the answer for one field comes out of. Two that are equal have the same answer, whatever became of the rest of the
 * farm.
 *
 * @param season the season of the field alone
 * @param cautions what the whole season says under names that refer to nothing, and would matter on this field
 */
public record OwnSeason(Season season, Field field, List<String> cautions) {
    public OwnSeason {
        cautions = List.copyOf(cautions);
    }
}
