package plumbrow.science.weedseason;

import java.util.List;

/**
 * A herbicide sprayed on standing weeds.
 *
 * @param group site-of-action group
 * @param rate in any unit shared with the ED50s
 * @param missedShare weeds that the spray does not reach: skips, plants under leaves [-]
 * @param responses one for each species, in their order
 */
public record Post(
        String name,
        int day,
        Uncertain daysLate,
        int group,
        double rate,
        double missedShare,
        List<LeafResponse> responses)
        implements Pass {
    public Post {
        Limits.notNegative("rate", rate);
        Limits.share("missed weeds", missedShare);
        responses = List.copyOf(responses);
    }

    @Override
    public Post on(int other) {
        return new Post(name, other, daysLate, group, rate, missedShare, responses);
    }
}
