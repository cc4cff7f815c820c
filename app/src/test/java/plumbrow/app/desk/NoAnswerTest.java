package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.OwnSeason;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.desk.shown.Shown;

/** What the desk says while it has no answer, and when it can't have one. */
class NoAnswerTest {
    /** The adviser, held up after its first field until it is let go. */
    private static final class HeldUp implements Weigher {
        private final Weigher adviser = Weigher.adviser();
        private final CountDownLatch begun = new CountDownLatch(1);
        private final CountDownLatch letGo = new CountDownLatch(1);
        private final AtomicInteger weighings = new AtomicInteger();

        @Override
        public FieldAdvice adviseField(OwnSeason own, WeighingOptions options) {
            if (weighings.incrementAndGet() > 1) {
                begun.countDown();
                try {
                    letGo.await();
                } catch (InterruptedException stopped) {
                    Thread.currentThread().interrupt();
                    throw new IllegalStateException("stopped", stopped);
                }
            }
            return adviser.adviseField(own, options);
        }
    }

    private static SeasonWeighing weighing(OpenDesk desk) {
        return desk.context()
                .getBean(Weighings.class)
                .whole(desk.book().season().orElseThrow());
    }

    @Test
    void an_empty_book_says_what_to_do() {
        try (OpenDesk desk = OpenDesk.over()) {
            Visitor visitor = new Visitor(desk);
            assertThat(visitor.get("/").text()).contains("Nothing is in this book yet", "Ask one question");
            assertThat(visitor.get("/fields/North%2080").header("Location")).isEqualTo("/");
            assertThat(visitor.get("/api/advice").body()).contains("The book is empty");
            assertThat(visitor.get("/binder.pdf").header("Location")).isEqualTo("/");
        }
    }

    @Test
    void a_season_that_lacks_its_assumptions_says_so() {
        Season full = DeskSeason.of(2027);
        Season lacking = new Season(
                full.year(),
                full.asOf(),
                full.adviser(),
                full.farms(),
                full.fields(),
                full.history(),
                full.shelf(),
                full.pests(),
                full.programs(),
                List.of());
        try (OpenDesk desk = OpenDesk.over(lacking)) {
            Visitor visitor = new Visitor(desk);
            var page = visitor.get("/fields/North%2080/weighing");
            assertThat(page.status()).isEqualTo(422);
            assertThat(page.text()).contains("The season lacks something", "price");
            var api = visitor.get("/api/advice");
            assertThat(api.status()).isEqualTo(422);
            assertThat(api.body()).contains("\"error\" : ");
        }
    }

    @Test
    void a_long_weighing_counts_its_fields_and_can_be_stopped_and_begun_again() throws InterruptedException {
        HeldUp weigher = new HeldUp();
        try (OpenDesk desk = OpenDesk.weighedBy(weigher, DeskSeason.of(2027))) {
            weigher.begun.await();
            while (weighing(desk).fieldsDone() < 1) {
                Thread.onSpinWait();
            }
            Visitor visitor = new Visitor(desk);
            assertThat(visitor.get("/").text()).contains("Weighing: 1 of 3 fields done");
            assertThat(visitor.post("/weighing/stop", java.util.Map.of()).header("Location"))
                    .isEqualTo("/");
            assertThat(visitor.get("/").text()).contains("The weighing was stopped after 1 of 3 fields");
            weigher.letGo.countDown();
            visitor.post("/weighing/again", java.util.Map.of());
            desk.weighed();
            assertThat(visitor.get("/").text()).contains("Of 3 fields on 130 acres, 2 have an answer");
        }
    }

    @Test
    void an_answer_is_worked_out_once_and_anew_when_the_season_changes() {
        HeldUp weigher = new HeldUp();
        weigher.letGo.countDown();
        try (OpenDesk desk = OpenDesk.weighedBy(weigher, DeskSeason.of(2026))) {
            desk.weighed();
            Visitor visitor = new Visitor(desk);
            String before = visitor.get("/fields/North%2080/weighing").text();
            visitor.get("/fields/North%2080/weighing");
            assertThat(weigher.weighings).hasValue(3);
            desk.put(DeskSeason.of(2027));
            desk.weighed();
            String after = visitor.get("/fields/North%2080/weighing").text();
            assertThat(weigher.weighings).hasValue(6);
            assertThat(before).contains("Season 2026");
            assertThat(after).contains("Season 2027");
        }
    }

    @Test
    void a_fault_of_the_program_shows_a_sentence_and_no_trace() {
        Weigher broken = (own, options) -> {
            throw new IllegalStateException("broken on purpose");
        };
        try (OpenDesk desk = OpenDesk.weighedBy(broken, DeskSeason.of(2027))) {
            for (String path : List.of(
                    "/", "/fields/" + Shown.part(DeskSeason.HOME), "/api/advice", "/advice.xlsx?grower=R.+Alder")) {
                String page = Plain.get(desk.address() + path);
                assertThat(page).startsWith("500 ");
                assertThat(page).doesNotContain("broken on purpose", "Exception", "plumbrow.app");
            }
            assertThat(Plain.get(desk.address() + "/")).contains("This is a fault of Plumbrow, not yours");
        }
    }
}
