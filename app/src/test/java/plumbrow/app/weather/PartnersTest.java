package plumbrow.app.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourRule;
import plumbrow.advice.hours.Practice;
import plumbrow.advice.hours.SprayRules;
import plumbrow.advice.means.Means;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.tank.HourLimit;
import plumbrow.advice.tank.TankBook;
import plumbrow.app.demo.DemoBook;

/** Rules of a tank from the demo's labels: each partner brings its own, and takes none of another's away. */
class PartnersTest {
    private static final Season DEMO = DemoBook.season();

    private static List<HourRule> rules(Season season, Field field, List<String> products) {
        return SprayRules.of(season, field, products, true, Practice.DEFAULT);
    }

    @Test
    void a_product_added_keeps_every_rule_there_was() {
        for (Field field : List.of(
                DEMO.field("Vine Bottom").orElseThrow(),
                DEMO.field("Airport").orElseThrow(),
                DEMO.field("Lower Mill").orElseThrow())) {
            for (Product one : DEMO.shelf().products()) {
                for (Product other : DEMO.shelf().products()) {
                    assertThat(rules(DEMO, field, List.of(one.name(), other.name())))
                            .as(one.name() + " and " + other.name() + " on " + field.name())
                            .containsAll(rules(DEMO, field, List.of(one.name())))
                            .containsAll(rules(DEMO, field, List.of(other.name())));
                }
            }
        }
    }

    @Test
    void a_label_that_nobody_read_for_the_crop_leaves_hours_unknown() {
        Field wheat = DEMO.field("Lower Mill").orElseThrow();
        assertThat(rules(DEMO, wheat, List.of("Ironweir 4L")))
                .anyMatch(rule ->
                        rule.whose() == HourRule.Whose.LABEL && rule.unread().equals("what the label asks of the day"));
        assertThat(rules(DEMO, wheat, List.of("Steadfall NIS")))
                .noneMatch(rule -> rule.whose() == HourRule.Whose.LABEL);
    }

    @Test
    void a_states_rule_holds_in_that_state_and_hours_in_words_wait_for_numbers() {
        Field iowa = DEMO.field("Vine Bottom").orElseThrow();
        Field minnesota = DEMO.field("South Slough").orElseThrow();
        HourLimit limit = new HourLimit("IA", "Ironweir 4L", HourLimit.Measure.AIR, null, 85.0, "invented rule");
        Season season = with(limit);
        assertThat(rules(season, iowa, List.of("Ironweir 4L")))
                .anyMatch(rule -> rule.owner().equals("state of IA") && rule.kind() == HourRule.Kind.AIR);
        assertThat(rules(season, iowa, List.of("Palemere 4")))
                .noneMatch(rule -> rule.owner().equals("state of IA"));
        assertThat(rules(season, minnesota, List.of("Ironweir 4L")))
                .noneMatch(rule -> rule.owner().equals("state of IA"));
        LabelLimit words = new LabelLimit(
                "Palemere 4", Crop.CORN, LabelLimit.Kind.HOURS, "one hour after sunrise to two before sunset", "p. 4");
        LabelLimit inversion =
                new LabelLimit("Palemere 4", null, LabelLimit.Kind.INVERSION, "not in an inversion", "p. 4");
        Season told = with(season, words, inversion);
        assertThat(rules(told, iowa, List.of("Palemere 4")))
                .anyMatch(rule -> rule.unread().contains("hours of day as numbers"))
                .anyMatch(rule -> rule.kind() == HourRule.Kind.INVERSION && rule.whose() == HourRule.Whose.LABEL);
        Season numbers = with(
                with(new HourLimit(null, "Palemere 4", HourLimit.Measure.AFTER_SUNRISE, 1.0, null, "p. 4")), words);
        assertThat(rules(numbers, iowa, List.of("Palemere 4")))
                .allMatch(rule -> rule.unread().isEmpty());
    }

    private static Season with(HourLimit limit) {
        Means means = DEMO.work().means();
        TankBook tank = means.tank();
        TankBook other = new TankBook(
                tank.sprayers(), tank.nozzles(), tank.mixing(), tank.water(), tank.additions(), List.of(limit));
        return DEMO.withPrograms(
                DEMO.programs(),
                new Work(
                        DEMO.work().sprayPlans(),
                        DEMO.work().crew(),
                        DEMO.work().log(),
                        new Means(
                                means.machines(),
                                means.windows(),
                                means.limits(),
                                means.breaks(),
                                means.supplies(),
                                other)));
    }

    private static Season with(Season season, LabelLimit... more) {
        Shelf shelf = season.shelf();
        LabelBook labels = shelf.labels();
        List<LabelLimit> limits = new ArrayList<>(labels.limits());
        limits.addAll(List.of(more));
        return season.withShelf(shelf.withLabels(new LabelBook(
                labels.terms(),
                labels.soilRates(),
                labels.setbacks(),
                labels.plantBacks(),
                labels.mixRules(),
                labels.specialLabels(),
                labels.cares(),
                labels.tolerances(),
                limits,
                labels.bulletins(),
                labels.differences())));
    }
}
