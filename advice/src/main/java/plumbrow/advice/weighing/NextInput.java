package plumbrow.advice.weighing;

import java.util.List;
import plumbrow.science.figure.Numbers;

/**
 * One thing that somebody could still tell or look up about a field, and what knowing it is worth there.
 *
 * @param input what it is known by: the id of an {@link UncertainInput}, "price: " and a product, or "look up: " and what is read
 * @param asks the question
 * @param where where the answer is found
 * @param findingOutUsd what finding it out costs [$], typical
 * @param usdPerAcre expected gain from choosing after knowing it, above choosing now [$/ac]
 * @param usdField the same for the field [$]
 * @param programs the programs that wait for it; empty where it is a number
 * @param says one sentence
 */
public record NextInput(
        String input,
        Kind kind,
        String asks,
        String where,
        double findingOutUsd,
        double usdPerAcre,
        double usdField,
        List<String> programs,
        String says) {
    /** What kind of answer it wants. */
    public enum Kind {
        NUMBER,
        YES_OR_NO,
        LOOK_UP
    }

    public NextInput {
        programs = List.copyOf(programs);
    }

    /** What it is worth less what finding it out costs [$ for the field]. */
    public double netUsd() {
        return usdField - findingOutUsd;
    }

    /** An input with its dollars for the field and its sentence. */
    public static NextInput of(
            String input,
            Kind kind,
            String asks,
            String where,
            double findingOutUsd,
            double usdPerAcre,
            double acres,
            List<String> programs) {
        double field = usdPerAcre * acres;
        String says = asks + " Worth up to " + Numbers.dollars(usdPerAcre, 2) + "/ac, " + Numbers.dollars(field, 0)
                + " for the field; " + where
                + (findingOutUsd > 0 ? ", about " + Numbers.dollars(findingOutUsd, 0) : "") + ".";
        return new NextInput(input, kind, asks, where, findingOutUsd, usdPerAcre, field, programs, says);
    }
}
