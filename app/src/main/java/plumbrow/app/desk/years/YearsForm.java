package plumbrow.app.desk.years;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.util.MultiValueMap;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.years.Ahead;
import plumbrow.advice.years.Rotation;
import plumbrow.advice.years.YearsAhead;
import plumbrow.advice.years.YearsOptions;

/**
 * What was asked of a look ahead.
 *
 * @param typed the boxes as typed, by their names
 * @param programs names of the rotation's programs; empty for every program repeated
 * @param faults what is wrong, by the name of the box; then all of it is answered as if nothing had been asked
 */
public record YearsForm(
        YearsOptions options,
        List<Rotation> rotations,
        Map<String, String> typed,
        List<String> programs,
        Map<String, String> faults) {
    private static final String SEASONS = "seasons";
    private static final String DISCOUNT = "discount";
    private static final String AFTER_BREAK = "after_break";
    private static final String PROGRAM = "program";

    /** Reads the boxes; the same names answer on the page and for programs. */
    public static YearsForm read(Season season, Field field, MultiValueMap<String, String> asked) {
        Map<String, String> faults = new LinkedHashMap<>();
        Map<String, String> typed = new LinkedHashMap<>();
        YearsOptions options = YearsOptions.DEFAULT;
        for (String box : List.of(SEASONS, DISCOUNT, AFTER_BREAK)) {
            String text = asked.getFirst(box);
            if (text != null && !text.isBlank()) {
                typed.put(box, text.strip());
                try {
                    options = with(options, box, text.strip());
                } catch (NumberFormatException noNumber) {
                    faults.put(
                            box,
                            "“" + text.strip() + "” is not a number"
                                    + (box.equals(SEASONS) ? " of whole seasons." : "."));
                } catch (IllegalArgumentException range) {
                    faults.put(box, sentence(range));
                }
            }
        }
        List<String> programs = asked.getOrDefault(PROGRAM, List.of()).stream()
                .filter(name -> name != null && !name.isBlank())
                .toList();
        List<Rotation> rotations = Ahead.repeated(season, field);
        if (!programs.isEmpty()) {
            try {
                rotations = with(season, field, programs);
            } catch (SeasonGapException gap) {
                faults.put(PROGRAM, sentence(gap));
            }
        }
        return new YearsForm(options, rotations, typed, programs, faults);
    }

    /** The rotation asked for, with each of the field's own programs in it repeated beside it. */
    private static List<Rotation> with(Season season, Field field, List<String> programs) {
        List<Rotation> rotations = new ArrayList<>();
        rotations.add(Rotation.named(season, field, programs));
        for (Rotation repeated : Ahead.repeated(season, field)) {
            boolean part = rotations.get(0).steps().contains(repeated.steps().get(0));
            if (part && !rotations.contains(repeated)) {
                rotations.add(repeated);
            }
        }
        return rotations;
    }

    private static YearsOptions with(YearsOptions options, String box, String text) {
        return switch (box) {
            case SEASONS -> options.withSeasons(Integer.parseInt(text));
            case DISCOUNT -> options.withDiscountPct(Double.parseDouble(text));
            default -> options.withPressureAfterBreakPct(Double.parseDouble(text));
        };
    }

    private static String sentence(RuntimeException fault) {
        String message = String.valueOf(fault.getMessage());
        return Character.toUpperCase(message.charAt(0)) + message.substring(1) + (message.endsWith(".") ? "" : ".");
    }

    /** The look ahead that was asked for. */
    public YearsAhead answer(Season season, Field field) {
        return Ahead.of(season, field, rotations, options);
    }

    /** What stands in a box. */
    public String box(String name, String standard) {
        return typed.getOrDefault(name, standard);
    }

    /** The program chosen for a year of the rotation, counted from 0. */
    public @Nullable String program(int place) {
        return place < programs.size() ? programs.get(place) : null;
    }
}
