package plumbrow.app.papers;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.text.TextRule;
import plumbrow.app.book.StoredPaper;
import plumbrow.documents.confirm.NotSoException;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.mend.LabelText;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.mend.MendedPaper;
import plumbrow.documents.mend.TypedText;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;

/**
 * A paper of the book with all that was read on it and all that people put right, and what a person may do. The desk and the
 * programs' door go through here.
 *
 * @param mends about this paper, in the order in which they were made
 */
public record PaperMends(StoredPaper stored, ReadPaper read, List<Mend> mends) {
    private static final TextRule VALUE = new TextRule(2000, true);

    /** How a value may be typed, by the kind's title. */
    private static final Map<String, String> EXAMPLES = Map.ofEntries(
            Map.entry(ValueKind.REGISTRATION_NUMBER.title(), "99990-41"),
            Map.entry(ValueKind.REVISION_DATE.title(), "March 4, 2025"),
            Map.entry(ValueKind.ISSUE_DATE.title(), "March 4, 2025"),
            Map.entry(ValueKind.SUPERSEDED_DATE.title(), "March 4, 2025"),
            Map.entry(ValueKind.SIGNAL_WORD.title(), "Danger or Warning"),
            Map.entry(ValueKind.LABEL_SIGNAL_WORD.title(), "DANGER, WARNING or CAUTION"),
            Map.entry(ValueKind.EMERGENCY_PHONE.title(), "1-800-555-0199 (24-hour emergency)"),
            Map.entry(ValueKind.INGREDIENT.title(), "Atrazine, CAS 1912-24-9, 42.2 %"),
            Map.entry(
                    ValueKind.FIRST_AID.title(), "swallowed: Call a poison control center (or skin:, eyes:, inhaled:)"),
            Map.entry(ValueKind.PROTECTION.title(), "hands: butyl rubber gloves (or eyes:, skin:, breathing:)"),
            Map.entry(ValueKind.REPORTABLE_QUANTITY.title(), "1 lb"),
            Map.entry(ValueKind.HAZARD_STATEMENT.title(), "H302 Harmful if swallowed"),
            Map.entry(ValueKind.EXPOSURE_LIMIT.title(), "Xylene OSHA PEL TWA 100 ppm"),
            Map.entry(ValueKind.ACUTE_TOXICITY.title(), "Oral LD50 (rat): 500 mg/kg"),
            Map.entry(ValueKind.ECOTOXICITY.title(), "rainbow trout LC50: 4.5 mg/L, 96 h"),
            Map.entry(ValueKind.DENSITY.title(), "1.12 g/cm3"),
            Map.entry(ValueKind.VAPOUR_PRESSURE.title(), "1.9 x 10-5 mm Hg at 25 °C"),
            Map.entry(ValueKind.FLASH_POINT.title(), "62 °C"),
            Map.entry(ValueKind.BOILING_POINT.title(), "212 °F"),
            Map.entry(ValueKind.PH.title(), "6.5–7.5"),
            Map.entry(ValueKind.SOLUBILITY.title(), "33 mg/L"),
            Map.entry(ValueKind.UN_NUMBER.title(), "DOT: UN3082"));

    private static final Map<String, String> EXAMPLES_OF_LABELS = Map.ofEntries(
            Map.entry(LabelKind.REGISTRATION.title(), "99990-41"),
            Map.entry(
                    LabelKind.FIRST_AID.title(), "swallowed: Call a poison control center (or skin:, eyes:, inhaled:)"),
            Map.entry(LabelKind.LABEL_DATE.title(), "March 4, 2025"),
            Map.entry(LabelKind.SIGNAL_WORD.title(), "DANGER, WARNING or CAUTION"),
            Map.entry(LabelKind.GROUP.title(), "group 5 herbicide"),
            Map.entry(LabelKind.REENTRY.title(), "12 hours"),
            Map.entry(LabelKind.GEAR.title(), "handlers: chemical-resistant gloves"),
            Map.entry(LabelKind.PLANT_BACK.title(), "Alfalfa: 155 days"),
            Map.entry(LabelKind.SETBACK.title(), "Do not apply within 66 feet of streams."));

    /** What a person does. */
    public enum Deed {
        CONFIRM("confirm"),
        CORRECT("correct"),
        STRIKE("strike"),
        ADD("add"),
        BELONGS("belongs"),
        TAKE_BACK("take-back");

        private final String word;

        Deed(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        public static Optional<Deed> of(String word) {
            return Arrays.stream(values())
                    .filter(deed -> deed.word.equals(word))
                    .findFirst();
        }

        public static String words() {
            return Arrays.stream(values()).map(Deed::word).collect(Collectors.joining(", "));
        }
    }

