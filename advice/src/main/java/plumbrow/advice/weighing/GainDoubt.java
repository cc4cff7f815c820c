package plumbrow.advice.weighing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the doubt about a program's gain is made of: what this field is, which could be found out, and what the year brings, which
 * can't. Shares of the variance of the gain over the draws.
 *
 * @param program whose gain
 * @param other over which program
 * @param fieldShare share that knowing all of the field would take away [0 to 1]
 * @param yearShare share that the year alone brings [0 to 1]; what is left is of both at once
 * @param input id of the input of the field that counts most; null where none brings a tenth
 * @param inputShare its share [0 to 1]
 * @param cases the gain by what that input turns out to be
 * @param says all that in sentences
 */
public record GainDoubt(
        String program,
        String other,
        double fieldShare,
        double yearShare,
        @Nullable String input,
        double inputShare,
        List<Case> cases,
        String says) {
    public GainDoubt {
        cases = List.copyOf(cases);
    }

    /**
     * The gain where the input is one thing.
     *
     * @param when such as "if Cry3 works on corn rootworm here"
     * @param share of the draws in which it is so
     * @param meanGainUsdPerAcre mean gain there [$/ac]
     * @param chanceAhead share of those draws in which the program earns more; a tie counts half
     */
    public record Case(String when, double share, double meanGainUsdPerAcre, double chanceAhead) {}
}
