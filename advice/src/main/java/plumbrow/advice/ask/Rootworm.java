package plumbrow.advice.ask;

import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.science.reference.TypicalValue;

/** Corn rootworm as several questions ask about it: after how many years of corn, and what roots showed last July. */
final class Rootworm {
    static final String INSECT = "corn rootworm";
    static final Box HISTORY = Box.choice(
            "history",
            "This corn comes",
            "eggs are laid in last summer’s corn",
            "after",
            "after another crop",
            "second",
            "second year of corn",
            "third",
            "third year of corn or more");
    static final Box INJURY = Box.number(
                    "injury", "Root injury last July", "nodes", "on the 0 to 3 scale, roots without protection", 0, 3)
            .costing(75);
    static final Box FAILED = Box.choice(
                    "failed",
                    "Did trait corn here show unexpected injury last year?",
                    "more than 1 node behind one trait, half a node behind two",
                    "no",
                    "no",
                    "yes",
                    "yes")
            .costing(40);

    /** What one summer's roots say of the next summer's. Common practice, no source. */
    private static final double TIMES = 2;

    private static final double FAILED_AFTER_INJURY = 0.7;
    private static final double FAILED_AFTER_NONE = 0.05;

    private Rootworm() {}

    static String quantity(Answers answers) {
        String history = switch (answers.choice("history")) {
            case "after" -> "after another crop";
            case "second" -> "second year of corn";
            case "third" -> "continuous corn, third year or more";
            default -> "history not told";
        };
        return "corn rootworm, node injury without protection: " + history;
    }

    /** Pressure, loss and what was grown before. */
    static void into(Draft draft) {
        Answers answers = draft.answers();
        String history = answers.choice("history");
        if (!history.isEmpty()) {
            draft.grown(1, history.equals("after") ? "soybean" : "corn");
            draft.grown(2, history.equals("third") ? "corn" : "soybean");
        }
        Double injury = answers.numbers().get("injury");
        TypicalValue typical = draft.typical(quantity(answers));
        TypicalValue loss = draft.typical("loss per node of injury");
        Distribution pressure = injury == null ? Draft.spread(typical) : Draft.about(injury, TIMES, 3);
        String source = injury == null ? typical.words() : "roots of last July, " + Draft.TOLD;
        draft.insect(
                INSECT,
                Measure.NODE_INJURY,
                pressure,
                new Distribution.Fixed(loss.likely()),
                draft.typical("neighbours make up").likely(),
                source + "; loss per node " + loss.origin().source());
        draft.told("pressure: " + INSECT, "injury");
    }

    /** A trait against rootworm, and the doubt that it still works here. */
    static void trait(Draft draft, String name) {
        draft.trait(name, name, INSECT, "trait control of rootworm where it works");
        String failed = draft.answers().choice("failed");
        double chance = switch (failed) {
            case "yes" -> FAILED_AFTER_INJURY;
            case "no" -> FAILED_AFTER_NONE;
            default -> draft.typical("chance that one rootworm trait fails").likely();
        };
        draft.traitDoubt(
                name,
                INSECT,
                chance,
                draft.typical("control left where the trait fails").likely(),
                failed.isEmpty()
                        ? draft.typical("chance that one rootworm trait fails").words()
                        : "injury behind trait corn " + Draft.TOLD + "; chance is common practice, no source");
        draft.told("trait works: " + name + " on " + INSECT, "failed");
    }
}
