package plumbrow.advice.gates;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What one gate says of one thing in a program.
 *
 * @param gate id of the gate
 * @param subject the pass, product or ingredient it speaks of
 * @param says one sentence with the reason
 * @param measured the value found, where the gate measures one
 * @param limit the limit it is held against, where there is one
 * @param unit unit of both
 * @param source where the limit stands
 * @param clears what would clear it: the condition to keep, what to look up and where, or what to change; empty
 *     where it is clear
 * @param gap what the reference data lack, where it stands as it does for want of it; null elsewhere
 */
public record Finding(
        String gate,
        Protects protects,
        Standing standing,
        String subject,
        String says,
        @Nullable Double measured,
        @Nullable Double limit,
        String unit,
        String source,
        String clears,
        @Nullable Gap gap) {
    /** A property that the reference data lack of an active ingredient. */
    public record Gap(String ingredient, String property) {}

    /** A finding that no gap in the reference data decides. */
    public Finding(
            String gate,
            Protects protects,
            Standing standing,
            String subject,
            String says,
            @Nullable Double measured,
            @Nullable Double limit,
            String unit,
            String source,
            String clears) {
        this(gate, protects, standing, subject, says, measured, limit, unit, source, clears, null);
    }

    /** How far the value found lies from the limit, in the unit of both; empty where nothing is measured. */
    public OptionalDouble distance() {
        return measured == null || limit == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.abs(measured - limit));
    }

    /** The bare word of a gate on a subject; what was measured, where it stands and what clears it are added. */
    static Finding of(Gate gate, Standing standing, String subject, String says) {
        return new Finding(gate.id(), gate.protects(), standing, subject, says, null, null, "", "", "");
    }

    /** The same finding with the value found, the limit it is held against and the unit of both. */
    Finding against(double found, double allowed, String unitOfBoth) {
        return new Finding(gate, protects, standing, subject, says, found, allowed, unitOfBoth, source, clears, gap);
    }

    /** The same finding with the place where its limit stands. */
    Finding standingIn(String place) {
        return new Finding(gate, protects, standing, subject, says, measured, limit, unit, place, clears, gap);
    }

    /** The same finding with another sentence. */
    Finding saying(String sentence) {
        return new Finding(gate, protects, standing, subject, sentence, measured, limit, unit, source, clears, gap);
    }

    /** The same finding with what would clear it. */
    Finding clearedBy(String what) {
        return new Finding(gate, protects, standing, subject, says, measured, limit, unit, source, what, gap);
    }

    /** The same finding; where it is conditional, because the reference data lack a property of an ingredient. */
    Finding lacking(String ingredient, String property) {
        if (standing != Standing.CONDITIONAL) {
            return this;
        }
        return new Finding(
                gate,
                protects,
                standing,
                subject,
                says,
                measured,
                limit,
                unit,
                source,
                clears,
                new Gap(ingredient, property));
    }
}
