package plumbrow.advice.ask;

import java.util.List;
import java.util.Map;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.science.reference.TypicalValue;

/**
 * The season that a question's boxes make.
 *
 * @param typicals the typical values that stand in it
 * @param boxes the box that tells an uncertain input, by the input's id
 */
public record AskedSeason(Season season, Field field, List<TypicalValue> typicals, Map<String, String> boxes) {
    public AskedSeason {
        typicals = List.copyOf(typicals);
        boxes = Map.copyOf(boxes);
    }
}
