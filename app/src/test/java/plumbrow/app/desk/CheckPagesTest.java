package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.GatePage;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.Season;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.CheckSummary;
import plumbrow.app.json.Json;

/** The check and the log on the desk: what they say, and what they refuse. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init")
class CheckPagesTest {
    private static final Season SEASON = DemoBook.season();

    private OpenDesk desk;
    private OpenDesk logged;
    private Visitor visitor;
    private Visitor writer;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(SEASON);
        visitor = new Visitor(desk);
        logged = OpenDesk.over(SEASON);
        writer = new Visitor(logged);
    }

    @AfterAll
    void close() {
        desk.close();
        logged.close();
    }

    @Test
    void the_farm_is_checked_in_one_go() {
        SeasonCheck check = SeasonCheck.of(SEASON);
        String page = visitor.get("/check").text();
        assertThat(page).contains(check.sentence());
        assertThat(check.programs())
                .allSatisfy(
                        program -> assertThat(page).contains(program.program().name()));
        assertThat(check.lookUps()).isNotEmpty().isSortedAccordingTo((a, b) -> b.settles() - a.settles());
        assertThat(check.lookUps().stream().mapToInt(LookUp::settles).sum())
                .isEqualTo(check.programs().stream()
                        .mapToInt(program -> program.count(Standing.UNKNOWN))
                        .sum());
        assertThat(visitor.get("/api/check").body().strip())
                .isEqualTo(Json.of(CheckSummary.of(check)).strip());
    }

    @Test
    void a_program_lawful_in_one_state_is_barred_across_the_line() {
        String page = visitor.get("/check").text();
        assertThat(page)
                .contains(
                        "Lawful on one side of a line, barred on the other",
                        "Depot Eighty, Kossuth County, IA: Registered in IA.",
                        "Levee, Martin County, MN and Faribault County, MN: Trenchline 2 is registered in IA, not in MN.",
                        "The label excludes Martin County, MN.",
                        "The label does not exclude Faribault County, MN.");
        assertThat(visitor.get("/fields/Levee/check?program=Single%20trait%2C%20Hartsedge")
                        .text())
                .contains("Martin County, MN and Faribault County, MN", "Barred 1 barred");
    }

    @Test
    void a_field_shows_every_finding_with_its_gate() {
        Field field = SEASON.field("Airport").orElseThrow();
        for (ProgramCheck program :
                SeasonCheck.of(SEASON, java.util.List.of(field)).programs()) {
            var page = visitor.get("/fields/Airport/check?program="
                    + Shown.part(program.program().name()));
            assertThat(program.findings())
                    .allSatisfy(finding ->
                            assertThat(page.text()).contains(Shown.capital(finding.says()), finding.clears()));
            assertThat(program.findings())
                    .allSatisfy(finding -> assertThat(page.body()).contains("/gates/" + finding.gate()));
        }
    }

    @Test
    void the_sieve_lets_through_what_is_asked_for() {
        String barred = visitor.get("/check?standing=barred&protects=next-crop").text();
        assertThat(barred).contains("No program has such a finding.");
        assertThat(visitor.get("/check?standing=barred&protects=distribution").text())
                .contains("Single trait, Trenchline in furrow");
        assertThat(visitor.get("/check?standing=nonsense").status()).isEqualTo(200);
        assertThat(visitor.get("/fields/Nowhere/check").status()).isEqualTo(404);
        assertThat(visitor.get("/api/fields/Levee/check?program=none").status()).isEqualTo(404);
    }

    @Test
    void every_gate_has_its_page() {
        String all = visitor.get("/gates").text();
        for (GatePage page : GatePage.all()) {
            assertThat(all).contains(page.gate().question());
            assertThat(visitor.get("/gates/" + page.gate().id()).text())
                    .contains(Shown.bare(page.source()), Shown.bare(page.needs()));
        }
        assertThat(visitor.get("/gates/none").status()).isEqualTo(404);
        assertThat(visitor.get("/api/gates/bees").body()).contains("\"question\" : \"May the spray harm bees?\"");
    }

    @Test
    void the_check_is_printed() {
        assertThat(visitor.get("/check.pdf").body()).startsWith("%PDF-");
        assertThat(visitor.get("/fields/Levee/check.pdf").body()).startsWith("%PDF-");
    }

    @Test
    void scouted_and_too_few_is_a_line_of_the_log_and_settles_the_pass() {
        try (OpenDesk own = OpenDesk.over(SEASON)) {
            Visitor there = new Visitor(own);
            Map<String, String> line = Map.of(
                    "field",
                    "Airport",
                    "date",
                    "2026-08-12",
                    "product",
                    "Sweepline 1",
                    "rate",
                    "0",
                    "rate_unit",
                    "fl oz/ac",
                    "source",
                    "field notes");
            assertThat(there.post("/log", "/log", line).header("Location")).isEqualTo("/log#lines");
            assertThat(there.get("/log").text()).contains("Sweepline 1 not made: scouting found too few on Airport");
            assertThat(there.get("/fields/Airport").text())
                    .contains("Scouted on 2026-08-12: fewer than 250 aphids/plant, so Sweepline 1 is not put on.");
            assertThat(there.get("/fields/Airport/check?program=Scout%20for%20aphids%20first")
                            .text())
                    .doesNotContain("no bees at work");
            assertThat(there.get("/plan?find=Airport").text()).contains("Airport");
        }
    }

    @Test
    void the_log_takes_lines_and_strikes_them() {
        Map<String, String> line = Map.of(
                "field",
                "Quarry",
                "date",
                "2026-05-04",
                "product",
                "Trenchline 2",
                "rate",
                "4",
                "rate_unit",
                "fl oz/ac",
                "source",
                "log book");
        assertThat(writer.post("/log", "/log", Map.of("field", "Quarry")).status())
                .isEqualTo(422);
        assertThat(writer.post("/log", "/log", line).header("Location")).isEqualTo("/log#lines");
        String page = writer.get("/log").text();
        assertThat(page).contains("Trenchline 2, 4 fl oz/ac on Quarry, May 4, 2026");
        assertThat(writer.get("/fields/Quarry/check").text()).contains("What the log says went on");
        assertThat(writer.post("/log", "/log/2/strike", Map.of("who", "D. Marsh"))
                        .status())
                .isEqualTo(422);
        assertThat(writer.post("/log", "/log/2/strike", Map.of("who", "D. Marsh", "why", "other field"))
                        .header("Location"))
                .isEqualTo("/log#line-2");
        assertThat(writer.post("/log", "/log/2/strike", Map.of("who", "D. Marsh", "why", "again"))
                        .text())
                .contains("Line 2 of the log is voided already, by D. Marsh: other field");
        assertThat(writer.get("/log").text()).contains("voided by D. Marsh");
    }

    @Test
    void programs_write_in_the_log_and_pages_of_others_can_not() throws Exception {
        String line = "{\"field\":\"Quarry\",\"date\":\"2026-05-05\",\"product\":\"Trenchline 2\",\"rate\":3,"
                + "\"rate_unit\":\"fl oz/ac\",\"source\":\"memory\"}";
        int before = lines();
        assertThat(json("/api/log", line, null).getStatus()).isEqualTo(201);
        assertThat(lines()).isEqualTo(before + 1);
        assertThat(json("/api/log", line, "http://example.com").getStatus()).isEqualTo(403);
        assertThat(json("/api/log", "{}", null).getContentAsString(StandardCharsets.UTF_8))
                .contains("The line was not written down. date: Nothing there; expected a date");
        assertThat(json("/api/log", "[1", null).getStatus()).isEqualTo(400);
        assertThat(writer.get("/api/log?field=Quary").status()).isEqualTo(404);
        assertThat(writer.get("/api/log?field=Quary").text()).contains("did you mean Quarry?");
        assertThat(writer.get("/api/log?field=Quarry").status()).isEqualTo(200);
        assertThat(json("/api/log/999/strike", "{\"who\":\"a\",\"why\":\"b\"}", null)
                        .getStatus())
                .isEqualTo(409);
        assertThat(writer.mvc()
                        .perform(post("/api/log")
                                .contentType(MediaType.TEXT_PLAIN)
                                .content(line))
                        .andReturn()
                        .getResponse()
                        .getStatus())
                .isEqualTo(403);
        assertThat(lines()).isEqualTo(before + 1);
    }

    private int lines() {
        return writer.get("/api/log?field=Quarry").body().split("\"number\"", -1).length - 1;
    }

    private MockHttpServletResponse json(String address, String body, @org.jspecify.annotations.Nullable String origin)
            throws Exception {
        var request = post(address).contentType(MediaType.APPLICATION_JSON).content(body);
        if (origin != null) {
            request.header("Origin", origin);
        }
        return writer.mvc().perform(request).andReturn().getResponse();
    }
}
