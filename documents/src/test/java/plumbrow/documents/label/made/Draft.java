package plumbrow.documents.label.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** A label being written: what stands on it, and what is thereby true. */
final class Draft {
    final Layout layout;
    final Random random;
    final List<Block> blocks = new ArrayList<>();
    final List<Fact> truth = new ArrayList<>();
    private int number;

    Draft(Layout layout, Random random) {
        this.layout = layout;
        this.random = random;
    }

    boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    String pick(String... words) {
        return words[random.nextInt(words.length)];
    }

    int pick(int... numbers) {
        return numbers[random.nextInt(numbers.length)];
    }

    void heading(String title) {
        blocks.add(new Block.Heading(
                switch (layout.heads()) {
                    case CAPITALS -> title.toUpperCase(Locale.ROOT);
                    case TITLE -> title;
                    case NUMBERED -> ++number + ".0 " + title.toUpperCase(Locale.ROOT);
                }));
    }

    void paragraph(String text) {
        blocks.add(new Block.Paragraph(text));
    }

    void bullets(List<String> items) {
        blocks.add(new Block.Bullets(List.copyOf(items)));
    }

    void truth(LabelKind kind, LabelContent content) {
        Fact fact = Fact.of(kind, content);
        if (!truth.contains(fact)) {
            truth.add(fact);
        }
    }

    void text(LabelKind kind, String words) {
        truth(kind, new LabelContent.Text(words));
    }

    static Amount exactly(double value, String unit) {
        return amount(Qualifier.EXACTLY, value, unit);
    }

    static Amount amount(Qualifier qualifier, double value, String unit) {
        return new Amount(qualifier, value, value, unit, Amount.Conditions.NONE);
    }

    static Amount range(double low, double high, String unit) {
        return new Amount(low < high ? Qualifier.RANGE : Qualifier.EXACTLY, low, high, unit, Amount.Conditions.NONE);
    }
}
