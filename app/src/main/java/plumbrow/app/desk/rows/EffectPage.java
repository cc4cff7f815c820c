package plumbrow.app.desk.rows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.rows.ChangeWords;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.RowGoneException;
import plumbrow.documents.workbook.edit.SeasonEdit;

/** What a change did to the answer: the fields it touches, weighed as the season was before it and after it. */
@Controller
public class EffectPage {
    private static final int MOST_FIELDS = 6;
    private static final int DRAWS = 1_000;

    private final DeskBook book;
    private final Weighings weighings;

    public EffectPage(DeskBook book, Weighings weighings) {
        this.book = book;
        this.weighings = weighings;
    }

    /**
     * A field before and after the change.
     *
     * @param before the advice in a sentence, or why there was none
     */
    public record Effect(String field, String before, String after, boolean same) {}

    /**
     * What a change did.
     *
     * @param more fields that are touched too and are not weighed here
     * @param labels whether values were confirmed on labels, which the history does not hold
     */
    public record View(ChangeWords words, List<Effect> effects, int more, boolean labels) {}

    @GetMapping("/history/{number}/effect")
    String effect(@PathVariable int number, Model model) {
        Season now = book.written().orElseThrow(NoSeasonException::new);
        List<SeasonChange> changes = book.changes(now.year());
        SeasonChange change = changes.stream()
                .filter(one -> one.number() == number && !one.rows().isEmpty())
                .findFirst()
                .orElseThrow(() -> new NotHereException("There is no change " + number + " that was made row by row."));
        Season after = now;
        Season before;
        try {
            for (int i = changes.size() - 1; changes.get(i).number() > number; i--) {
                after = without(after, changes.get(i));
            }
            before = without(after, change);
        } catch (EditFaults | RowGoneException gone) {
            throw new NotHereException("The season of then can't be made again from the history.");
        }
        List<String> fields = touched(before, after, change);
        Season then = after;
        List<Effect> effects = fields.stream()
                .limit(MOST_FIELDS)
                .map(field -> effect(field, before, then))
                .toList();
        model.addAttribute(
                "view",
                new View(
                        ChangeWords.of(change),
                        effects,
                        Math.max(0, fields.size() - MOST_FIELDS),
                        !book.decisions().isEmpty()));
        return "rows/effect";
    }

    private static Season without(Season season, SeasonChange change) {
        List<RowChange> back = new ArrayList<>(change.rows());
        Collections.reverse(back);
        return back.isEmpty()
                ? season
                : SeasonEdit.of(season, back.stream().map(RowChange::inverse).toList());
    }

    /** The fields that the rows name; all of them where a row names none. */
    private static List<String> touched(Season before, Season after, SeasonChange change) {
        Set<String> named = new LinkedHashSet<>();
        boolean all = false;
        for (RowChange row : change.rows()) {
            Map<String, String> cells = row.after() == null ? row.before() : row.after();
            String field = cells == null ? "" : cells.getOrDefault("field", "");
            all |= field.isEmpty();
            named.add(field);
        }
        named.remove("");
        if (all) {
            before.fields().forEach(field -> named.add(field.name()));
            after.fields().forEach(field -> named.add(field.name()));
        }
        return List.copyOf(named);
    }

    private Effect effect(String field, Season before, Season after) {
        String was = sentence(before, field);
        String is = sentence(after, field);
        return new Effect(field, was, is, was.equals(is));
    }

    private String sentence(Season season, String name) {
        Field field = season.field(name).orElse(null);
        if (field == null) {
            return "The field was not there.";
        }
        if (season.programs(name).isEmpty()) {
            return "It had no program.";
        }
        try {
            FieldAdvice advice =
                    weighings.field(FieldSeasons.of(season, field), field, WeighingOptions.DEFAULT.withDraws(DRAWS));
            return advice.sentence();
        } catch (SeasonGapException gap) {
            return String.valueOf(gap.getMessage());
        }
    }
}