    /**
     * A value of the paper.
     *
     * @param at its place in the list, by which a link names it
     * @param says as it was read, in words; what a person added as he typed it
     * @param sure whether it was read in one way only
     * @param typed what stands in the box to be typed over
     * @param quote the very words; null where it stands nowhere
     * @param byOcr whether it was made out by OCR
     * @param mend the last word on it
     */
    public record Line(
            int at,
            String title,
            String says,
            boolean sure,
            String typed,
            @Nullable Quote quote,
            boolean byOcr,
            Optional<Mend> mend) {

        /** Whether it counts only once a person has held it against the page, and nobody has. */
        public boolean waits() {
            return byOcr && mend.isEmpty();
        }

        /** What a person sees of it when he decides; it must still be so when his word arrives. */
        public String seen() {
            return title + "|" + says + "|"
                    + mend.map(Mend::when).map(String::valueOf).orElse("");
        }

        String words() {
            return quote == null ? "" : quote.words();
        }
    }

    /** Everything read, then what people say beside it. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        if (read instanceof ReadPaper.Sheet sheet) {
            for (Reading.OnPaper one : sheet.sheet().readings()) {
                boolean stated = one instanceof Reading.Stated;
                String typed = one instanceof Reading.Stated said ? TypedText.written(said.content()) : "";
                lines.add(line(lines.size(), one.kind().title(), one.words(), stated, typed, one.quote()));
            }
        } else if (read instanceof ReadPaper.Label label) {
            for (LabelReading.OnPaper one : label.label().readings()) {
                boolean stated = one instanceof LabelReading.Stated;
                lines.add(line(
                        lines.size(), one.kind().title(), one.words(), stated, stated ? one.words() : "", one.quote()));
            }
        }
        List<MendedPaper.Read> readings = lines.stream()
                .map(line -> new MendedPaper.Read(line.title, line.says, line.words()))
                .toList();
        for (Mend mend : MendedPaper.beside(mends, readings)) {
            lines.add(new Line(
                    lines.size(),
                    mend.about(),
                    mend.verdict() == Mend.Verdict.ADDED ? mend.value() : mend.was(),
                    true,
                    mend.value(),
                    null,
                    false,
                    Optional.of(mend)));
        }
        return lines;
    }

    private Line line(int at, String title, String says, boolean sure, String typed, Quote quote) {
        Optional<Mend> mend = MendedPaper.last(mends, title, says, quote);
        boolean byOcr =
                sure && quote.marks().stream().anyMatch(mark -> read.byOcr().contains(mark.page()));
        String box = mend.map(Mend::value).filter(value -> !value.isEmpty()).orElse(typed);
        return new Line(at, title, says, sure, box, quote, byOcr, mend);
    }

    /** The kinds of value that this sort of paper may state, by their titles. */
    public List<String> kinds() {
        return read instanceof ReadPaper.Label
                ? Arrays.stream(LabelKind.values()).map(LabelKind::title).toList()
                : Arrays.stream(ValueKind.values()).map(ValueKind::title).toList();
    }

    /** How a value of a kind may be typed; empty where that needs no saying. */
    public String example(String title) {
        return (read instanceof ReadPaper.Label ? EXAMPLES_OF_LABELS : EXAMPLES).getOrDefault(title, "");
    }

    /** The product that people say the paper belongs to. */
    public Optional<Mend> belongs() {
        return MendedPaper.belongs(mends);
    }

    /** The values in one sentence. */
    public String sentence() {
        List<Line> lines = lines();
        long waiting = lines.stream().filter(Line::waits).count();
        long put = lines.stream().filter(line -> line.mend().isPresent()).count();
        String open = waiting == 0
                ? ""
                : waiting == 1
                        ? "1 value was read by OCR and counts once you have held it against the page. "
                        : waiting + " values were read by OCR and count once you have held each against the page. ";
        return open + (put == 0 ? "" : put == 1 ? "1 value was looked at." : put + " values were looked at.");
    }

