package plumbrow.app.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.app.papers.LabelWork;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.LabelValue;
import plumbrow.documents.paper.Mark;
import plumbrow.documents.paper.Quote;

/**
 * A label's values for programs.
 *
 * @param product its name on the season's shelf; null where it isn't there
 * @param newer number of a newer label that counts instead; null where this one counts
 */
public record LabelValuesSummary(
        int paper,
        String sha256,
        @Nullable String product,
        @Nullable Integer newer,
        String says,
        List<Value> values) {

    /**
     * One value.
     *
     * @param id by which it is decided about
     * @param row by which all of its row are confirmed
     * @param labelSays in a person's words
     * @param proposed null where the label doesn't clearly state it
     * @param workbook null where the workbook has none
     * @param inForce what the gates see; null for unknown
     */
    public record Value(
            String id,
            String row,
            String table,
            String of,
            String title,
            String labelSays,
            @Nullable String proposed,
            @Nullable String workbook,
            @Nullable String inForce,
            String standing,
            @Nullable Decision decision,
            @Nullable Decision onEarlierLabel,
            @Nullable Integer page,
            @Nullable String words,
            List<Mark> marks) {}

    /** What somebody decided. */
    public record Decision(
            String verdict,
            @Nullable String value,
            String who,
            String when,
            @Nullable Integer page) {
        static @Nullable Decision of(@Nullable LabelDecision made) {
            return made == null
                    ? null
                    : new Decision(
                            made.verdict().word(),
                            known(made.value()),
                            made.who(),
                            made.when().toString(),
                            made.page() == 0 ? null : made.page());
        }
    }

    public static LabelValuesSummary of(LabelWork work) {
        return new LabelValuesSummary(
                work.values().label().paper().number(),
                work.values().label().sha256(),
                work.values().product().orElse(null),
                work.newer().map(newer -> newer.number()).orElse(null),
                work.sentence(),
                work.values().values().stream().map(LabelValuesSummary::value).toList());
    }

    private static Value value(LabelValue each) {
        List<Quote> quotes = each.value().quotes();
        return new Value(
                each.value().id(),
                each.value().row().id(),
                each.value().row().table().word(),
                each.value().row().words(),
                each.value().title(),
                each.value().ground().words(),
                known(each.value().proposed()),
                known(each.workbook()),
                known(each.inForce()),
                each.standing().word(),
                Decision.of(each.decision().orElse(null)),
                Decision.of(each.earlier().orElse(null)),
                quotes.isEmpty() ? null : quotes.get(0).page(),
                quotes.isEmpty() ? null : quotes.get(0).words(),
                quotes.stream().flatMap(quote -> quote.marks().stream()).toList());
    }

    private static @Nullable String known(String text) {
        return text.isEmpty() ? null : text;
    }
}
