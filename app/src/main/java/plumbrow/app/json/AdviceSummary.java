package plumbrow.app.json;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.years.BesideOneSeason;

/** The advice for a season, and beside that of each field what the seasons to come make of it, as on paper and in the terminal. */
public record AdviceSummary(int year, LocalDate asOf, String adviser, int draws, long seed, List<OfField> fields) {
    /**
     * The advice for one field.
     *
     * @param seasonsToCome whether the years name another program than this season, and why; empty where nobody asked
     */
    public record OfField(@JsonUnwrapped FieldAdvice advice, String seasonsToCome) {
        public static OfField of(Season season, FieldAdvice advice) {
            return new OfField(advice, BesideOneSeason.orWhyNot(season, advice.field()));
        }
    }

    public AdviceSummary {
        fields = List.copyOf(fields);
    }

    /**
     * The advice of a season.
     *
     * @param later the sentence on the seasons to come by the name of the field; empty where nobody asked
     */
    public static AdviceSummary of(Advice advice, Map<String, String> later) {
        return new AdviceSummary(
                advice.year(),
                advice.asOf(),
                advice.adviser(),
                advice.draws(),
                advice.seed(),
                advice.fields().stream()
                        .map(field -> new OfField(
                                field, later.getOrDefault(field.field().name(), "")))
                        .toList());
    }
}