    /**
     * What a person says.
     *
     * @param at the value's place in the list; where he adds one or says whose the paper is, any
     * @param about where he adds a value, its kind's title
     * @param typed what he typed
     * @param page that he looks at, from 1
     * @param saw what the page showed him; null where he doesn't say
     * @param products of the season's shelf
     * @throws NotSoException if it can't be so; nothing is written down then
     */
    public Mend decide(
            int at,
            Deed deed,
            String about,
            String typed,
            int page,
            String who,
            @Nullable String saw,
            List<Product> products,
            Instant when) {
        String name = named(who);
        String text = typed.replace("\r\n", "\n").strip();
        checked(text);
        if (page < 1 || page > Math.max(1, stored.paper().pages())) {
            throw new NotSoException("This paper has no page " + page + ".");
        }
        if (deed == Deed.BELONGS) {
            return belongs(text, page, name, products, when);
        }
        if (deed == Deed.ADD) {
            if (!kinds().contains(about)) {
                throw new NotSoException(
                        "Choose what is added; there is no kind of value “" + about + "” on this paper.");
            }
            understood(about, text);
            return mend(about, Mend.Verdict.ADDED, "", "", page, text, name, when);
        }
        List<Line> lines = lines();
        if (at < 0 || at >= lines.size()) {
            throw new NotSoException("This paper has no value number " + at + "; list them first.");
        }
        Line line = lines.get(at);
        if (saw != null && !saw.equals(line.seen())) {
            throw new NotSoException(
                    line.title() + " has changed since the page was shown: look at it again before you decide.");
        }
        int stands = line.quote() == null ? page : line.quote().page();
        return switch (deed) {
            case CONFIRM -> {
                if (!line.sure()) {
                    throw new NotSoException("There is no clear value of " + line.title()
                            + " to confirm; type what the page says, or say that it doesn't say it.");
                }
                yield about(line, Mend.Verdict.CONFIRMED, stands, "", name, when);
            }
            case CORRECT -> {
                understood(line.title(), text);
                yield about(line, Mend.Verdict.TYPED_OVER, stands, text, name, when);
            }
            case STRIKE -> about(line, Mend.Verdict.STRUCK, stands, "", name, when);
            default -> {
                if (line.mend().isEmpty()) {
                    throw new NotSoException("Nothing was said of " + line.title() + " that could be taken back.");
                }
                yield about(line, Mend.Verdict.TAKEN_BACK, stands, "", name, when);
            }
        };
    }

    private Mend about(Line line, Mend.Verdict verdict, int page, String value, String who, Instant when) {
        return mend(line.title(), verdict, line.says(), line.words(), page, value, who, when);
    }

    private Mend mend(
            String about,
            Mend.Verdict verdict,
            String was,
            String words,
            int page,
            String value,
            String who,
            Instant when) {
        return new Mend(stored.sha256(), about, verdict, was, words, page, value, who, when);
    }

    private Mend belongs(String text, int page, String who, List<Product> products, Instant when) {
        if (text.isEmpty()) {
            if (belongs().isEmpty()) {
                throw new NotSoException("Choose the product that this paper belongs to.");
            }
            return mend(Mend.BELONGS_TO, Mend.Verdict.TAKEN_BACK, "", "", page, "", who, when);
        }
        Product product = products.stream()
                .filter(each -> each.name().equals(text))
                .findFirst()
                .orElseThrow(() -> new NotSoException("The season's shelf has no product “" + text + "”."));
        String number = product.registration();
        return mend(Mend.BELONGS_TO, Mend.Verdict.ADDED, "", number == null ? "" : number, page, text, who, when);
    }

    private void understood(String title, String text) {
        if (text.isEmpty()) {
            throw new NotSoException("Nothing was typed for " + title + "; expected what the page says.");
        }
        boolean read = this.read instanceof ReadPaper.Label
                ? Arrays.stream(LabelKind.values())
                        .filter(kind -> kind.title().equals(title))
                        .anyMatch(kind -> !LabelText.read(kind, text).isEmpty())
                : Arrays.stream(ValueKind.values())
                        .filter(kind -> kind.title().equals(title))
                        .anyMatch(kind -> !TypedText.read(kind, text).isEmpty());
        if (!read) {
            String shown = text.length() > 60 ? text.substring(0, 60) + "…" : text;
            throw new NotSoException("“" + shown + "” can't be read as " + title + "; expected "
                    + (example(title).isEmpty() ? "the page's own words." : "something like: " + example(title) + "."));
        }
    }

    private static void checked(String text) {
        if (text.length() > VALUE.longest()) {
            throw new NotSoException("What was typed is longer than " + VALUE.longest()
                    + " letters; expected what the page says in short.");
        }
        if (VALUE.unreadable(text).isPresent()) {
            throw new NotSoException("What was typed has characters that can't be seen; expected what the page says.");
        }
    }

    private static String named(String who) {
        String name = who.strip().replaceAll("\\s+", " ");
        Optional<String> objection = TextRule.NAME.objection(name);
        if (name.isEmpty() || objection.isPresent()) {
            throw new NotSoException("Who says so? Expected "
                    + objection.orElse("a name of up to " + TextRule.NAME.longest() + " letters") + ".");
        }
        return name;
    }
}
