package plumbrow.documents.sheet.part;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Organism;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.Circumstance;
import plumbrow.documents.sheet.grammar.Family;

/** Toxicity to fish, water fleas, algae, birds, bees and worms. */
final class EcoPart implements Part {
    private static final Pattern MEASURE = Pattern.compile(
            "(?i)\\b(?:LC\\s?50|EC\\s?50|E[rby]C\\s?50|IC\\s?50|LD\\s?50|NOE[CL]|LOE[CL]|NOAE[CL])|[LE]C₅₀|LD₅₀|\\b(?:DT\\s?50|BCF|Koc|half-life)\\b");
    private static final Pattern HOURS =
            Pattern.compile("(?i)(?<![\\d.,])\\d{1,3}\\s?-?\\s?(?:hours?|hrs?|h|days?|d)\\b");
    private static final Family[] UNITS = {Family.PER_BEE, Family.DOSE, Family.WATER};

    @Override
    public void read(SheetText sheet, Readings readings) {
        Substances substances = new Substances(readings);
        Passage.Builder all = new Passage.Builder();
        for (Row row : sheet.rows(SheetSection.ECOLOGY)) {
            all.newLine(Passage.of(row)).endLine();
        }
        Passage passage = all.build();
        String text = passage.text();
        String substance = "";
        String measure = "";
        Organism organism = null;
        for (Stretch stretch : Stretch.of(text, sheet.style(), UNITS)) {
            Nearby near = new Nearby(text, stretch);
            substance = substances.in(near.before() + "\n" + near.line(), substance);
            String found = near.find(MEASURE);
            measure = found.isEmpty() ? measure : plain(found);
            organism = organism(near, stretch).orElse(organism);
            if (organism != null && measure.matches("(?:LC|EC|E[RBY]C|IC|LD)50|NOE[CL]")) {
                state(stretch, passage, organism, measure, near, substance, readings);
            }
        }
    }

    private static void state(
            Stretch stretch,
            Passage passage,
            Organism organism,
            String measure,
            Nearby near,
            String substance,
            Readings readings) {
        var quote = passage.quote(stretch.lineFrom(), stretch.to());
        if (!stretch.amount().doubt().isEmpty()) {
            readings.unclear(ValueKind.ECOTOXICITY, stretch.amount().doubt(), quote);
            return;
        }
        @Nullable Double hours = Circumstance.hours(near.find(HOURS));
        readings.state(
                ValueKind.ECOTOXICITY,
                new Content.Eco(
                        substance,
                        organism,
                        spelled(measure),
                        stretch.amount().amount().under(new Conditions(null, hours, ""))),
                quote);
    }

    /** The one on the amount's line, else the last one named in the lines before. */
    private static Optional<Organism> organism(Nearby near, Stretch stretch) {
        Optional<Organism> onLine = Organism.in(near.line());
        if (onLine.isPresent() || stretch.lineFrom() == stretch.from()) {
            return onLine;
        }
        String[] lines = near.before().split("\n", -1);
        for (int i = lines.length - 1; i >= 0; i--) {
            Optional<Organism> found = Organism.in(lines[i]);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static String plain(String printed) {
        return printed.toUpperCase(Locale.ROOT)
                .replaceAll("\\s", "")
                .replace('₅', '5')
                .replace('₀', '0');
    }

    private static String spelled(String measure) {
        Matcher growth = Pattern.compile("E([RBY])C50").matcher(measure);
        return growth.matches() ? "E" + growth.group(1).toLowerCase(Locale.ROOT) + "C50" : measure;
    }
}
