package plumbrow.app.desk.nextseason;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.prices.OldPrice;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.app.book.BookException;
import plumbrow.app.book.By;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.rows.Remembered;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.sheet.Sheets;

/** Prices that came along from an earlier season: each is confirmed as it is, or gets the new one in its box. */
@Controller
public class OldPricesPage {
    private static final String SOURCE = "source";

    private final DeskBook book;
    private final Clock clock;

    public OldPricesPage(DeskBook book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /**
     * A price of an earlier season.
     *
     * @param key names its boxes in the form
     * @param row its row among the table's, from 2
     * @param typed what stands in its box; empty where its row has more than one number, which are changed there
     * @param fault what is wrong with what was typed; empty for nothing
     */
    public record Line(OldPrice old, String key, String table, int row, String unit, String typed, String fault) {}

    /** All of them. */
    public record View(Season season, List<Line> lines, String told) {}

    @GetMapping("/season/prices")
    String show(@RequestParam(defaultValue = "") String done, Model model) {
        model.addAttribute(
                "view", new View(season(), lines(season(), Map.of(), Map.of()), done.isEmpty() ? "" : "Kept."));
        return "nextseason/prices";
    }

    @PostMapping("/season/prices")
    String keep(
            @RequestParam Map<String, String> typed,
            @CookieValue(name = Remembered.WHO, defaultValue = "") String known,
            Model model,
            HttpServletResponse response) {
        Season season = season();
        SeasonTables tables = SeasonTables.of(season);
        List<RowChange> changes = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        for (Line line : lines(season, Map.of(), Map.of())) {
            String price =
                    typed.getOrDefault("price." + line.key(), line.typed()).strip();
            boolean other = !line.typed().isEmpty() && !price.equals(line.typed());
            if (!other && !typed.containsKey("same." + line.key())) {
                continue;
            }
            Map<String, String> before = tables.row(Sheets.named(line.table()).orElseThrow(), line.row() - 2)
                    .orElseThrow();
            Map<String, String> after = new HashMap<>(before);
            after.put(SOURCE, OldPrice.confirmed(before.getOrDefault(SOURCE, "")));
            if (other) {
                after.put("price_usd", price);
            }
            changes.add(RowChange.change(line.table(), line.row() - 2, before, after));
            keys.add(line.key());
        }
        if (changes.isEmpty()) {
            return "redirect:/season/prices";
        }
        try {
            book.edit(
                    new By(
                            Remembered.read(known).orElse(null),
                            typed.getOrDefault("why", ""),
                            By.Way.DESK,
                            clock.instant()),
                    changes);
            return "redirect:/season/prices?done=yes";
        } catch (EditFaults faults) {
            Map<String, String> said = new HashMap<>();
            faults.places().forEach(place -> {
                if (place.change() >= 0) {
                    said.put(keys.get(place.change()), place.fault().sentence());
                }
            });
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("view", new View(season, lines(season, typed, said), ""));
            return "nextseason/prices";
        } catch (BookException refused) {
            response.setStatus(HttpStatus.CONFLICT.value());
            model.addAttribute(
                    "view", new View(season(), lines(season(), typed, Map.of()), String.valueOf(refused.getMessage())));
            return "nextseason/prices";
        }
    }

    private Season season() {
        return book.written().orElseThrow(NoSeasonException::new);
    }

    private static List<Line> lines(Season season, Map<String, String> typed, Map<String, String> faults) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < season.assumptions().size(); i++) {
            int at = i;
            OldPrice.of(season.assumptions().get(i))
                    .ifPresent(old -> lines.add(new Line(
                            old,
                            "a" + at,
                            "assumptions",
                            at + 2,
                            "$/bu, mean",
                            "",
                            faults.getOrDefault("a" + at, ""))));
        }
        SeasonTables tables = SeasonTables.of(season);
        for (int i = 0; i < season.shelf().products().size(); i++) {
            int at = i;
            Product product = season.shelf().products().get(i);
            OldPrice.of(product)
                    .ifPresent(old -> lines.add(priced(
                            tables,
                            old,
                            "p" + at,
                            "shelf",
                            at,
                            "$/" + product.pricedPer().symbol(),
                            typed,
                            faults)));
        }
        for (int i = 0; i < season.work().means().breaks().size(); i++) {
            int at = i;
            OldPrice.of(season.work().means().breaks().get(i))
                    .ifPresent(old -> lines.add(priced(tables, old, "b" + at, "price_breaks", at, "$", typed, faults)));
        }
        return lines;
    }

    private static Line priced(
            SeasonTables tables,
            OldPrice old,
            String key,
            String table,
            int at,
            String unit,
            Map<String, String> typed,
            Map<String, String> faults) {
        String held = tables.row(Sheets.named(table).orElseThrow(), at)
                .map(row -> row.getOrDefault("price_usd", ""))
                .orElse("");
        return new Line(
                old, key, table, at + 2, unit, typed.getOrDefault("price." + key, held), faults.getOrDefault(key, ""));
    }
}
