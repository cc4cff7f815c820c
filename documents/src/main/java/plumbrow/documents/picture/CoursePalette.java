package plumbrow.documents.picture;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plumbrow.advice.course.Course;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.WeighedCourse;

/**
 * One colour for each course, the same wherever a course of that name is drawn, and different ones on the same field.
 * Black is the baseline of the field, whatever its name, and nothing else.
 *
 * <p>Colours are given by name and not by rank, which moves with the outlook. Where a field has more than seven courses
 * beside its baseline, colours come round again: every mark is also labelled, so none is told by its colour alone.
 *
 * <p>Source: the eight colours of Okabe and Ito, "Color Universal Design", 2008, safe for the common kinds of colour
 * blindness. Yellow, weak on white paper, comes last.
 */
public final class CoursePalette {
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

    private CoursePalette(Map<String, Set<String>> besideByName) {
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

    /** For all fields of a season: a course of the same name has the same colour on each of them. */
    public static CoursePalette of(Season season) {
        FieldSeasons own = FieldSeasons.of(season);
        return of(season.fields().stream()
                .map(field -> own.courses(field).stream()
                        .filter(course -> !course.baseline())
                        .map(Course::name)
                        .toList())
                .toList());
    }

    /** For courses by their names, those of one field together; baselines left out. */
    static CoursePalette of(List<List<String>> namesByField) {
        Map<String, Set<String>> beside = new TreeMap<>();
        for (List<String> names : namesByField) {
            names.forEach(name ->
                    beside.computeIfAbsent(name, none -> new TreeSet<>()).addAll(names));
        }
        return new CoursePalette(beside);
    }

    /** The colour of a course as "#RRGGBB"; black for a baseline, and for a course the palette was not made for. */
    public String colour(WeighedCourse course) {
        return colour(course.name(), course.baseline());
    }

    /** The same for a course by its name. */
    public String colour(String course, boolean baseline) {
        return baseline ? BLACK : colours.getOrDefault(course, BLACK);
    }
}
