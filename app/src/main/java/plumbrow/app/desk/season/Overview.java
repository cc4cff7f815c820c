package plumbrow.app.desk.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import plumbrow.advice.field.Farm;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Choice;
import plumbrow.app.desk.FieldAnswer;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.desk.shown.Shown;

/**
 * What the first page shows: what needs somebody first, then what it is worth; a page of them, farm by farm.
 *
 * @param answers of all fields, in the order of the season
 * @param choices the decision recorded last, by field
 * @param show which fields are listed
 * @param find part of the name of a field, farm or grower that is looked for; empty for all
 * @param part the fields listed
 */
public record Overview(
        Season season,
        List<FieldAnswer> answers,
        Map<String, Choice> choices,
        Show show,
        String find,
        Part<FieldAnswer> part) {
    /** Which fields are listed. */
    public enum Show {
        NEEDS("needs", "Needs you"),
        SETTLED("settled", "Settled"),
        ALL("all", "All");

        private final String word;
        private final String words;

        Show(String word, String words) {
            this.word = word;
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** How it stands in an address. */
        public String word() {
            return word;
        }
    }

    /** The fields of one farm. */
    public record FarmFields(Farm farm, List<FieldAnswer> fields) {}

    static Overview of(
            Season season, List<FieldAnswer> answers, List<Choice> choices, String show, String find, int page) {
        Map<String, Choice> latest = new HashMap<>();
        choices.forEach(choice -> latest.put(choice.field(), choice));
        Map<String, String> growers = new HashMap<>();
        season.farms().forEach(farm -> growers.put(farm.name(), farm.grower()));
        Predicate<String> holds = Part.holding(find);
        Show shown = List.of(Show.values()).stream()
                .filter(one -> one.word().equals(show))
                .findFirst()
                .orElse(answers.size() > Part.LINES && find.isBlank() ? Show.NEEDS : Show.ALL);
        List<FieldAnswer> listed = answers.stream()
                .filter(answer -> shown == Show.ALL || (shown == Show.SETTLED) == settled(latest, answer))
                .filter(answer -> holds.test(answer.field().name())
                        || holds.test(answer.field().farm())
                        || holds.test(growers.getOrDefault(answer.field().farm(), "")))
                .sorted(Comparator.comparingInt((FieldAnswer answer) -> rank(latest, answer))
                        .thenComparing(
                                Comparator.comparingDouble((FieldAnswer answer) -> Math.abs(answer.advisedGainUsd()))
                                        .reversed()))
                .toList();
        return new Overview(season, answers, Map.copyOf(latest), shown, find, Part.of(listed, page));
    }

    /** Nothing may be advised; nothing is decided, and programs are tied or one leads; something is decided. */
    private static int rank(Map<String, Choice> latest, FieldAnswer answer) {
        return settled(latest, answer) ? 3 : answer.advised() == null ? 0 : answer.tied() ? 1 : 2;
    }

    private static boolean settled(Map<String, Choice> latest, FieldAnswer answer) {
        return latest.containsKey(answer.field().name());
    }

    /** How many fields would be listed. */
    public int count(Show which) {
        int settled = (int)
                answers.stream().filter(answer -> settled(choices, answer)).count();
        return switch (which) {
            case ALL -> answers.size();
            case SETTLED -> settled;
            case NEEDS -> answers.size() - settled;
        };
    }

    /** The fields on this page, farm by farm. */
    public List<FarmFields> farms() {
        Map<String, List<FieldAnswer>> byFarm = new LinkedHashMap<>();
        part.lines()
                .forEach(answer -> byFarm.computeIfAbsent(answer.field().farm(), first -> new ArrayList<>())
                        .add(answer));
        return byFarm.entrySet().stream()
                .flatMap(farm -> season.farm(farm.getKey()).map(one -> new FarmFields(one, farm.getValue())).stream())
                .toList();
    }

    /** The address of another page of the list. */
    public String address(Show which, int page) {
        return "/?show=" + which.word() + (find.isBlank() ? "" : "&find=" + Shown.part(find))
                + (page == 1 ? "" : "&page=" + page);
    }

    /** Number of draws each answer rests on. */
    public int draws() {
        return answers.stream().mapToInt(FieldAnswer::draws).findFirst().orElse(0);
    }

    /** The decision recorded last for a field. */
    public Optional<Choice> chosen(String field) {
        return Optional.ofNullable(choices.get(field));
    }

    /** The answer for the season in one sentence. */
    public String sentence() {
        long answered =
                answers.stream().filter(answer -> answer.advised() != null).count();
        int fields = answers.size();
        double acres =
                answers.stream().mapToDouble(answer -> answer.field().acres()).sum();
        String where = Shown.count(fields, "field") + " on " + Shown.acres(acres) + " acres";
        String count = answered == fields
                ? (fields == 1 ? where + " has an answer" : "all " + where + " have an answer")
                : "of " + where + ", " + answered + (answered == 1 ? " has" : " have") + " an answer";
        double gain = answers.stream().mapToDouble(FieldAnswer::advisedGainUsd).sum();
        String worth = Shown.dollars(gain).equals("$0")
                ? "they are expected to earn what the baselines earn."
                : "together they are expected to earn " + Shown.dollars(Math.abs(gain)) + (gain > 0 ? " more" : " less")
                        + " than the baselines.";
        return count + "; " + worth;
    }
}
