package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.SmallSeason;

/** A season of many fields has pages as large as one of a hundred, and whatever is not on the first page is found by name. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init")
class LargeSeasonPagesTest {
    private static final int FIELDS_A_FARM = 40;

    private OpenDesk hundred;
    private OpenDesk large;
    private Visitor few;
    private Visitor many;

    @BeforeAll
    void open() {
        hundred = OpenDesk.over(season(100));
        large = OpenDesk.over(season(480));
        few = new Visitor(hundred);
        many = new Visitor(large);
    }

    @AfterAll
    void close() {
        hundred.close();
        large.close();
    }

    @Test
    void pages_of_many_fields_are_as_large_as_those_of_a_hundred() {
        for (String page : List.of("/check", "/check?standing=unknown", "/plan", "/season", "/map", "/log", "/today")) {
            int ofFew = few.get(page).body().length();
            int ofMany = many.get(page).body().length();
            assertThat(ofMany)
                    .as(page)
                    .isLessThan(Math.max(ofFew * 5 / 4, 60_000))
                    .isLessThan(250_000);
        }
    }

    @Test
    void every_field_is_found_by_its_name_its_farm_and_its_grower() {
        assertThat(many.get("/plan").text()).contains("12 of 40 fields").doesNotContain("Ground 479");
        assertThat(many.get("/plan?find=Ground%20479").text())
                .contains("Ground 479 seed alone")
                .doesNotContain("Ground 478");
        assertThat(many.get("/plan?find=grower%2012").text()).contains("Farm 12", "Ground 441", "Ground 480");
        assertThat(many.get("/plan?farm=Farm%2012").text())
                .contains("Ground 441", "Ground 480")
                .doesNotContain("Farm 11");
        assertThat(many.get("/plan?farm=Farm%2013").status()).isEqualTo(404);
        assertThat(many.get("/plan?page=2").text()).contains("11 to 12 of 12", "Farm 12");
        assertThat(many.get("/check?find=grower%2012").text())
                .contains("Ground 441", "What stands in the way of what you look for")
                .doesNotContain("Ground 440");
        assertThat(many.get("/season?find=Farm%2012").text())
                .contains("Ground 480")
                .doesNotContain("Ground 440");
        assertThat(many.get("/season?page=10").text()).contains("451 to 480 of 480", "Ground 480");
        assertThat(many.get("/season?find=nowhere").text()).contains("No field of that name.");
        assertThat(many.get("/plan?find=nowhere").text()).contains("No farm or field of that name is planned.");
    }

    @Test
    void the_first_page_is_sieved_by_grower_crop_and_what_is_wanted() {
        hundred.weighed();
        assertThat(few.get("/").text()).contains("Needs you (100)", "Settled (0)", "Wanted:", "Grower 3");
        assertThat(few.get("/?show=all&grower=Grower%203").text())
                .contains("Ground 81")
                .doesNotContain("Ground 80");
        assertThat(few.get("/?show=all&crop=wheat").text()).contains("No field of that kind.");
        assertThat(few.get("/?show=all&status=due").text()).contains("No field of that kind.");
        assertThat(few.get("/?find=Ground%2081").header("Location")).startsWith("/fields/Ground%2081");
    }

    /** One field that can't be weighed yet, as after a season began, keeps no other from its answer. */
    @Test
    void a_field_that_lacks_its_programs_is_among_those_that_need_somebody() {
        Season whole = season(3);
        Season lacking = whole.withPrograms(whole.programs().stream()
                .filter(program -> !program.field().equals("Ground 2"))
                .toList());
        try (OpenDesk desk = OpenDesk.over(lacking)) {
            desk.weighed();
            assertThat(new Visitor(desk).get("/").text())
                    .contains("Of 3 fields", "2 have an answer", "Enter what is lacking", "it has no program");
            assertThat(new Visitor(desk).get("/?status=lacking").text())
                    .contains("Ground 2")
                    .doesNotContain("Ground 1");
        }
    }

    @Test
    void every_matter_is_on_one_of_the_pages() {
        String first = many.get("/check").text();
        String second = many.get("/check?matters=2").text();
        assertThat(first).contains("1 to 25 of ");
        assertThat(second).contains("26 to 50 of ").doesNotContain("1 to 25 of ");
    }

    private static Season season(int count) {
        Season one = SmallSeason.of(2027);
        List<Farm> farms = new ArrayList<>();
        List<Field> fields = new ArrayList<>();
        List<Program> programs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String farm = "Farm " + (i / FIELDS_A_FARM + 1);
            String name = "Ground " + (i + 1);
            if (i % FIELDS_A_FARM == 0) {
                farms.add(new Farm(farm, "Grower " + farm.substring(5), 1, 1));
            }
            Field field = one.fields().get(0);
            fields.add(new Field(
                    name, farm, 80, null, field.state(), field.county(), field.crop(), null, 3.4, null, null));
            one.programs()
                    .forEach(program -> programs.add(new Program(
                            name,
                            program.name(),
                            program.baseline(),
                            program.refuge(),
                            program.note(),
                            program.passes())));
        }
        return new Season(
                one.year(),
                one.asOf(),
                one.adviser(),
                farms,
                fields,
                List.of(),
                one.shelf(),
                new Pests(List.of(), List.of(), List.of()),
                programs,
                one.assumptions(),
                one.ground(),
                one.work());
    }
}
