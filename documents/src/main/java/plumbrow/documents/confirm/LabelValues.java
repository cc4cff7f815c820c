package plumbrow.documents.confirm;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.text.TextRule;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.paper.Quote;

/**
 * A label's values on their way to the shelf.
 *
 * @param label the file
 * @param product its name on the season's shelf; empty where it isn't there, and then nothing enters yet
 * @param values row by row
 * @param byOcr numbers of the pages that were made out by OCR: each value on them is held against the page by itself
 * @param writtenDay the day on which the label was read, as the workbook has it; empty where it has none
 */
public record LabelValues(
        LabelFile label, Optional<String> product, List<LabelValue> values, List<Integer> byOcr, String writtenDay) {
    private static final RowName CARE = new RowName(ShelfTable.CARE, Map.of(), 1);
    private static final String READ_ON = "confirmed";

    public LabelValues {
        values = List.copyOf(values);
        byOcr = List.copyOf(byOcr);
    }

    /**
     * Puts together what is known.
     *
     * @param byOcr numbers of the pages that were made out by OCR
     * @param written the shelf as the workbook has it; null where there is no season
     * @param counting the shelf with what was confirmed, as the checks see it; null where there is no season
     * @param earlier checksums of the product's older labels
     * @param decisions all of the book, in order
     */
    public static LabelValues of(
            LabelFile label,
            LabelPaper read,
            List<Integer> byOcr,
            @Nullable Shelf written,
            @Nullable Shelf counting,
            Optional<String> product,
            List<String> earlier,
            List<LabelDecision> decisions) {
        Map<String, LabelDecision> last = ConfirmedSeason.last(decisions).getOrDefault(label.sha256(), Map.of());
        List<LabelDecision> before = decisions.stream()
                .filter(decision -> earlier.contains(decision.sha256()))
                .toList();
        List<LabelValue> values = new ArrayList<>();
        for (ProposedValue value : ProposedValues.of(read)) {
            String has = written == null || product.isEmpty() ? "" : written(written, product.get(), value);
            String counts = counting == null || product.isEmpty()
                    ? ""
                    : ConfirmedShelf.found(counting, product.get(), value.row(), value.property());
            values.add(new LabelValue(
                    value, has, counts, spoken(last.get(value.id())), spoken(latest(before, value.id()))));
        }
        return new LabelValues(label, product, values, byOcr, day(written, product));
    }

    private static @Nullable LabelDecision latest(List<LabelDecision> decisions, String id) {
        return decisions.stream()
                .filter(decision -> decision.id().equals(id))
                .reduce((first, second) -> second)
                .orElse(null);
    }

    private static Optional<LabelDecision> spoken(@Nullable LabelDecision last) {
        return Optional.ofNullable(last).filter(decision -> decision.verdict() != Verdict.TAKEN_BACK);
    }

    private static String written(Shelf shelf, String product, ProposedValue value) {
        return ConfirmedShelf.written(shelf, product, value.row(), value.property());
    }

    private static String day(@Nullable Shelf written, Optional<String> product) {
        return written == null
                ? ""
                : product.flatMap(written.labels()::care)
                        .map(care -> ShelfTable.CARE.text(care, READ_ON))
                        .orElse("");
    }

    public Optional<LabelValue> value(String id) {
        return values.stream()
                .filter(each ->
                        each.value().id().equals(id) || each.value().formerId().equals(id))
                .findFirst();
    }

    /** The values of one row. */
    public List<LabelValue> row(RowName row) {
        return values.stream().filter(each -> each.value().row().equals(row)).toList();
    }

    /** Every row, in order. */
    public List<RowName> rows() {
        return values.stream().map(each -> each.value().row()).distinct().toList();
    }

    public int count(Predicate<LabelValue> which) {
        return (int) values.stream().filter(which).count();
    }

    /**
     * What a person decides about one value.
     *
     * @param typed what he typed where he corrects
     * @throws NotSoException if it can't be so, in a sentence
     */
    public List<LabelDecision> decide(
            LabelValue value, Verdict verdict, @Nullable String typed, String who, Instant when) {
        String name = named(who);
        ProposedValue proposed = value.value();
        String enters = switch (verdict) {
            case CONFIRMED -> {
                if (!proposed.clear()) {
                    throw new NotSoException("There is no clear value of " + proposed.title()
                            + " to confirm; type what the page says, or reject it.");
                }
                yield proposed.proposed();
            }
            case CORRECTED -> proposed.read(typed);
            default -> "";
        };
        if (verdict == Verdict.WORKBOOK && value.workbook().isEmpty()) {
            throw new NotSoException("The workbook has no value of " + proposed.title() + " that could stay.");
        }
        if (verdict == Verdict.TAKEN_BACK && value.decision().isEmpty()) {
            throw new NotSoException("Nothing was decided about " + proposed.title() + " that could be taken back.");
        }
        if (!enters.isEmpty()) {
            ValueText.kept(proposed.row().table().attribute(proposed.property()), enters);
        }
        rates(value, enters);
        return withDay(List.of(decision(value, verdict, enters, name, when)), name, when);
    }

    /** The values that can be confirmed together with a row: its own, and those of the other crops of the same line. */
    public List<LabelValue> together(RowName row) {
        List<LabelReading> grounds =
                row(row).stream().map(each -> each.value().ground()).toList();
        return values.stream()
                .filter(each -> each.value().row().equals(row)
                        || (row.table() == ShelfTable.PLANT_BACKS
                                && each.value().row().table() == row.table()
                                && grounds.contains(each.value().ground())))
                .filter(each -> each.plain() && !madeOut(each))
                .toList();
    }

    /** Whether a value was made out by OCR. */
    public boolean madeOut(LabelValue value) {
        return value.value().quotes().stream()
                .flatMap(quote -> quote.marks().stream())
                .anyMatch(mark -> byOcr.contains(mark.page()));
    }

    /** Confirms all values of a row that are clear and against which nothing speaks; those that aren't stay open. */
    public List<LabelDecision> confirmRow(RowName row, String who, Instant when) {
        String name = named(who);
        List<LabelDecision> made = together(row).stream()
                .map(each -> decision(each, Verdict.CONFIRMED, each.value().proposed(), name, when))
                .toList();
        if (made.isEmpty()) {
            throw new NotSoException(
                    "No value of this row can be confirmed together with others; decide each by itself.");
        }
        return withDay(made, name, when);
    }

    /** Whether a decision is that the whole label was read. */
    static boolean wholeLabel(LabelDecision decision) {
        return decision.property().equals(READ_ON);
    }

    private static String named(String who) {
        String name = who.strip().replaceAll("\\s+", " ");
        if (name.isEmpty()) {
            throw new NotSoException("Who says so? Expected a name of up to " + TextRule.NAME.longest() + " letters.");
        }
        TextRule.NAME.objection(name).ifPresent(expected -> {
            throw new NotSoException("Who says so? Expected " + expected + ".");
        });
        return name;
    }

    private LabelDecision decision(LabelValue value, Verdict verdict, String enters, String who, Instant when) {
        for (String part : enters.split(";", -1)) {
            TextRule.PROSE.objection(part.strip()).ifPresent(expected -> {
                throw new NotSoException(value.value().title() + " can't be so; expected " + expected + ".");
            });
        }
        Optional<Quote> quote = value.value().quote();
        return new LabelDecision(
                label.sha256(),
                value.value().row(),
                value.value().property(),
                verdict,
                enters,
                value.workbook(),
                quote.map(Quote::page).orElse(0),
                quote.map(Quote::words).orElse(""),
                who,
                when);
    }

    /** A lowest rate above the highest would be a slip of the pen. */
    private void rates(LabelValue value, String enters) {
        boolean low = value.value().property().equals("low_rate");
        if (enters.isEmpty() || !(low || value.value().property().equals("high_rate"))) {
            return;
        }
        String other = row(value.value().row()).stream()
                .filter(each -> each.value().property().equals(low ? "high_rate" : "low_rate"))
                .map(LabelValue::inForce)
                .findFirst()
                .orElse("");
        if (!other.isEmpty()) {
            var one = rate(value, enters);
            var two = rate(value, other);
            boolean turned =
                    one.comparableWith(two) && (low ? one.inBase() > two.inBase() : one.inBase() < two.inBase());
            if (turned || !one.comparableWith(two)) {
                throw new NotSoException(value.value().title() + " " + enters + "/ac does not go with the "
                        + (low ? "highest" : "lowest") + " rate " + other + "/ac; expected one that is not "
                        + (low ? "above" : "below") + " it, in a unit of the same kind.");
            }
        }
    }

    private static Amount rate(LabelValue value, String text) {
        return (Amount) ValueText.kept(
                value.value().row().table().attribute(value.value().property()), text);
    }

    /**
     * When the last value that waited is decided, the label counts as read on that day; when one is taken back, no longer.
     * What the gates ask is whether the whole label was held against the book.
     */
    private List<LabelDecision> withDay(List<LabelDecision> made, String who, Instant when) {
        boolean back = made.get(0).verdict() == Verdict.TAKEN_BACK;
        boolean whole = !back
                && values.stream()
                        .filter(LabelValue::waits)
                        .allMatch(waiting -> made.stream()
                                .anyMatch(one -> one.id().equals(waiting.value().id())));
        if (!back && !whole) {
            return made;
        }
        LocalDate day = when.atZone(ZoneOffset.UTC).toLocalDate();
        List<LabelDecision> all = new ArrayList<>(made);
        all.add(new LabelDecision(
                label.sha256(),
                CARE,
                READ_ON,
                back ? Verdict.TAKEN_BACK : Verdict.CONFIRMED,
                back ? "" : day.toString(),
                writtenDay,
                0,
                "",
                who,
                when));
        return all;
    }
}
