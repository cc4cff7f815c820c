package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.book.By;
import plumbrow.app.book.SeasonChange;

/** What is changed beside the answer is kept for the field when somebody says so, with who and why. */
class KeptAssumptionsTest {
    @Test
    void a_changed_price_becomes_the_fields_own() {
        try (OpenDesk desk = OpenDesk.over(DeskSeason.of(2027))) {
            Visitor visitor = new Visitor(desk);
            String page = "/fields/North%2080/weighing";
            Season before = desk.book().written().orElseThrow();
            Matcher box = Pattern.compile("name=\"(box \\d price)\" value=\"([^\"]*)\"")
                    .matcher(visitor.get(page).body());
            Map<String, String> typed = new HashMap<>();
            while (box.find()) {
                typed.putIfAbsent(box.group(1), box.group(2));
            }
            assertThat(typed).as("boxes of the price").isNotEmpty();
            typed.replaceAll((name, value) -> value.matches("[0-9.]+") && Double.parseDouble(value) > 2
                    ? String.valueOf(Double.parseDouble(value) + 1)
                    : value);
            Map<String, String> nothing = new HashMap<>(Map.of("who", "R. Alder"));
            assertThat(visitor.post("/fields/North%2080/assumptions/keep", nothing)
                            .status())
                    .isEqualTo(422);
            assertThat(desk.book().written()).contains(before);

            Visitor.Page changed = visitor.post(page, typed);
            assertThat(changed.text()).contains("Kept for this field: price of corn");
            typed.put("who", "R. Alder");
            typed.put("why", "bid of today");
            assertThat(visitor.post("/fields/North%2080/assumptions/keep", typed)
                            .status())
                    .isEqualTo(302);
            Season after = desk.book().written().orElseThrow();
            Field field = after.field("North 80").orElseThrow();
            assertThat(mean(after, field)).isGreaterThan(mean(before, field) + 0.5);
            Field other = after.field("Leased strip").orElseThrow();
            assertThat(mean(after, other)).isEqualTo(mean(before, other));
            SeasonChange change =
                    desk.book().changes(2027).get(desk.book().changes(2027).size() - 1);
            assertThat(change.who()).isEqualTo("R. Alder");
            assertThat(change.why()).isEqualTo("bid of today");
            desk.book().undo(change.number(), new By(null, "", By.Way.UNDO, null));
            assertThat(desk.book().written()).contains(before);
        }
    }

    private static double mean(Season season, Field field) {
        return Chances.of(season.assumptions(field, AssumptionQuantity.PRICE)
                        .orElseThrow()
                        .distribution())
                .mean();
    }
}
