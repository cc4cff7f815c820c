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
import plumbrow.app.book.Choice;
import plumbrow.app.desk.shown.Shown;

/** What the first page shows, farm by farm, in the order of the book. */
public record Overview(Season season, Advice advice, List<FarmFields> farms, Map<String, Choice> latestChoice) {

    /** The fields of one farm. */
    public record FarmFields(Farm farm, List<FieldAdvice> fields) {}

    static Overview of(Season season, Advice advice, List<Choice> choices) {
        List<FarmFields> farms = new ArrayList<>();
        for (Farm farm : season.farms()) {
            List<FieldAdvice> fields = advice.fields().stream()
                    .filter(field -> field.field().farm().equals(farm.name()))
                    .toList();
            if (!fields.isEmpty()) {
                farms.add(new FarmFields(farm, fields));
            }
        }
        Map<String, Choice> latest = new LinkedHashMap<>();
        choices.forEach(choice -> latest.put(choice.field(), choice));
        return new Overview(season, advice, List.copyOf(farms), Map.copyOf(latest));
    }

    /** The decision recorded last for a field. */
    public Optional<Choice> chosen(String field) {
        return Optional.ofNullable(latestChoice.get(field));
    }

    /** The answer for the season in one sentence. */
    public String sentence() {
        long answered = advice.fieldsAnswered();
        int fields = advice.fields().size();
        String where = Shown.count(fields, "field") + " on " + Shown.acres(advice.acres()) + " acres";
        String count = answered == fields
                ? (fields == 1 ? where + " has an answer" : "all " + where + " have an answer")
                : "of " + where + ", " + answered + (answered == 1 ? " has" : " have") + " an answer";
        double gain = advice.advisedGainUsd();
        String worth = Shown.dollars(gain).equals("$0")
                ? "they are expected to earn what the baselines earn."
                : "together they are expected to earn " + Shown.dollars(Math.abs(gain)) + (gain > 0 ? " more" : " less")
                        + " than the baselines.";
        return count + "; " + worth;
    }
}
