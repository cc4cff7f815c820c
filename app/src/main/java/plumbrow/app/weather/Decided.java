package plumbrow.app.weather;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.Decision;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.book.Choice;

/** Which program of a field counts, and which of its trips is meant. */
public final class Decided {
    private Decided() {}

    /**
     * The program asked for; else the one last chosen; else the baseline.
     *
     * @throws IllegalArgumentException with a sentence, where there is none
     */
    public static Program program(Season season, Field field, List<Choice> choices, @Nullable String asked) {
        List<Program> programs = season.programs(field.name());
        String chosen = asked != null && !asked.isEmpty() ? asked : chosen(season, field, choices);
        if (chosen != null) {
            return programs.stream()
                    .filter(program -> program.name().equals(chosen))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("There is no program '" + chosen + "' on "
                            + field.name() + "; its programs are " + names(programs) + "."));
        }
        return programs.stream()
                .filter(Program::baseline)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(field.name() + " has no program yet."));
    }

    /** The name of the program last chosen for a field; null where none was, or it is gone. */
    public static @Nullable String chosen(Season season, Field field, List<Choice> choices) {
        return last(season, field, choices).map(Choice::program).orElse(null);
    }

    /** The choice itself, for a plan: what was chosen, who and when; null likewise. */
    public static @Nullable Decision decision(Season season, Field field, List<Choice> choices) {
        return last(season, field, choices)
                .map(choice -> new Decision(
                        choice.program(),
                        choice.who(),
                        choice.when().atZone(ZoneId.systemDefault()).toLocalDate()))
                .orElse(null);
    }

    private static Optional<Choice> last(Season season, Field field, List<Choice> choices) {
        return choices.stream()
                .filter(choice -> choice.field().equals(field.name()))
                .reduce((first, later) -> later)
                .filter(choice -> season.programs(field.name()).stream()
                        .anyMatch(program -> program.name().equals(choice.program())));
    }

    /**
     * The trip of a program that holds a pass; else its first.
     *
     * @param airOnly whether only trips through the air count where no pass is named
     */
    public static SprayTrip trip(
            Season season,
            Field field,
            List<Choice> choices,
            @Nullable String program,
            @Nullable Integer pass,
            boolean airOnly) {
        Program found = program(season, field, choices, program);
        List<SprayTrip> trips = SprayTrip.of(season, field, found);
        return trips.stream()
                .filter(trip -> pass == null
                        ? !airOnly || trip.sprayed()
                        : trip.passes().stream().anyMatch(one -> one.number() == pass))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        pass == null
                                ? "“" + found.name() + "” on " + field.name() + " has no "
                                        + (airOnly ? "spray that goes through the air." : "spray or granules.")
                                : "Pass " + pass + " of “" + found.name() + "” on " + field.name()
                                        + " puts no product on; those that do are "
                                        + (trips.isEmpty() ? "none" : numbers(trips)) + "."));
    }

    /** The number of a pass as typed; null where nothing is. */
    public static @Nullable Integer passNumber(@Nullable String typed) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        try {
            return Integer.parseInt(typed.strip());
        } catch (NumberFormatException fault) {
            throw new IllegalArgumentException("“" + (typed.length() > 40 ? typed.substring(0, 37) + "…" : typed)
                    + "” stands under pass; expected the number of a pass.");
        }
    }

    private static String numbers(List<SprayTrip> trips) {
        return trips.stream()
                .flatMap(trip -> trip.passes().stream())
                .map(one -> String.valueOf(one.number()))
                .collect(Collectors.joining(", "));
    }

    private static String names(List<Program> programs) {
        return programs.stream().map(Program::name).collect(Collectors.joining(", "));
    }
}
