package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which of several values to work with, in this order:
 *
 *   the right chemical form;  a definite number or range over a limit;  verified over the rest;  of toxicities the lowest
 *
 * A value whose own conditions warn of it comes behind those of its form. Of other properties no end is the safe one: of those that are
 * equal so far the middle one is taken (the lower of two). That last rule is ours; the spread is to be shown with it.
 */
final class Choosing {
    /** Words of conditions that name a form; a longer word that holds one of them counts too. */
    private static final List<String> FORMS = List.of("acid", "salt", "ester", "amine", "ion", "quizalofop-ethyl");

    private static final List<String> DOUBTS = List.of("do not use", "legacy");

    private Choosing() {}

    static Optional<Choice> of(Property property, String form, List<Fact> facts) {
        if (facts.isEmpty()) {
            return Optional.empty();
        }
        Comparator<Fact> order = Comparator.<Fact>comparingInt(
                        fact -> fact.measure().holdsCodes() ? 0 : formRank(fact.conditions(), form))
                .thenComparingInt(fact -> doubtful(fact) ? 1 : 0)
                .thenComparingInt(fact -> fact.number().map(Bound::limit).orElse(false) ? 1 : 0)
                .thenComparing(fact -> !fact.backing().sure())
                .thenComparing(fact -> fact.backing().status());
        List<Fact> sorted = new ArrayList<>(facts);
        sorted.sort(order.thenComparingDouble(Choosing::number));
        List<Fact> equal = sorted.stream()
                .filter(fact -> order.compare(fact, sorted.get(0)) == 0)
                .toList();
        Fact chosen = equal.get(property.toxicity() || property.measure().holdsCodes() ? 0 : (equal.size() - 1) / 2);
        sorted.remove(chosen);
        sorted.add(0, chosen);
        double low = sorted.stream().mapToDouble(Choosing::number).min().orElse(Double.NaN);
        double high = sorted.stream()
                .mapToDouble(fact -> fact.number().map(Choosing::upper).orElse(Double.NaN))
                .max()
                .orElse(Double.NaN);
        return Optional.of(new Choice(chosen, low, high, property.unit(), List.copyOf(sorted)));
    }

    /** Whether the conditions themselves warn of the value. */
    private static boolean doubtful(Fact fact) {
        return DOUBTS.stream().anyMatch(fact.conditions()::contains);
    }

    private static double number(Fact fact) {
        return fact.number().map(Bound::number).orElse(0.);
    }

    private static double upper(Bound bound) {
        return Double.isInfinite(bound.high()) ? bound.low() : bound.high();
    }

    /** 0 where the form is the one asked for or, with none asked, none is named; 1 unnamed; 2 another form. */
    private static int formRank(String conditions, String form) {
        String words = conditions.toLowerCase(Locale.ROOT);
        boolean named = FORMS.stream().anyMatch(known -> namesForm(words, known));
        if (form.isEmpty()) {
            return named ? 1 : 0;
        }
        if (named) {
            return words.contains(form.toLowerCase(Locale.ROOT)) ? 0 : 2;
        }
        return 1;
    }

    private static boolean namesForm(String words, String form) {
        return words.matches("(?s).*(^|[^a-z])" + form + "s?([^a-z].*|$)")
                || (form.equals("salt") && words.contains("salt"));
    }
}
