package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.reference.Substance;
import plumbrow.science.reference.Substances;

/** The ingredients that a sheet names, each with what is kept of it. */
record Ingredients(List<One> all) {
    /**
     * @param cas with a check digit that fits; else empty
     * @param kept the active ingredient in the reference data; null where none is kept
     * @param sameForm whether what is kept is of this very substance, not of its acid or another salt
     */
    record One(
            String name,
            String cas,
            @Nullable Amount percent,
            Quote quote,
            @Nullable Substance kept,
            boolean sameForm) {
        Origin origin() {
            return Said.origin(quote);
        }

        /** "atrazine", or "glyphosate (sheet: Glyphosate, potassium salt)". */
        String keptName() {
            Substance substance = kept;
            return substance == null || sameForm ? name : substance.name() + " (sheet: " + name + ")";
        }
    }

    static Ingredients of(SafetySheet sheet) {
        List<One> found = new ArrayList<>();
        for (Reading.Stated stated : sheet.all(ValueKind.INGREDIENT)) {
            Content.Ingredient each = (Content.Ingredient) stated.content();
            String cas = each.casFits() ? each.cas() : "";
            if (!filler(each.name(), cas)) {
                Optional<Substance> exact = cas.isEmpty() ? Optional.empty() : Substances.find(cas);
                Optional<Substance> same = exact.or(() -> Substances.find(each.name()));
                Optional<Substance> stem = same.or(() -> stem(each.name()));
                found.add(
                        new One(each.name(), cas, each.percent(), stated.quote(), stem.orElse(null), same.isPresent()));
            }
        }
        return new Ingredients(List.copyOf(found));
    }

    /** Those that are active ingredients by what is kept. */
    List<One> actives() {
        return all.stream().filter(one -> one.kept() != null).toList();
    }

    /** Names without a number of their own that stand for whatever is left. */
    private static boolean filler(String name, String cas) {
        String plain = name.toLowerCase(Locale.ROOT);
        return cas.isEmpty() && plain.matches(".*\\b(?:other|inert|remaining|balance|non-?hazardous|total)\\b.*");
    }

    /** The active behind a salt or ester: the name shortened word by word from its end. */
    private static Optional<Substance> stem(String name) {
        String rest = name.strip();
        while (rest.contains(" ")) {
            rest = rest.substring(0, rest.lastIndexOf(' '))
                    .replaceAll("[,(]+$", "")
                    .strip();
            Optional<Substance> found = Substances.find(rest);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
