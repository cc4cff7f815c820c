package plumbrow.documents.binder;

import java.util.List;

/**
 * What must be said wherever a decision is printed, whatever the season.
 *
 * <p>Source of the telephone numbers: US EPA, "In Case of Pesticide Emergency" (911, poison control); 42 USC 9603(a)
 * for the National Response Center.
 */
public final class StandingCautions {
    /** Who decides. */
    public static final List<String> WHO_DECIDES = List.of(
            "The current label is the law. Read the label on the container before anything is mixed or put on; where it"
                    + " and these pages differ, the label holds.",
            "Local code, the state's pesticide office, seed and land agreements may ask for more. Licensed practice"
                    + " decides what may be done on a field.",
            "The odds are counts over seasons simulated from the assumptions stated here. They are no promise of a season.",
            "Unknown means that nobody has looked it up. It never means that it is allowed.");

    /** Who to call. */
    public static final List<String> WHO_TO_CALL = List.of(
            "Someone is unconscious, in convulsions or cannot breathe: 911.",
            "Swallowed, breathed in, on the skin or in the eye: the emergency number on the label, or poison control,"
                    + " 1-800-222-1222 (United States, day and night). Have the label at hand.",
            "A spill: the emergency number on the label. A reportable quantity goes to the National Response Center,"
                    + " 1-800-424-8802, at once, and to the state.",
            "What fits this county: its extension office.");

    private StandingCautions() {}
}
