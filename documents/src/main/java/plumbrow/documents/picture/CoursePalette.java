package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedCourse;

/**
 * One colour for each course, the same wherever a course of that name is drawn, and different ones on the same field.
 *
 * <p>Colours are given by name and not by rank, which moves with the outlook. Baselines come first and take black where
 * they can. Where a field has more than eight courses, colours come round again: every mark is also labelled, so none is
 * told by its colour alone.
 *
 * <p>Source: the eight colours of Okabe and Ito, "Color Universal Design", 2008, safe for the common kinds of colour
 * blindness. Yellow, weak on white paper, comes last.
 */
public final class CoursePalette {
    private static final String BLACK = "#000000";

    private static final List<String> COLOURS = List.of(
            BLACK, "#0072B2", // blue
            "#D55E00", // vermilion
            "#009E73", // bluish green
            "#CC79A7", // reddish purple
            "#E69F00", // orange
            "#56B4E9", // sky blue
            "#F0E442"); // yellow

    private final Map<String, String> colours = new HashMap<>();

    private CoursePalette(List<FieldAdvice> fields) {
        Map<String, Set<String>> neighbours = neighbours(fields);
        Set<String> baselines = new TreeSet<>();
        fields.forEach(field -> baselines.add(field.baseline()));
        List<String> order = new ArrayList<>(neighbours.keySet());
        order.sort(Comparator.comparing((String name) -> !baselines.contains(name)));
        for (String name : order) {
            Set<String> taken = new HashSet<>();
            neighbours.getOrDefault(name, Set.of()).forEach(other -> taken.add(colours.getOrDefault(other, "")));
            colours.put(name, free(taken, baselines.contains(name) ? 0 : 1));
        }
    }

    /** For one field alone. */
    public static CoursePalette of(FieldAdvice field) {
        return new CoursePalette(List.of(field));
    }

    /** For all fields of a season together: a course of the same name has the same colour on each of them. */
    public static CoursePalette of(Advice advice) {
        return new CoursePalette(advice.fields());
    }

    /** The colour of a course as "#RRGGBB"; black for a course the palette was not made for. */
    public String colour(String course) {
        return colours.getOrDefault(course, BLACK);
    }

    /** The courses that stand beside each course on some field, by name. */
    private static Map<String, Set<String>> neighbours(List<FieldAdvice> fields) {
        Map<String, Set<String>> neighbours = new TreeMap<>();
        for (FieldAdvice field : fields) {
            List<String> names =
                    field.courses().stream().map(WeighedCourse::name).toList();
            names.forEach(name ->
                    neighbours.computeIfAbsent(name, none -> new TreeSet<>()).addAll(names));
        }
        return neighbours;
    }

    /** The first colour not taken; black only for a baseline, or where no other is left. */
    private static String free(Set<String> taken, int from) {
        for (int i = 0; i < COLOURS.size(); i++) {
            String colour = COLOURS.get((from + i) % COLOURS.size());
            if (!taken.contains(colour)) {
                return colour;
            }
        }
        return COLOURS.get(1 + taken.size() % (COLOURS.size() - 1));
    }
}
