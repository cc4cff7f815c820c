package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By.ByCssSelector;
import org.openqa.selenium.support.ui.ExpectedConditions;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Field;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.nextseason.BeginAsked;
import plumbrow.advice.nextseason.NextSeason;
import plumbrow.advice.prices.OldPrice;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.app.book.Book;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.workbook.WorkbookReader;
import plumbrow.documents.workbook.WorkbookWriter;

/** The next season begins where the last one ended, whole or not at all, and can be taken back. */
class NextSeasonTest {
    private static final LocalDate DAY = LocalDate.of(2027, 1, 10);

    private static By by() {
        return new By("R. Alder", "", By.Way.DESK, Instant.EPOCH);
    }

    private static BeginAsked asked(Map<String, Crop> crops) {
        return new BeginAsked(2027, DAY, crops, Map.of());
    }

    @Test
    void a_season_turns_crops_and_keeps_the_log(@TempDir Path folder) {
        Season demo = DemoBook.season();
        try (Book book = Book.create(folder.resolve("a.book"))) {
            book.put(demo);
            Field church = demo.field("Church Quarter").orElseThrow();
            String program = demo.programs(church.name()).get(0).name();
            Done granules = new Done(
                    church.name(), LocalDate.of(2026, 4, 28), "Undersod G", new Amount(4, FarmUnit.LB), 50, "x", "log");
            book.log(granules, Instant.EPOCH);
            book.harvest(new Harvest(
                    2026, church.name(), program, false, 200, 19.0, 4.1, null, "R. Alder", Instant.EPOCH, "ticket"));
            NextSeason next = book.beginNext(by(), asked(Map.of("Levee", Crop.CORN)), null);
            Season begun = book.latestWritten().orElseThrow();

            assertThat(begun.year()).isEqualTo(2027);
            assertThat(begun.fields()).hasSameSizeAs(demo.fields());
            assertThat(begun.field("Levee").orElseThrow().crop()).isEqualTo(Crop.CORN);
            assertThat(begun.field("Home Place").orElseThrow().crop()).isEqualTo(Crop.CORN);
            assertThat(begun.field("Mill Field").orElseThrow().crop()).isEqualTo(Crop.SOYBEAN);
            assertThat(begun.programs("Levee")).hasSameSizeAs(demo.programs("Levee"));
            assertThat(begun.programs("Home Place")).isEmpty();
            assertThat(begun.programs("Levee").get(0).passes().get(0).date())
                    .isEqualTo(Objects.requireNonNull(demo.programs("Levee")
                                    .get(0)
                                    .passes()
                                    .get(0)
                                    .date())
                            .plusYears(1));
            // 200 bu at 19 % are 200 × 81 ÷ 84.5 at 15.5 %.
            assertThat(begun.history().stream()
                            .filter(year -> year.field().equals(church.name()) && year.year() == 2026)
                            .map(CropYear::yieldBuPerAcre))
                    .containsExactly(200 * 81 / 84.5);
            // Half of the field's acres at 4 lb.
            Amount before =
                    demo.shelf().product("Undersod G").map(Product::onHand).orElse(null);
            Amount after =
                    begun.shelf().product("Undersod G").map(Product::onHand).orElse(null);
            if (before != null && after != null) {
                assertThat(before.value() - after.value()).isEqualTo(4 * 0.5 * church.acres());
            }
            assertThat(begun.work().log()).as("for plant-back").contains(granules);
            assertThat(next.old()).isNotEmpty().allMatch(old -> old.forYear() == 2027 && old.of() == 2026);
            assertThat(book.season(2026))
                    .as("the season before")
                    .contains(book.season(2026).orElseThrow());
            assertThat(book.check()).isEmpty();

            Path workbook = folder.resolve("w");
            WorkbookWriter.write(begun, workbook);
            List<String> told = new ArrayList<>();
            assertThat(WorkbookReader.read(workbook, told::add)).isEqualTo(begun);
        }
    }

    @Test
    void what_was_begun_is_taken_back_as_long_as_nothing_was_done(@TempDir Path folder) {
        try (Book book = Book.create(folder.resolve("a.book"))) {
            book.put(DeskSeason.of(2026));
            Season before = book.latestWritten().orElseThrow();
            book.beginNext(by(), asked(Map.of()), before);
            int number = book.changes(2027).get(0).number();
            book.undo(number, by());
            assertThat(book.latestWritten()).contains(before);
            assertThat(book.seasons()).containsExactly(2026);
            assertThat(book.check()).isEmpty();

            book.beginNext(by(), asked(Map.of()), before);
            Season begun = book.latestWritten().orElseThrow();
            book.change(season -> season.withFields(season.fields().stream()
                    .map(field -> new Field(
                            field.name(),
                            field.farm(),
                            field.acres() + 1,
                            field.boundary(),
                            field.state(),
                            field.county(),
                            field.crop(),
                            field.texture(),
                            field.organicMatterPct(),
                            field.ph(),
                            field.slopePct()))
                    .toList()));
            int again = book.changes(2027).stream()
                    .filter(SeasonChange::began)
                    .map(SeasonChange::number)
                    .reduce((one, later) -> later)
                    .orElseThrow();
            assertThatThrownBy(() -> book.undo(again, by()))
                    .isInstanceOf(MeanwhileException.class)
                    .hasMessageContaining("worked in");
            assertThatThrownBy(() ->
                            book.beginNext(by(), new BeginAsked(2028, DAY.plusYears(1), Map.of(), Map.of()), begun))
                    .isInstanceOf(MeanwhileException.class)
                    .hasMessageContaining("looked at");
            assertThat(book.seasons()).containsExactly(2026, 2027);
        }
    }

