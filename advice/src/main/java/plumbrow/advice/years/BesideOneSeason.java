package plumbrow.advice.years;

import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.SeasonGapException;

/**
 * One sentence to stand beside the comparison of one season, at the desk, in the terminal and on paper: whether the seasons to come
 * change which program is best. On few draws, the same for all programs; two that are about equal are told so.
 */
public final class BesideOneSeason {
    private static final int FEW_DRAWS = 300;

    private BesideOneSeason() {}

    /**
     * The sentence.
     *
     * @throws SeasonGapException where the season lacks what a look ahead needs
     */
    public static String of(Season season, Field field) {
        return Ahead.of(season, field, Ahead.repeated(season, field), YearsOptions.DEFAULT.withDraws(FEW_DRAWS))
                .besideOneSeason();
    }

    /** The same, or why there is none. */
    public static String orWhyNot(Season season, Field field) {
        try {
            return of(season, field);
        } catch (SeasonGapException gap) {
            return "The seasons to come can't be looked at: " + gap.getMessage();
        }
    }
}
