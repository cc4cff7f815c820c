package plumbrow.advice.hours;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Numbers;
import plumbrow.science.weather.DeltaT;

/**
 * One hour held to every rule.
 *
 * @param begin the moment at which it begins
 * @param weather what is known of it
 * @param windBoomMph wind at the boom [mph], {@code gustBoomMph} gusts there
 * @param deltaTC delta T [°C]
 * @param inversion likely, possible or unlikely, where nobody measured
 * @param out the rules that rule it out
 * @param unknown the rules of which it is not known whether it passes
 */
public record SprayHour(
        Instant begin,
        WeatherHour weather,
        @Nullable Double windBoomMph,
        @Nullable Double gustBoomMph,
        @Nullable Double deltaTC,
        String inversion,
        List<Said> out,
        List<Said> unknown) {
    public SprayHour {
        out = List.copyOf(out);
        unknown = List.copyOf(unknown);
    }

    /** What a rule says of the hour: "wind 12 mph at the boom, most 10". */
    public record Said(HourRule rule, String says) {}

    /** How an hour stands. */
    public enum Standing {
        FIT("fit"),
        OUT("ruled out"),
        UNKNOWN("unknown");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Ruled out where any rule says so; else unknown where any does not know; else fit. */
    public Standing standing() {
        return !out.isEmpty() ? Standing.OUT : !unknown.isEmpty() ? Standing.UNKNOWN : Standing.FIT;
    }

    public boolean fit() {
        return standing() == Standing.FIT;
    }

    /** Whether a label or a state rules it out. */
    public boolean unlawful() {
        return out.stream()
                .anyMatch(said -> said.rule().whose() == HourRule.Whose.LABEL
                        || said.rule().whose() == HourRule.Whose.STATE);
    }

    /** What must be minded of a fit hour: delta T above 8 °C, or so near an end of its classes that the wet bulb's error may flip it. */
    public String mind() {
        Double delta = deltaTC;
        if (delta == null || !fit()) {
            return "";
        }
        String marginal = DeltaT.classOf(delta).equals("marginal") ? "marginal" : "";
        String near = DeltaT.borderline(delta) ? "borderline" : "";
        String both = marginal.isEmpty() ? near : near.isEmpty() ? marginal : marginal + ", " + near;
        return both.isEmpty() ? "" : "delta T " + Numbers.fixed(delta, 1) + " °C, " + both;
    }

    /** Why, in words, with whose rules: what rules it out, else what is not known; empty where it is fit. */
    public String why() {
        return grouped(Said::says);
    }

    /** The same without the numbers. */
    public String reasons() {
        return grouped(said -> said.rule().kind().word() + (out.isEmpty() ? " not known" : ""));
    }

    private String grouped(Function<Said, String> words) {
        Map<String, Set<String>> owners = new LinkedHashMap<>();
        for (Said said : out.isEmpty() ? unknown : out) {
            owners.computeIfAbsent(words.apply(said), first -> new LinkedHashSet<>())
                    .add(said.rule().owner());
        }
        return owners.entrySet().stream()
                .map(one -> one.getKey() + " (" + String.join(", ", one.getValue()) + ")")
                .collect(Collectors.joining("; "));
    }
}
