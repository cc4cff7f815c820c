package plumbrow.documents.picture;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.WeighedProgram;

/**
 * One colour for each program, the same wherever a program of that name is drawn, and different ones on the same field.
 * Black is the baseline of the field, whatever its name, and nothing else.
 *
 * <p>Colours are given by name and not by rank, which moves with the assumptions. Where a field has more than seven programs
 * beside its baseline, colours come round again: every mark is also labelled, so none is told by its colour alone.
 *
 * <p>Source: the eight colours of Okabe and Ito, "Color Universal Design", 2008, safe for the common kinds of colour
 * blindness. Yellow, weak on white paper, comes last.
 */
public final class ProgramPalette {
    private static final String BLACK = "#000000";

    private static final List<String> COLOURS = List.of(
            "#0072B2", // blue
            "#D55E00", // vermilion
            "#009E73", // bluish green
            "#CC79A7", // reddish purple
            "#E69F00", // orange
            "#56B4E9", // sky blue
            "#F0E442"); // yellow

    private final Map<String, String> colours = new HashMap<>();

    private ProgramPalette(Map<String, Set<String>> besideByName) {
        besideByName.forEach((name, beside) -> {
            Set<String> taken = new HashSet<>();
            beside.forEach(other -> taken.add(colours.getOrDefault(other, "")));
            colours.put(
                    name,
                    COLOURS.stream()
                            .filter(colour -> !taken.contains(colour))
                            .findFirst()
                            .orElseGet(() -> COLOURS.get(colours.size() % COLOURS.size())));
        });
    }

    /** For all fields of a season: a program of the same name has the same colour on each of them. */
    public static ProgramPalette of(Season season) {
        FieldSeasons own = FieldSeasons.of(season);
        return of(season.fields().stream()
                .map(field -> own.programs(field).stream()
                        .filter(program -> !program.baseline())
                        .map(Program::name)
                        .toList())
                .toList());
    }

    /** For programs by their names, those of one field together; baselines left out. */
    static ProgramPalette of(List<List<String>> namesByField) {
        Map<String, Set<String>> beside = new TreeMap<>();
        for (List<String> names : namesByField) {
            names.forEach(name ->
                    beside.computeIfAbsent(name, none -> new TreeSet<>()).addAll(names));
        }
        return new ProgramPalette(beside);
    }

    /** The colour of a program as "#RRGGBB"; black for a baseline, and for a program the palette was not made for. */
    public String colour(WeighedProgram program) {
        return colour(program.name(), program.baseline());
    }

    /** The same for a program by its name. */
    public String colour(String program, boolean baseline) {
        return baseline ? BLACK : colours.getOrDefault(program, BLACK);
    }
}
