package plumbrow.app.book;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A program that somebody decided on. Choices are only ever added: a change of mind is one more choice.
 *
 * @param year harvest year of the season
 * @param field the field
 * @param program the program chosen for it
 * @param who who decided
 * @param when the moment of deciding
 * @param why the reason in the decider's own words, may be empty
 * @param chanceBeatsBaseline what the advice said then: chance that the program earns more than the baseline [0 to 1];
 *     null where it was chosen without a weighing
 * @param meanMarginUsdPerAcre what the advice said then: mean margin over these inputs [$/ac]; null likewise
 */
public record Choice(
        int year,
        String field,
        String program,
        String who,
        Instant when,
        String why,
        @Nullable Double chanceBeatsBaseline,
        @Nullable Double meanMarginUsdPerAcre) {}
