package plumbrow.advice.lookback;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.science.figure.Step;

/**
 * A field after harvest: what its program earned, what was expected, and what the next program would have brought.
 *
 * @param acres of the field [ac]
 * @param program the program that grew on it
 * @param chosen whether that is the one chosen last; else expectations are not those of this program
 * @param yieldBuPerAcre at standard moisture [bu/ac]
 * @param priceUsdPerBushel as received [$/bu]; null where it is not sold yet
 * @param costUsdPerAcre as counted [$/ac]; null where there is no price to count with
 * @param marginUsdPerAcre what it earned the operator [$/ac]; null likewise
 * @param expected of it at the choice; null where that was not written down
 * @param expectedMeanUsdPerAcre mean margin stated at the choice [$/ac]; null where it was not weighed
 * @param other what the next program would have brought; null where none is known or there is no price
 * @param lacks what keeps it from being counted in full, in a sentence; empty for nothing
 */
public record FieldLook(
        int year,
        String field,
        Crop crop,
        double acres,
        String program,
        boolean chosen,
        double yieldBuPerAcre,
        @Nullable Double priceUsdPerBushel,
        @Nullable Double costTypedUsdPerAcre,
        @Nullable Double costUsdPerAcre,
        @Nullable Double marginUsdPerAcre,
        @Nullable Expectation expected,
        @Nullable Double expectedMeanUsdPerAcre,
        @Nullable Other other,
        List<Strip> strips,
        List<Step> working,
        String lacks) {
    public FieldLook {
        strips = List.copyOf(strips);
        working = List.copyOf(working);
    }

    /**
     * The next program, which did not grow on the field.
     *
     * @param sameBushelsUsdPerAcre its margin with this field's yield and price and its own costs [$/ac]
     * @param equalYieldBuPerAcre the yield at which it would have earned as much [bu/ac]
     * @param expectedYieldDifference its mean yield less this program's, as the weighing expected [bu/ac]
     */
    public record Other(
            String program, double sameBushelsUsdPerAcre, double equalYieldBuPerAcre, double expectedYieldDifference) {}

    /**
     * A strip of another program on the same field, which was harvested by itself.
     *
     * @param marginUsdPerAcre at the same price [$/ac]
     * @param statedAhead the chance stated that this field's program earns more; null where none was
     * @param ahead whether it did
     */
    public record Strip(
            String program,
            double yieldBuPerAcre,
            double marginUsdPerAcre,
            @Nullable Double statedAhead,
            boolean ahead) {}

    /** Whether all of it can be held against what was expected. */
    public boolean whole() {
        return chosen && expected != null && marginUsdPerAcre != null;
    }
}
