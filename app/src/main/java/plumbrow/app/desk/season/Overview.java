package plumbrow.app.desk.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.FieldSeasons;
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
 * @param wanted the one thing that each wants, by field
 * @param show which fields are listed
 * @param sieve what is looked for
 * @param part the fields listed
 */
public record Overview(
        Season season,
        List<FieldAnswer> answers,
        Map<String, Choice> choices,
        Map<String, Wanted> wanted,
        Show show,
        Sieve sieve,
        Part<FieldAnswer> part) {
    /**
     * What is looked for; empty lets everything through.
     *
     * @param find part of the name of a field, farm or grower
     * @param grower the grower
     * @param crop the crop
     * @param status what the field wants
     */
    public record Sieve(String find, String grower, String crop, String status) {
        boolean all() {
            return find.isBlank() && grower.isEmpty() && crop.isEmpty() && status.isEmpty();
        }

        boolean lets(Field field, String of, Wanted.Status wants) {
            Predicate<String> holds = Part.holding(find);
            return (holds.test(field.name()) || holds.test(field.farm()) || holds.test(of))
                    && (grower.isEmpty() || grower.equals(of))
                    && (crop.isEmpty() || crop.equals(field.crop().word()))
                    && (status.isEmpty() || status.equals(wants.word()));
        }

        /** As further parameters of an address. */
        String address() {
            StringBuilder address = new StringBuilder();
            Map<String, String> all = new LinkedHashMap<>();
            all.put("find", find);
            all.put("grower", grower);
            all.put("crop", crop);
            all.put("status", status);
            all.forEach((name, value) -> address.append(value.isBlank() ? "" : "&" + name + "=" + Shown.part(value)));
            return address.toString();
        }
    }

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
            Season season,
            List<FieldAnswer> answers,
            List<Choice> choices,
            String show,
            Sieve sieve,
            int page,
            LocalDate today) {
        Map<String, Choice> latest = new HashMap<>();
        choices.forEach(choice -> latest.put(choice.field(), choice));
        Map<String, String> growers = new HashMap<>();
        season.farms().forEach(farm -> growers.put(farm.name(), farm.grower()));
        FieldSeasons seasons = FieldSeasons.of(season);
        Map<String, Wanted> wanted = new HashMap<>();
        answers.forEach(answer -> wanted.put(
                answer.field().name(),
                Wanted.of(seasons, answer, latest.get(answer.field().name()), today)));
        Show shown = List.of(Show.values()).stream()
                .filter(one -> one.word().equals(show))
                .findFirst()
                .orElse(answers.size() > Part.LINES && sieve.all() ? Show.NEEDS : Show.ALL);
        List<FieldAnswer> listed = answers.stream()
                .filter(answer -> shown == Show.ALL || (shown == Show.SETTLED) == settled(wanted, answer))
                .filter(answer -> sieve.lets(
                        answer.field(), growers.getOrDefault(answer.field().farm(), ""), status(wanted, answer)))
                .sorted(Comparator.comparing((FieldAnswer answer) -> status(wanted, answer))
                        .thenComparing(
                                Comparator.comparingDouble((FieldAnswer answer) -> Math.abs(answer.advisedGainUsd()))
                                        .reversed()))
                .toList();
        return new Overview(
                season, answers, Map.copyOf(latest), Map.copyOf(wanted), shown, sieve, Part.of(listed, page));
    }

    private static Wanted.Status status(Map<String, Wanted> wanted, FieldAnswer answer) {
        Wanted of = wanted.get(answer.field().name());
        return of == null ? Wanted.Status.SETTLED : of.status();
    }

    private static boolean settled(Map<String, Wanted> wanted, FieldAnswer answer) {
        return status(wanted, answer) == Wanted.Status.SETTLED;
    }

    /** The growers of the season, by name. */
    public List<String> growers() {
        return season.farms().stream().map(Farm::grower).distinct().sorted().toList();
    }

    /** What a field wants. */
    public Wanted wanted(FieldAnswer answer) {
        return Objects.requireNonNull(wanted.get(answer.field().name()));
    }

    /** How many fields want each thing, what presses most first; none of those that no field wants. */
    public Map<Wanted.Status, Integer> wants() {
        Map<Wanted.Status, Integer> wants = new EnumMap<>(Wanted.Status.class);
        wanted.values().forEach(one -> wants.merge(one.status(), 1, Integer::sum));
        wants.remove(Wanted.Status.SETTLED);
        return wants;
    }

    /** How many fields would be listed. */
    public int count(Show which) {
        int settled =
                (int) answers.stream().filter(answer -> settled(wanted, answer)).count();
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
        return "/?show=" + which.word() + sieve.address() + (page == 1 ? "" : "&page=" + page);
    }

    /** Number of draws each answer rests on. */
    public int draws() {
        return answers.stream().mapToInt(FieldAnswer::draws).max().orElse(0);
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
