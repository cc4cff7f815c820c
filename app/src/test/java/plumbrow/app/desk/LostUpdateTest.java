package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.shown.Shown;

/** Several people change the book at the same moment: what was answered with done is kept, all else is refused with words. */
class LostUpdateTest {
    private static final String FIELD = "/fields/" + Shown.part(VineSeason.FIELD) + "/season";
    private static final String PAGE = FIELD + "?program=" + Shown.part(VineSeason.PROGRAM);
    private static final Season SEASON = VineSeason.season();

    /** What the page of the program says it shows, which is the same for every new desk. */
    private static String shown = "";

    private OpenDesk desk;
    private Visitor visitor;
    private String seen = "";

    @BeforeEach
    void open() {
        desk = OpenDesk.over(SEASON);
        visitor = new Visitor(desk);
        if (shown.isEmpty()) {
            shown = visitor.get(PAGE).hidden("seen");
        }
        seen = shown;
    }

    @AfterEach
    void close() {
        desk.close();
    }

    /** A keep read the season, changed it and put it back whole: of two at one moment one was lost, though both were done. */
    @Test
    void of_two_keeps_at_one_moment_none_is_lost() throws Exception {
        for (int round = 0; round < 5; round++) {
            String one = "one " + round;
            String two = "two " + round;
            List<Visitor.Page> pages = together(() -> keep("2026-06-03", one), () -> keep("2026-06-04", two));
            assertThat(pages).allMatch(page -> page.status() == 302);
            assertThat(programs()).contains(one, two);
        }
    }

    @Test
    void of_two_changes_of_one_program_the_second_is_refused_with_what_changed() throws Exception {
        List<Visitor.Page> pages = together(() -> change("2026-06-03"), () -> change("2026-06-04"));
        assertThat(pages).extracting(Visitor.Page::status).containsExactlyInAnyOrder(302, 409);
        boolean first = pages.get(0).status() == 302;
        String kept = first ? "2026-06-03" : "2026-06-04";
        String typed = first ? "2026-06-04" : "2026-06-03";
        Visitor.Page refused = pages.get(first ? 1 : 0);
        assertThat(refused.text())
                .contains("“Before and after” was changed in the book by somebody else since this page was opened")
                .contains("pass 4 was on 2026-05-30, Stillmeadow K, 40 fl oz/ac")
                .contains("and is on " + kept)
                .contains("Nothing was kept");
        assertThat(refused.body()).contains("value=\"" + typed + "\"");
        assertThat(day()).isEqualTo(kept);
        // The page came anew, so that he who looks at it may keep after all.
        seen = refused.hidden("seen");
        assertThat(change(typed).status()).isEqualTo(302);
        assertThat(day()).isEqualTo(typed);
    }

    @Test
    void a_form_that_does_not_say_what_it_was_filled_in_beside_changes_nothing() {
        seen = "";
        Visitor.Page page = change("2026-06-03");
        assertThat(page.status()).isEqualTo(409);
        assertThat(page.text()).contains("nothing was kept");
        assertThat(desk.book().season()).contains(SEASON);
    }

    /** A season that came in while a change was being kept was written over whole, while its import said it was done. */
    @Test
    void an_import_and_a_keep_at_one_moment_go_together_or_one_is_refused() throws Exception {
        Season coming = SEASON;
        for (int round = 0; round < 6; round++) {
            String adviser = "R. Alder " + round;
            String program = "kept " + round;
            coming = advised(desk.book().season().orElseThrow(), adviser);
            Season workbook = coming;
            List<Boolean> done = together(() -> keep("2026-06-03", program).status() == 302, () -> {
                try (Book other = Book.open(desk.file())) {
                    other.bring(workbook, null, false);
                    return true;
                } catch (MeanwhileException lacking) {
                    assertThat(lacking).hasMessageContaining("the program '" + program + "' of Vine Bottom");
                    return false;
                }
            });
            Season now = desk.book().season().orElseThrow();
            assertThat(done.get(0)).isTrue();
            assertThat(programs()).contains(program);
            assertThat(now.adviser().equals(adviser)).isEqualTo(done.get(1));
        }
    }

