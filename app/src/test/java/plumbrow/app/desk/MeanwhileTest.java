package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.OwnSeason;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.AdviceSummary;
import plumbrow.app.json.Json;

/** What somebody who reads gets while somebody else writes. */
class MeanwhileTest {
    private static final String HOME = "/fields/" + Shown.part(DeskSeason.HOME);

    /** The adviser, who waits at the fields he is told to wait at, and notes what he was asked. */
    private static final class Waiting implements Weigher {
        private final Weigher adviser = Weigher.adviser();
        private final Predicate<Season> waits;
        private final CountDownLatch asked = new CountDownLatch(1);
        private final CountDownLatch letGo = new CountDownLatch(1);
        private final List<String> fields = new CopyOnWriteArrayList<>();

        private Waiting(Predicate<Season> waits) {
            this.waits = waits;
        }

        @Override
        public FieldAdvice adviseField(OwnSeason own, WeighingOptions options) {
            fields.add(own.field().name());
            if (waits.test(own.season())) {
                asked.countDown();
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

    @Test
    void whoever_waits_for_an_answer_gets_it_though_somebody_writes_into_the_book() throws Exception {
        Waiting weigher = new Waiting(season -> true);
        try (OpenDesk desk = OpenDesk.weighedBy(weigher, DeskSeason.of(2027))) {
            weigher.asked.await();
            List<CompletableFuture<String>> readers = new ArrayList<>();
            for (String path : List.of(
                    "/api/advice", "/advice.xlsx?grower=R.+Alder", HOME + "/weighing", "/api" + HOME + "/advice")) {
                readers.add(CompletableFuture.supplyAsync(() -> Plain.get(desk.address() + path)));
            }
            for (int i = 0; i < 3; i++) {
                desk.book().log(done(i), java.time.Instant.EPOCH);
                assertThat(Plain.get(desk.address() + "/")).startsWith("200 ");
            }
            weigher.letGo.countDown();
            for (CompletableFuture<String> reader : readers) {
                assertThat(reader.get(120, TimeUnit.SECONDS)).startsWith("200 ");
            }
            weighed(desk);
            assertThat(Plain.get(desk.address() + "/")).contains("have an answer");
        }
    }

    @Test
    void a_change_of_one_field_weighs_that_field_and_no_other() {
        Waiting weigher = new Waiting(season -> false);
        try (OpenDesk desk = OpenDesk.weighedBy(weigher, DeskSeason.of(2027))) {
            weighed(desk);
            weigher.fields.clear();
            desk.book().log(done(0), java.time.Instant.EPOCH);
            weighed(desk);
            Plain.get(desk.address() + "/api/advice");
            assertThat(weigher.fields).containsExactly(DeskSeason.HOME);
        }
    }

    /** While the old season is being weighed the season changes: the old answer comes late and must not stand for the new. */
    @Test
    void an_answer_of_an_earlier_season_that_comes_late_is_not_taken_for_the_answer_of_this_one() throws Exception {
        Season before = DeskSeason.of(2027);
        Pests none = new Pests(List.of(), List.of(), List.of());
        Season after = before.withPests(none);
        Waiting weigher = new Waiting(season -> !season.pests().insects().isEmpty());
        try (OpenDesk desk = OpenDesk.weighedBy(weigher, before)) {
            weigher.asked.await();
            CompletableFuture<String> early =
                    CompletableFuture.supplyAsync(() -> Plain.get(desk.address() + "/api" + HOME + "/advice"));
            desk.put(after);
            String expected = "200 " + Json.of(AdviceSummary.OfField.of(after, advice(after)));
            assertThat(Plain.get(desk.address() + "/api" + HOME + "/advice")).isEqualTo(expected);
            weigher.letGo.countDown();
            assertThat(early.get(120, TimeUnit.SECONDS)).startsWith("200 ");
            assertThat(Plain.get(desk.address() + "/api" + HOME + "/advice")).isEqualTo(expected);
            weighed(desk);
            assertThat(Plain.get(desk.address() + "/api/advice"))
                    .contains(advice(after).sentence())
                    .doesNotContain(advice(before).sentence());
        }
    }

    @Test
    void the_season_is_read_once_and_anew_only_when_the_book_has_changed() {
        try (OpenDesk desk = OpenDesk.over(DeskSeason.of(2027))) {
            Season read = desk.book().season().orElseThrow();
            assertThat(desk.book().season().orElseThrow()).isSameAs(read);
            desk.put(DeskSeason.of(2027));
            assertThat(desk.book().season().orElseThrow()).isSameAs(read);
            desk.book().log(done(0), java.time.Instant.EPOCH);
            Season logged = desk.book().season().orElseThrow();
            assertThat(logged.work().log(DeskSeason.HOME)).hasSize(1);
            assertThat(logged.shelf()).isSameAs(read.shelf());
            desk.put(DeskSeason.of(2028));
            assertThat(desk.book().season().orElseThrow().year()).isEqualTo(2028);
        }
    }

    /** What is kept is kept by the field's own season; that is sound only if nothing else goes into the answer. */
    @Test
    void the_answer_of_a_field_depends_on_nothing_but_its_own_season() {
        Season season = plumbrow.app.demo.DemoBook.season();
        WeighingOptions few = WeighingOptions.DEFAULT.withDraws(200);
        List<FieldAdvice> together =
                Adviser.advise(season, few, (done, of) -> {}).fields();
        OwnSeasons own = OwnSeasons.of(season);
        DrawSource source = new DrawSource(few.draws(), few.seed());
        for (int i = 0; i < season.fields().size(); i++) {
            Field field = season.fields().get(i);
            assertThat(own.of(field).season()).isEqualTo(FieldSeasons.of(season, field));
            assertThat(Adviser.adviseField(own.of(field), few, source)).isEqualTo(together.get(i));
        }
    }

    private static FieldAdvice advice(Season season) {
        return Adviser.adviseField(season, season.field(DeskSeason.HOME).orElseThrow(), WeighingOptions.DEFAULT);
    }

    private static void weighed(OpenDesk desk) {
        desk.weighed();
    }

    private static Done done(int day) {
        return new Done(
                DeskSeason.HOME,
                LocalDate.of(2026, 5, 4 + day),
                "Stonefly 3G",
                new Amount(3, FarmUnit.LB),
                100,
                null,
                DeskSeason.SOURCE);
    }
}
