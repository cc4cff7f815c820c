package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Field;
import plumbrow.advice.lookback.Expectation;
import plumbrow.advice.lookback.FieldLook;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.Choice;
import plumbrow.app.demo.DemoBook;

/** A harvest is entered and told beside what was expected; what is wrong is said beside its box. */
class LookBackPagesTest {
    private static final String FIELD = "Church Quarter";

    private static String chooses(OpenDesk desk) {
        Season season = desk.book().season().orElseThrow();
        Field field = season.field(FIELD).orElseThrow();
        FieldAdvice advice = Adviser.adviseField(season, field, WeighingOptions.DEFAULT);
        String program = String.valueOf(advice.advised());
        List<Expectation> expected = Expectation.of(season, advice, program);
        desk.book()
                .choose(
                        new Choice(season.year(), FIELD, program, "R. Alder", Instant.EPOCH, "", 0.7, 500.0),
                        season,
                        expected);
        assertThat(expected).hasSameSizeAs(season.programs(FIELD));
        Expectation own = expected.stream()
                .filter(one -> one.program().equals(program))
                .findFirst()
                .orElseThrow();
        assertThat(own.meanMarginUsdPerAcre())
                .isCloseTo(advice.advisedProgram().orElseThrow().meanMarginUsdPerAcre(), within(1e-9));
        return program;
    }

    @Test
    void a_harvest_is_held_against_what_was_expected() {
        try (OpenDesk desk = OpenDesk.over(DemoBook.season())) {
            Visitor visitor = new Visitor(desk);
            assertThat(visitor.get("/lookback").text()).contains("Nothing was harvested yet.");
            String program = chooses(desk);
            Map<String, String> typed = new HashMap<>(Map.of("year", "2026", "field", FIELD, "yield_bu_ac", "20O"));
            Visitor.Page wrong = visitor.post("/lookback", "/lookback", typed);
            assertThat(wrong.status()).isEqualTo(422);
            assertThat(wrong.text()).contains("Found “20O”", "who says so", "Nothing was written down.");
            assertThat(wrong.body()).contains("value=\"20O\"");
            assertThat(desk.book().harvests()).isEmpty();

            typed.put("yield_bu_ac", "200");
            typed.put("moisture_pct", "19");
            typed.put("price_usd_bu", "4.10");
            typed.put("who", "R. Alder");
            typed.put("source", "scale tickets");
            assertThat(visitor.post("/lookback", "/lookback", typed).status()).isEqualTo(302);
            FieldLook look = desk.book().lookBack().fields().get(0);
            double yield = 200 * 81 / 84.5;
            assertThat(look.program()).isEqualTo(program);
            assertThat(look.yieldBuPerAcre()).isCloseTo(yield, within(1e-9));
            Season season = desk.book().season().orElseThrow();
            Field field = season.field(FIELD).orElseThrow();
            // By hand: the whole crop is the operator's on this farm.
            double handling = Chances.of(season.assumptions(field, AssumptionQuantity.HANDLING)
                            .orElseThrow()
                            .distribution())
                    .mean();
            assertThat(season.farm(field.farm()).orElseThrow().cropShare()).isEqualTo(1);
            double cost = Double.valueOf(String.valueOf(look.costUsdPerAcre()));
            if (season.assumptions(field, AssumptionQuantity.DRYING).isEmpty()) {
                assertThat(look.marginUsdPerAcre()).isCloseTo((4.10 - handling) * yield - cost, within(1e-9));
            }
            Visitor.Page page = visitor.get("/lookback");
            assertThat(page.text()).contains(program + " earned", "Expected were", "would have earned", "not observed");
            assertThat(visitor.get("/api/lookback").body()).contains("\"margin_usd_per_acre\"");

            typed.put("strip", "yes");
            typed.put(
                    "program",
                    season.programs(FIELD).stream()
                            .filter(Program::baseline)
                            .map(Program::name)
                            .findFirst()
                            .orElseThrow());
            typed.put("yield_bu_ac", "150");
            assertThat(visitor.post("/lookback", "/lookback", typed).status()).isEqualTo(302);
            assertThat(desk.book().lookBack().honesty().odds().cases()).isEqualTo(1);
            assertThat(visitor.get("/lookback").text()).contains("was ahead, stated in");
            assertThat(desk.book().harvests()).hasSize(2);
            typed.put("field", "Nowhere");
            assertThat(visitor.post("/lookback", "/lookback", typed).status()).isEqualTo(422);
            assertThat(visitor.get("/lookback?year=1999").status()).isEqualTo(404);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void the_page_is_read(int width) {
        SoftAssertions softly = new SoftAssertions();
        try (OpenDesk desk = OpenDesk.over(DemoBook.season());
                Chromium browser = Chromium.open(width, 900)) {
            String program = chooses(desk);
            for (boolean strip : new boolean[] {false, true}) {
                desk.book()
                        .harvest(new Harvest(
                                2026,
                                FIELD,
                                strip
                                        ? desk.book()
                                                .season()
                                                .orElseThrow()
                                                .programs(FIELD)
                                                .get(0)
                                                .name()
                                        : program,
                                strip,
                                strip ? 170 : 190,
                                null,
                                4.1,
                                null,
                                "R. Alder",
                                Instant.EPOCH,
                                "tickets"));
            }
            browser.go(desk.address() + "/lookback");
            browser.picture("lookback");
            softly.assertThat(browser.cutOff()).isEmpty();
            softly.assertThat(browser.smallTargets()).isEmpty();
            softly.assertThat(browser.inaccessible()).isEmpty();
            softly.assertThat(browser.complaints()).isEmpty();
        }
        softly.assertAll();
    }
}
