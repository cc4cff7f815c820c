package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.sheet.Amount.Qualifier;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Organism;
import plumbrow.documents.sheet.ValueKind;

/** Section 12. */
final class EcologyWriter {
    private EcologyWriter() {}

    /** A test: the creature in two spellings, the measure, its hours and its value. */
    private record Test(
            Organism organism, String name, String measure, int hours, double value, String unit, String family) {}

    static void write(Draft draft) {
        Product product = draft.product;
        List<Test> tests = new ArrayList<>(List.of(
                new Test(
                        Organism.RAINBOW_TROUT,
                        draft.pick("Rainbow trout", "Oncorhynchus mykiss", "rainbow trout"),
                        "LC50",
                        96,
                        product.trout(),
                        "mg/L",
                        "Toxicity to fish"),
                new Test(
                        Organism.DAPHNIA,
                        draft.pick("Daphnia magna", "water flea"),
                        "EC50",
                        48,
                        product.daphnia(),
                        "mg/L",
                        "Toxicity to aquatic invertebrates"),
                new Test(
                        Organism.BOBWHITE,
                        draft.pick("Bobwhite quail", "bobwhite quail"),
                        "LD50",
                        0,
                        product.quail(),
                        "mg/kg",
                        "Toxicity to birds"),
                new Test(
                        Organism.HONEY_BEE,
                        draft.pick("Honey bee", "honeybee", "Apis mellifera"),
                        "LD50",
                        draft.chance(2) ? 48 : 0,
                        product.bee(),
                        "µg/bee",
                        "Toxicity to bees")));
        if (draft.chance(2)) {
            tests.add(
                    1,
                    new Test(
                            Organism.BLUEGILL,
                            "Bluegill sunfish",
                            "LC50",
                            96,
                            product.trout() * 2,
                            "mg/L",
                            "Toxicity to fish"));
        }
        switch (draft.house.ecology()) {
            case PAIRS ->
                tests.forEach(test -> draft.pair(
                        test.family,
                        test.measure + " (" + test.name + time(test, ", ", "") + "): " + value(draft, test)));
            case LINES ->
                tests.forEach(test -> draft.paragraph(
                        capital(test.name) + " " + test.measure + time(test, " (", ")") + ": " + value(draft, test)));
            case SENTENCES ->
                tests.forEach(test -> draft.paragraph("The " + time(test, "", " ") + test.measure + " for " + test.name
                        + " is " + value(draft, test) + "."));
            case TABLE -> {
                List<List<String>> rows = new ArrayList<>();
                tests.forEach(test -> rows.add(List.of(
                        capital(test.name),
                        test.measure,
                        test.hours == 0 ? "-" : test.hours + " h",
                        value(draft, test))));
                draft.table(List.of(35, 15, 15, 35), List.of("Species", "Test", "Duration", "Result"), rows);
            }
        }
        draft.pair("Persistence and degradability", "Half-life in soil about 30 days.");
        draft.pair("Mobility in soil", "Koc " + draft.house.digits().of(320) + " mL/g");
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String time(Test test, String before, String after) {
        return test.hours == 0 ? "" : before + test.hours + (before.isEmpty() ? "-hour" : " h") + after;
    }

    private static String value(Draft draft, Test test) {
        Qualifier qualifier = draft.qualifier();
        double value = test.value;
        if (draft.house.digits().doubtful(value)) {
            draft.unclear(ValueKind.ECOTOXICITY);
        } else {
            Double hours = test.hours == 0 ? null : (double) test.hours;
            draft.truth(
                    ValueKind.ECOTOXICITY,
                    new Content.Eco(
                            "", test.organism, test.measure, Draft.amount(qualifier, value, test.unit, null, hours)));
        }
        return draft.sign(qualifier) + draft.house.digits().of(value) + " " + test.unit;
    }
}
