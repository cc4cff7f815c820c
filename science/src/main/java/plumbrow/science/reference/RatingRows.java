package plumbrow.science.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads rows of efficacy: ours, and an adviser's own guide in the same columns. */
final class RatingRows {
    private static final List<String> CROPS = List.of("corn", "soybean", "wheat", "any");
    private static final List<String> TIMINGS =
            List.of("burndown", "preplant-incorporated", "pre-emergence", "post-emergence");
    private static final String PERCENT = "a percent, 0 to 100";

    private RatingRows() {}

    static Optional<Entry> read(Row row) {
        Optional<String> crop =
                row.as("crop", text -> Optional.of(text).filter(CROPS::contains), String.join(", ", CROPS));
        Optional<String> timing =
                row.as("timing", text -> Optional.of(text).filter(TIMINGS::contains), String.join(", ", TIMINGS));
        Optional<List<String>> actives = row.as(
                "actives",
                RatingRows::actives,
                "common names in alphabetical order joined by +, such as atrazine+mesotrione");
        row.as("group", RatingRows::groups, "site-of-action numbers ascending joined by +, each once, such as 5+27");
        String weed = row.needed("weed", "the common name of the weed");
        String printed = row.needed("rating_as_printed", "the rating as the source prints it");
        String scale = row.needed("scale", "what was rated: visual % control and days, or the key of the letters");
        row.needed("year", "the year of the trial or the guide");
        OptionalDouble low = row.number("control_pct_low", 0, 100, PERCENT);
        OptionalDouble high = row.number("control_pct_high", 0, 100, PERCENT);
        OptionalDouble tallest = row.number("max_weed_height_in", .01, 200, "inches above 0, or nothing");
        Optional<Backing> backing = row.backing();
        percents(row, printed, low, high);
        if (!row.sound() || crop.isEmpty() || timing.isEmpty() || actives.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        return backing.map(status -> new Rating(
                crop.get(),
                timing.get(),
                actives.get(),
                row.text("group"),
                weed,
                row.text("scientific_name"),
                printed,
                scale,
                low,
                high.getAsDouble(),
                tallest,
                row.text("year"),
                row.origin(),
                status,
                row.number()));
    }

    private static void percents(Row row, String printed, OptionalDouble low, OptionalDouble high) {
        if (high.isEmpty()) {
            if (row.text("control_pct_high").isEmpty()) {
                row.object("control_pct_high", PERCENT);
            }
        } else if (low.isPresent() && low.getAsDouble() > high.getAsDouble()) {
            row.object("control_pct_low", "no more than the high end, " + row.text("control_pct_high"));
        } else if (row.sound()) {
            PrintedRating.objection(printed, low, high.getAsDouble())
                    .ifPresent(expected -> row.object("control_pct_low", expected));
        }
    }

    private static Optional<List<String>> actives(String text) {
        List<String> names =
                Arrays.stream(text.split("\\+", -1)).map(String::strip).toList();
        List<String> sorted = names.stream()
                .sorted((a, b) -> a.toLowerCase(Locale.ROOT).compareTo(b.toLowerCase(Locale.ROOT)))
                .toList();
        return names.contains("") || !names.equals(sorted) ? Optional.empty() : Optional.of(names);
    }

    private static Optional<String> groups(String text) {
        int before = -1;
        for (String part : text.split("\\+", -1)) {
            if (!part.matches("\\d{1,2}") || Integer.parseInt(part) <= before) {
                return Optional.empty();
            }
            before = Integer.parseInt(part);
        }
        return Optional.of(text);
    }
}
