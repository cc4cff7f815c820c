package plumbrow.app.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** The tables of a season by where a person looks for them. What each holds is said once, by its sheet. */
public enum TableGroup {
    GROWERS("Growers and farms", "farms", "season"),
    FIELDS("Fields", "fields", "history", "surroundings", "also_in", "land", "next_crops", "crop_days", "stand_counts"),
    PESTS("Pests and scouting", "insects", "weeds", "trait_doubts", "resistance", "like_weeds"),
    SHELF("Shelf", "shelf", "actives", "control", "ratings", "active_limits"),
    SEEDS("Seeds and traits", "seeds", "traits"),
    LABELS(
            "Label terms",
            "label_uses",
            "terms",
            "tolerances",
            "label_limits",
            "soil_rates",
            "setbacks",
            "plant_backs",
            "mix_rules",
            "special_labels",
            "bulletins",
            "mixing",
            "additions",
            "hour_limits",
            "care"),
    MEANS(
            "Machines, people, supplies, limits",
            "people",
            "licences",
            "crew",
            "machines",
            "sprayers",
            "nozzles",
            "water_tests",
            "work_windows",
            "farm_limits",
            "price_breaks",
            "supplies"),
    PROGRAMS("Programs", "programs", "passes", "sprays", "tillage", "floor_checks", "log"),
    ASSUMPTIONS("Assumptions and weather", "assumptions", "climate", "weather_days"),
    /** Tables that no other group names, so that a new one is in reach all the same. */
    OTHER("Other");

    private final String title;

    @SuppressWarnings("ImmutableEnumChecker") // Never changed after it is made.
    private final List<String> names;

    TableGroup(String title, String... names) {
        this.title = title;
        this.names = List.of(names);
    }

    public String title() {
        return title;
    }

    /** Its tables, in the order in which a person comes to them. */
    public List<Sheet<?>> tables() {
        if (this != OTHER) {
            return names.stream()
                    .flatMap(name -> Sheets.named(name).stream())
                    .collect(Collectors.toCollection(ArrayList::new));
        }
        Set<String> grouped =
                Arrays.stream(values()).flatMap(group -> group.names.stream()).collect(Collectors.toSet());
        return Sheets.ALL.stream()
                .filter(sheet -> !grouped.contains(sheet.name()))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    /** The group in which a table stands. */
    public static TableGroup of(Sheet<?> sheet) {
        return Arrays.stream(values())
                .filter(group -> group.names.contains(sheet.name()))
                .findFirst()
                .orElse(OTHER);
    }
}
