package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.ValueKind;

/** Section 11. */
final class ToxicityWriter {
    private ToxicityWriter() {}

    static void write(Draft draft) {
        switch (draft.house.toxicity()) {
            case PAIRS -> pairs(draft);
            case LINES -> lines(draft);
            case UNDER_HEADINGS -> underHeadings(draft);
            case ROUTE_TABLE -> table(draft);
            case BY_COMPONENT -> byComponent(draft);
            case SEXES -> sexes(draft);
        }
        draft.pair("Skin irritation", draft.pick("Slightly irritating (rabbit)", "Not irritating (rabbit)"));
        draft.pair("Sensitization", draft.pick("Not a sensitizer (guinea pig)", "Sensitizer"));
        if (draft.chance(2)) {
            draft.pair(
                    "Chronic toxicity",
                    "NOAEL (90 days, rat): " + draft.house.digits().of(12.5) + " mg/kg/day");
        }
    }

    private static void pairs(Draft draft) {
        Product product = draft.product;
        draft.pair(
                draft.pick("Acute oral toxicity", "Oral toxicity"),
                draft.pick("LD50 (rat): ", "LD50 Rat: ", "LD50 (rat) ")
                        + dose(draft, Route.SWALLOWED, "rat", "", product.oral()));
        draft.pair(
                "Acute dermal toxicity",
                "LD50 (rabbit): " + dose(draft, Route.SKIN, "rabbit", "", product.dermal())
                        + draft.pick("", " bw", " body weight"));
        draft.pair("Acute inhalation toxicity", "LC50 (rat, 4 h): " + air(draft, product.inhaled()));
    }

    private static void lines(Draft draft) {
        Product product = draft.product;
        draft.paragraph(draft.pick("Oral LD50 (rat): ", "LD50 oral, rat: ", "Oral: LD50 rat ")
                + dose(draft, Route.SWALLOWED, "rat", "", product.oral()));
        draft.paragraph(draft.pick("Dermal LD50 (rabbit): ", "LD50 dermal, rabbit: ", "Dermal: LD50 rabbit ")
                + dose(draft, Route.SKIN, "rabbit", "", product.dermal()));
        draft.paragraph(draft.pick("Inhalation LC50 (rat): ", "LC50 inhalation, rat: ")
                + air(draft, product.inhaled())
                + draft.pick(" (4-hr)", " (4 hours)", " / 4h"));
    }

    private static void underHeadings(Draft draft) {
        Product product = draft.product;
        draft.subheading("Acute oral toxicity");
        draft.pair("LD50 (rat)", dose(draft, Route.SWALLOWED, "rat", "", product.oral()));
        draft.subheading("Acute dermal toxicity");
        draft.pair("LD50 (rabbit)", dose(draft, Route.SKIN, "rabbit", "", product.dermal()));
        draft.subheading("Acute inhalation toxicity");
        draft.pair("LC50 (rat, 4 h)", air(draft, product.inhaled()));
    }

    private static void table(Draft draft) {
        Product product = draft.product;
        draft.table(
                List.of(25, 20, 20, 35),
                List.of("Route", "Species", "Test", "Result"),
                List.of(
                        List.of("Oral", "Rat", "LD50", dose(draft, Route.SWALLOWED, "rat", "", product.oral())),
                        List.of("Dermal", "Rabbit", "LD50", dose(draft, Route.SKIN, "rabbit", "", product.dermal())),
                        List.of("Inhalation", "Rat", "LC50 (4 h)", air(draft, product.inhaled()))));
    }

    private static void byComponent(Draft draft) {
        List<List<String>> rows = new ArrayList<>();
        List<String> names = draft.product.ingredients();
        for (String name : names.subList(0, names.size() - 1)) {
            double oral = 50 + draft.random.nextInt(5000);
            double dermal = 200 + draft.random.nextInt(4800);
            double inhaled = 1 + draft.random.nextInt(50) / 10.0;
            boolean none = draft.chance(3);
            Qualifier more = draft.qualifier();
            Amount breath = Draft.amount(more, inhaled, "mg/L", null, 4.0);
            rows.add(List.of(
                    name,
                    amount(draft, name, Route.SWALLOWED, "rat", oral) + " (Rat)",
                    amount(draft, name, Route.SKIN, "rabbit", dermal) + " (Rabbit)",
                    none ? "-" : draft.sign(more) + draft.house.digits().of(inhaled) + " mg/L (Rat) 4 h"));
            if (!none) {
                draft.truth(
                        ValueKind.ACUTE_TOXICITY, new Content.Acute(name, Route.INHALED, "LC50", "rat", "", breath));
            }
        }
        draft.table(
                List.of(25, 25, 25, 25), List.of("Chemical name", "Oral LD50", "Dermal LD50", "Inhalation LC50"), rows);
    }

    private static String amount(Draft draft, String name, Route route, String species, double value) {
        Qualifier qualifier = draft.qualifier();
        draft.truth(
                ValueKind.ACUTE_TOXICITY,
                new Content.Acute(
                        name, route, "LD50", species, "", Draft.amount(qualifier, value, "mg/kg", null, null)));
        return draft.sign(qualifier) + draft.house.digits().of(value) + " mg/kg";
    }

    private static void sexes(Draft draft) {
        Product product = draft.product;
        double male = Math.rint(product.oral() * 1.2 + 1);
        double female = Math.rint(product.oral());
        Amount males = Draft.amount(Qualifier.EXACTLY, male, "mg/kg", null, null);
        Amount females = Draft.amount(Qualifier.EXACTLY, female, "mg/kg", null, null);
        draft.truth(ValueKind.ACUTE_TOXICITY, new Content.Acute("", Route.SWALLOWED, "LD50", "rat", "male", males));
        draft.truth(ValueKind.ACUTE_TOXICITY, new Content.Acute("", Route.SWALLOWED, "LD50", "rat", "female", females));
        String one = draft.house.digits().of(male) + " mg/kg";
        String two = draft.house.digits().of(female) + " mg/kg";
        draft.pair(
                "Oral LD50",
                draft.pick(
                        "Rat: male " + one + ", female " + two,
                        one + " (male rat), " + two + " (female rat)",
                        "rat (male) " + one + "; rat (female) " + two));
        draft.pair("Dermal LD50", "Rat, male and female: " + dose(draft, Route.SKIN, "rat", "", product.dermal()));
        draft.pair("Inhalation LC50", air(draft, product.inhaled()) + " (rat, 4-hour exposure)");
    }

    private static String dose(Draft draft, Route route, String species, String sex, double value) {
        Qualifier qualifier = draft.qualifier();
        if (draft.house.digits().doubtful(value)) {
            draft.unclear(ValueKind.ACUTE_TOXICITY);
        } else {
            draft.truth(
                    ValueKind.ACUTE_TOXICITY,
                    new Content.Acute(
                            "", route, "LD50", species, sex, Draft.amount(qualifier, value, "mg/kg", null, null)));
        }
        return draft.sign(qualifier) + draft.house.digits().of(value) + " mg/kg";
    }

    private static String air(Draft draft, double value) {
        Qualifier qualifier = draft.qualifier();
        draft.truth(
                ValueKind.ACUTE_TOXICITY,
                new Content.Acute(
                        "", Route.INHALED, "LC50", "rat", "", Draft.amount(qualifier, value, "mg/L", null, 4.0)));
        return draft.sign(qualifier) + draft.house.digits().of(value) + " " + draft.pick("mg/L", "mg/l");
    }
}