    @Test
    void an_undo_takes_out_its_own_change_and_nothing_else() throws Exception {
        String mine = keep("2026-06-03", "mine").header("Location");
        String others = keep("2026-06-04", "others").header("Location");
        assertThat(undo(mine)).contains("done=undone");
        assertThat(programs()).contains("others").doesNotContain("mine");
        assertThat(undo(mine)).contains("done=late");
        desk.put(advised(desk.book().season().orElseThrow(), "R. Alder"));
        assertThat(undo(others)).contains("done=undone");
        assertThat(programs()).doesNotContain("others");
        assertThat(desk.book().season().orElseThrow().adviser()).isEqualTo("R. Alder");

        String changed = change("2026-06-03").header("Location");
        keep("2026-06-05", "beside", visitor.get(PAGE).hidden("seen"));
        assertThat(undo(changed)).contains("done=undone");
        assertThat(day()).isEqualTo("2026-05-30");
        assertThat(programs()).contains("beside");
    }

    @Test
    void undo_and_keep_at_one_moment_lose_nothing() throws Exception {
        for (int round = 0; round < 5; round++) {
            String gone = "gone " + round;
            String kept = "kept " + round;
            String location = keep("2026-06-03", gone).header("Location");
            List<String> answers = together(
                    () -> undo(location), () -> keep("2026-06-04", kept).header("Location"));
            assertThat(answers.get(0)).contains("done=undone");
            assertThat(programs()).contains(kept).doesNotContain(gone);
        }
    }

    /** A decision rests on numbers: where they are no longer those the page showed, it is not written down. */
    @Test
    void a_choice_beside_numbers_that_changed_is_not_recorded() {
        String field = "/fields/" + Shown.part(VineSeason.FIELD);
        Visitor.Page page = visitor.get(field + "/weighing");
        String numbers = page.hidden("seen");
        change("2026-06-10");
        Map<String, String> choice = new LinkedHashMap<>();
        choice.put("program", "Before and after");
        choice.put("who", "R. Voss");
        choice.put("why", "as we always did");
        choice.put("seen", numbers);
        Visitor.Page refused = visitor.post("/log", field + "/choice", choice);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("changed by somebody else since you saw these programs");
        assertThat(refused.body()).contains("as we always did");
        assertThat(desk.book().choices(SEASON.year())).isEmpty();
    }

    private Visitor.Page keep(String date, String name) {
        return keep(date, name, seen);
    }

    private Visitor.Page keep(String date, String name, String seenThen) {
        Map<String, String> typed = typed(date);
        typed.put("seen", seenThen);
        typed.put("as", "new");
        typed.put("name", name);
        return visitor.post("/log", FIELD + "/keep", typed);
    }

    private Visitor.Page change(String date) {
        Map<String, String> typed = typed(date);
        typed.put("seen", seen);
        typed.put("as", "changed");
        return visitor.post("/log", FIELD + "/keep", typed);
    }

    private String undo(String location) {
        return visitor.post("/log", FIELD + "/undo", Map.of("kept", location.replaceAll(".*&kept=", "")))
                .header("Location");
    }

    private static Map<String, String> typed(String date) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("program", VineSeason.PROGRAM);
        typed.put("pass", "4");
        typed.put("date", date);
        typed.put("rate", "");
        return typed;
    }

    private List<String> programs() {
        return desk.book().season().orElseThrow().programs(VineSeason.FIELD).stream()
                .map(Program::name)
                .toList();
    }

    private String day() {
        return desk.book().season().orElseThrow().programs(VineSeason.FIELD).stream()
                .filter(program -> program.name().equals(VineSeason.PROGRAM))
                .map(program -> String.valueOf(program.passes().get(3).date()))
                .findFirst()
                .orElseThrow();
    }

    private static Season advised(Season season, String adviser) {
        return new Season(
                season.year(),
                season.asOf(),
                adviser,
                season.farms(),
                season.fields(),
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                season.work());
    }

    /** Runs both as nearly at once as threads can. */
    private static <T> List<T> together(Callable<T> one, Callable<T> other) throws Exception {
        CyclicBarrier start = new CyclicBarrier(2);
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            List<Future<T>> answers = new ArrayList<>();
            for (Callable<T> each : List.of(one, other)) {
                answers.add(both.submit(() -> {
                    start.await();
                    return each.call();
                }));
            }
            return List.of(answers.get(0).get(), answers.get(1).get());
        } finally {
            both.shutdown();
        }
    }
}
