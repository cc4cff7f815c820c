package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Amount.Qualifier;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;

/** Section 3. */
final class IngredientWriter {
    private IngredientWriter() {}

    static void write(Draft draft) {
        Product product = draft.product;
        if (draft.house.wording() == Wording.EU) {
            draft.subheading("3.2 Mixtures");
        }
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < product.ingredients().size(); i++) {
            String name = product.ingredients().get(i);
            String cas = product.casNumbers().get(i);
            boolean bareColumn = draft.house.ingredients() == House.Ingredients.TABLE
                    && draft.house.digits() != Digits.COMMA_AND_DOT;
            String share = share(draft, i, !bareColumn);
            switch (draft.house.ingredients()) {
                case TABLE ->
                    rows.add(List.of(
                            name, cas.isEmpty() ? draft.pick("Proprietary", "-", "Not applicable") : cas, share));
                case WIDE_TABLE ->
                    rows.add(List.of(
                            name,
                            cas.isEmpty() ? "-" : cas,
                            cas.isEmpty() ? "-" : "2" + (10 + i) + "-61" + i + "-8",
                            share,
                            cas.isEmpty() ? "-" : "Acute Tox. 4; H302"));
                case LABELLED -> labelled(draft, name, cas, share);
                case LINES -> lines(draft, name, cas, share);
            }
        }
        if (draft.house.ingredients() == House.Ingredients.TABLE) {
            draft.table(
                    List.of(50, 25, 25),
                    List.of(
                            draft.pick("Chemical name", "Component", "Ingredient"),
                            draft.pick("CAS No.", "CAS Number"),
                            draft.pick("% by weight", "Weight %", "Percent (w/w)")),
                    rows);
        } else if (draft.house.ingredients() == House.Ingredients.WIDE_TABLE) {
            draft.table(
                    List.of(26, 16, 16, 20, 22),
                    List.of("Component", "CAS-No.", "EC-No.", "Concentration (% w/w)", "Classification"),
                    rows);
        }
    }

    private static void labelled(Draft draft, String name, String cas, String share) {
        draft.pair("Chemical name", name);
        if (!cas.isEmpty()) {
            draft.pair("CAS-No.", cas);
        }
        draft.pair("Concentration", share);
    }

    private static void lines(Draft draft, String name, String cas, String share) {
        draft.paragraph(name
                + (cas.isEmpty() ? "" : draft.pick(" (CAS No. " + cas + ")", ", CAS " + cas))
                + draft.pick(": ", " ")
                + share);
    }

    private static String share(Draft draft, int at, boolean sign) {
        double[] range = draft.product.percents().get(at);
        Digits digits = draft.house.digits();
        String text;
        Qualifier qualifier;
        double low = range[0];
        double high = range[1];
        if (low < high) {
            qualifier = Qualifier.RANGE;
            text = draft.house.wording() == Wording.EU
                    ? ">= " + digits.of(low) + " - < " + digits.of(high)
                    : digits.of(low) + draft.pick("-", " - ", "–", " to ") + digits.of(high);
        } else if (low < 3 && draft.chance(2)) {
            qualifier = Qualifier.LESS_THAN;
            text = "< " + digits.of(low);
        } else {
            qualifier = Qualifier.EXACTLY;
            text = digits.of(low);
        }
        String name = draft.product.ingredients().get(at);
        String cas = draft.product.casNumbers().get(at);
        Amount amount = new Amount(qualifier, low, high, "%", Conditions.NONE);
        draft.truth(ValueKind.INGREDIENT, new Content.Ingredient(name, cas, fits(cas), amount));
        return text + (sign ? draft.pick("%", " %") : "");
    }

    /** The rule of the registry, counted once more and apart from the reader. */
    private static boolean fits(String cas) {
        String digits = new StringBuilder(cas.replace("-", "")).reverse().toString();
        int sum = 0;
        for (int i = 1; i < digits.length(); i++) {
            sum += i * (digits.charAt(i) - '0');
        }
        return !cas.isEmpty() && sum % 10 == digits.charAt(0) - '0';
    }
}
