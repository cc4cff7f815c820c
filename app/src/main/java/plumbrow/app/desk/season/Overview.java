package plumbrow.app.desk.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.field.Farm;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.app.desk.Chosen;

/** What the first page shows, farm by farm, in the order of the book. */
public record Overview(Season season, Advice advice, List<FarmFields> farms, Map<String, Chosen> latestChoice) {

    /** The fields of one farm. */
    public record FarmFields(Farm farm, List<FieldAdvice> fields) {}

    static Overview of(Season season, Advice advice, List<Chosen> choices) {
        List<FarmFields> farms = new ArrayList<>();
        for (Farm farm : season.farms()) {
            List<FieldAdvice> fields = advice.fields().stream()
                    .filter(field -> field.field().farm().equals(farm.name()))
                    .toList();
            if (!fields.isEmpty()) {
                farms.add(new FarmFields(farm, fields));
            }
        }
        Map<String, Chosen> latest = new LinkedHashMap<>();
        choices.forEach(choice -> latest.put(choice.field(), choice));
        return new Overview(season, advice, List.copyOf(farms), Map.copyOf(latest));
    }

    /** The decision recorded last for a field. */
    public Optional<Chosen> chosen(String field) {
        return Optional.ofNullable(latestChoice.get(field));
    }
}