    @Test
    void what_can_not_begin_is_refused_with_a_sentence_and_nothing_changes(@TempDir Path folder) {
        try (Book book = Book.create(folder.resolve("a.book"))) {
            assertThatThrownBy(() -> book.next(asked(Map.of()))).isInstanceOf(BookException.class);
            book.put(DeskSeason.of(2026));
            for (BeginAsked wrong : List.of(
                    new BeginAsked(2026, DAY, Map.of(), Map.of()),
                    new BeginAsked(2099, DAY, Map.of(), Map.of()),
                    new BeginAsked(2027, LocalDate.of(2028, 1, 1), Map.of(), Map.of()),
                    new BeginAsked(2027, LocalDate.of(2020, 1, 1), Map.of(), Map.of()),
                    new BeginAsked(2027, DAY, Map.of("Nowhere", Crop.CORN), Map.of()))) {
                assertThatThrownBy(() -> book.beginNext(by(), wrong, null))
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageMatching(".*(expected|no field).*");
            }
            assertThat(book.seasons()).containsExactly(2026);
        }
    }

    @Test
    void an_old_price_is_said_until_it_is_confirmed_or_changed() {
        Season season = DeskSeason.of(2026);
        try (OpenDesk desk = OpenDesk.over(season)) {
            Visitor visitor = new Visitor(desk);
            String crops = season.fields().stream()
                    .map(field -> "&crop." + Shown.part(field.name()) + "="
                            + field.crop().word())
                    .reduce("", String::concat);
            Visitor.Page look = visitor.get("/season/next?year=2027&as_of=2027-01-10" + crops);
            assertThat(look.text()).contains("Begin 2027", "as you say", "Nothing is begun yet");
            Map<String, String> form =
                    new LinkedHashMap<>(Map.of("year", "2027", "as_of", "2027-01-10", "mark", look.hidden("mark")));
            season.fields()
                    .forEach(field ->
                            form.put("crop." + field.name(), field.crop().word()));
            Map<String, String> stale = new LinkedHashMap<>(form);
            stale.put("mark", "0");
            assertThat(visitor.post("/season/next", stale).status()).isEqualTo(409);
            assertThat(visitor.post("/season/next", form).header("Location")).isEqualTo("/history?begun=2027");
            String field = "/fields/" + Shown.part(season.fields().get(0).name()) + "/weighing";
            assertThat(visitor.get(field).text()).contains("of an earlier season, not confirmed for 2027");

            Visitor.Page prices = visitor.get("/season/prices");
            assertThat(prices.text()).contains("of an earlier season");
            Season begun = desk.book().written().orElseThrow();
            Map<String, String> same = new LinkedHashMap<>();
            for (int i = 0; i < begun.assumptions().size(); i++) {
                same.put("same.a" + i, "yes");
            }
            for (int i = 0; i < begun.shelf().products().size(); i++) {
                same.put("same.p" + i, "yes");
            }
            Map<String, String> wrong = new LinkedHashMap<>(same);
            int priced = 0;
            while (OldPrice.of(begun.shelf().products().get(priced)).isEmpty()) {
                priced++;
            }
            wrong.put("price.p" + priced, "twelve");
            assertThat(visitor.post("/season/prices", wrong).status()).isEqualTo(422);
            assertThat(OldPrice.all(desk.book().written().orElseThrow())).isNotEmpty();
            same.put("price.p" + priced, "12.25");
            assertThat(visitor.post("/season/prices", same).status()).isEqualTo(302);
            Season kept = desk.book().written().orElseThrow();
            assertThat(kept.shelf().products().get(priced).priceUsd()).isEqualTo(12.25);
            assertThat(OldPrice.all(kept)).isEmpty();
            assertThat(visitor.get(field).text()).doesNotContain("not confirmed for 2027");
        }
    }

    @Test
    void a_price_that_is_changed_by_another_door_is_no_longer_old() {
        String marked = OldPrice.marked("dealer", 2026, 4.25, 2027);
        assertThat(OldPrice.confirmed(marked)).isEqualTo("dealer");
        assertThat(OldPrice.marked(marked, 2027, 4.25, 2028))
                .startsWith("Price of 2026 (4.25), not confirmed for 2028. ");
        assertThat(OldPrice.marked(marked, 2027, 4.30, 2028))
                .startsWith("Price of 2027 (4.3), not confirmed for 2028. ");
        assertThat(OldPrice.marked("x".repeat(1000), 2026, 1, 2027)).hasSize(1000);
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void pages_of_the_next_season_are_read_and_pressed(int width) {
        SoftAssertions softly = new SoftAssertions();
        try (OpenDesk desk = OpenDesk.over(DemoBook.season());
                Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + "/season/next?year=2027&as_of=2027-01-10");
            looked(browser, softly, "next-season-" + width);
            browser.find("main form .buttons button").click();
            browser.until(ExpectedConditions.urlContains("/history"));
            softly.assertThat(browser.text("main")).contains("Season 2027 is begun");
            looked(browser, softly, "next-season-begun-" + width);
            browser.go(desk.address() + "/season/prices");
            looked(browser, softly, "old-prices-" + width);
            browser.go(desk.address() + "/history");
            browser.find(".changes form button").click();
            browser.until(ExpectedConditions.presenceOfElementLocated(ByCssSelector.cssSelector(".told")));
            softly.assertThat(desk.book().seasons()).containsExactly(2026);
        }
        softly.assertAll();
    }

    private static void looked(Chromium browser, SoftAssertions softly, String name) {
        browser.picture(name);
        softly.assertThat(browser.cutOff()).as("cut off on " + name).isEmpty();
        softly.assertThat(browser.smallTargets()).as("small on " + name).isEmpty();
        softly.assertThat(browser.inaccessible()).as("axe on " + name).isEmpty();
        softly.assertThat(browser.complaints()).as("console of " + name).isEmpty();
    }
}
