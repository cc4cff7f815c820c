package plumbrow.advice.check;

import java.util.List;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;

/** Where a person finds what a gate does not know. */
public enum Where {
    LABEL("on the label, bag tag or state list"),
    FIELD("in the field, on its map or in a soil test"),
    PLAN("in the plan of the program"),
    FARM("at the farm");

    private static final List<String> OF_THE_FIELD = List.of(
            "Measure ",
            "Test ",
            "Walk ",
            "Look up the texture",
            "Look up the depth to ground water",
            "Look up slope",
            "Enter the next crop",
            "Enter the herbicide traits",
            "Enter which of them",
            "Say whether the cover");
    private static final List<String> OF_THE_FARM = List.of(
            "Look what ",
            "Say whether there is such a place",
            "Enter the licence",
            "Read it on the licence",
            "Read the categories on the licence",
            "Enter on the sheet people",
            "Ask the state's department");
    private static final List<String> OF_THE_PLAN = List.of(
            "Plan ",
            "Say ",
            "Write ",
            "Name ",
            "Check both days",
            "Enter the rate",
            "Enter rates",
            "Look up the class of nozzle");

    private final String words;

    Where(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Where to look for what an unknown finding asks. Gates begin that sentence with what is to be done. */
    public static Where of(Finding unknown) {
        if (unknown.standing() != Standing.UNKNOWN) {
            throw new IllegalArgumentException(unknown.toString());
        }
        String ask = unknown.clears();
        if (OF_THE_FIELD.stream().anyMatch(ask::startsWith)) {
            return FIELD;
        }
        if (OF_THE_FARM.stream().anyMatch(ask::startsWith)) {
            return FARM;
        }
        return OF_THE_PLAN.stream().anyMatch(ask::startsWith) ? PLAN : LABEL;
    }
}
