package plumbrow.documents.picture;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedCourse;

/**
 * One colour for each course, the same wherever the course is drawn.
 *
 * <p>Colours follow the names in their alphabetical order and not the rank of the courses, which moves with the
 * outlook. With more than seven courses colours come round again: every mark is also labelled, so none is told by its
 * colour alone.
 *
 * <p>Source: the eight colours of Okabe and Ito, "Color Universal Design", 2008, safe for the common kinds of colour
 * blindness. Black is kept for the baseline; yellow, weak on white paper, comes last.
 */
public final class CoursePalette {
    /** Black. */
    public static final String BASELINE = "#000000";

    private static final List<String> COLOURS = List.of(
            "#0072B2", // blue
            "#D55E00", // vermilion
            "#009E73", // bluish green
            "#CC79A7", // reddish purple
            "#E69F00", // orange
            "#56B4E9", // sky blue
            "#F0E442"); // yellow

    private final Map<String, String> colours = new HashMap<>();
    private final Set<String> baselines;

    private CoursePalette(Collection<String> names, Set<String> baselines) {
        this.baselines = Set.copyOf(baselines);
        List<String> ordered = names.stream()
                .filter(name -> !baselines.contains(name))
                .distinct()
                .sorted()
                .toList();
        for (int i = 0; i < ordered.size(); i++) {
            colours.put(ordered.get(i), COLOURS.get(i % COLOURS.size()));
        }
    }

    /** For one field alone. */
    public static CoursePalette of(FieldAdvice field) {
        return new CoursePalette(names(field), Set.of(field.baseline()));
    }

    /** For all fields of a season together: a course of the same name has the same colour on each of them. */
    public static CoursePalette of(Advice advice) {
        return new CoursePalette(
                advice.fields().stream().flatMap(field -> names(field).stream()).toList(),
                advice.fields().stream().map(FieldAdvice::baseline).collect(Collectors.toSet()));
    }

    /** The colour of a course as "#RRGGBB"; black for a baseline and for a course the palette was not made for. */
    public String colour(String course) {
        return baselines.contains(course) ? BASELINE : colours.getOrDefault(course, BASELINE);
    }

    private static List<String> names(FieldAdvice field) {
        return field.courses().stream().map(WeighedCourse::name).toList();
    }
}
