package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Amount.Qualifier;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;

/** A sheet being written: what stands on it, and what is thereby true. */
final class Draft {
    final House house;
    final Product product;
    final Random random;
    final List<Block> blocks = new ArrayList<>();
    final List<Fact> truth = new ArrayList<>();

    Draft(House house, Product product, Random random) {
        this.house = house;
        this.product = product;
        this.random = random;
    }

    boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    String pick(String... words) {
        return words[random.nextInt(words.length)];
    }

    void pair(String label, String value) {
        blocks.add(new Block.Pair(label, value));
    }

    void paragraph(String text) {
        blocks.add(new Block.Paragraph(text));
    }

    void subheading(String text) {
        blocks.add(new Block.Subheading(text));
    }

    void table(List<Integer> columns, List<String> heads, List<List<String>> rows) {
        blocks.add(new Block.Table(columns, heads, rows));
    }

    void truth(ValueKind kind, Content content) {
        Fact fact = Fact.of(kind, content);
        if (!truth.contains(fact)) {
            truth.add(fact);
        }
    }

    void unclear(ValueKind kind) {
        if (!truth.contains(Fact.unclear(kind))) {
            truth.add(Fact.unclear(kind));
        }
    }

    void noData(ValueKind kind) {
        truth.add(Fact.noData(kind));
    }

    /** "Not determined" and its like. */
    String nothing() {
        return pick(
                "No data available",
                "Not determined",
                "N/A",
                "Not available",
                "Not applicable",
                "n.d.",
                "None established");
    }

    Qualifier qualifier() {
        return switch (random.nextInt(6)) {
            case 0, 1 -> Qualifier.MORE_THAN;
            case 2 -> Qualifier.LESS_THAN;
            default -> Qualifier.EXACTLY;
        };
    }

    String sign(Qualifier qualifier) {
        return switch (qualifier) {
            case MORE_THAN -> pick("> ", ">", "> ", "greater than ");
            case LESS_THAN -> pick("< ", "<", "less than ");
            case AT_LEAST -> ">= ";
            case AT_MOST -> "<= ";
            case ABOUT -> pick("approx. ", "ca. ", "~ ");
            case EXACTLY, RANGE -> "";
        };
    }

    static Amount amount(
            Qualifier qualifier, double value, String unit, @Nullable Double celsius, @Nullable Double hours) {
        return new Amount(qualifier, value, value, unit, new Conditions(celsius, hours, ""));
    }
}
