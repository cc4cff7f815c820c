package plumbrow.advice.weedseason;

import java.util.List;
import plumbrow.science.weedseason.Pass;
import plumbrow.science.weedseason.Post;
import plumbrow.science.weedseason.Residual;

/**
 * A pass of the engine and the pass of the program that it is part of.
 *
 * @param number of the program's pass; one with soil and leaf control is two passes here
 * @param after days after the day on which the field is fit for it: 1 where it must follow tillage of its own day
 */
record MadePass(int number, Pass pass, int after) {
    /** The pass in a season: on the first day from the planned one on that is fit for the field. */
    Pass in(SeasonDays days) {
        return on(pass, days);
    }

    /** The same as it is rated on one weed alone. */
    Pass in(SeasonDays days, int weed) {
        return on(on(weed), days);
    }

    private Pass on(Pass one, SeasonDays days) {
        return one.on(Math.min(days.last(), days.fitFrom(one.day() - after) + after));
    }

    /** The same pass as it is rated on one weed alone. */
    Pass on(int weed) {
        if (pass instanceof Residual soil) {
            return new Residual(
                    soil.name(),
                    soil.day(),
                    soil.daysLate(),
                    soil.group(),
                    soil.rate(),
                    soil.chemistry(),
                    soil.rainNeedMm(),
                    soil.rainAfterDays(),
                    soil.hoursOnSurface(),
                    List.of(soil.responses().get(weed)));
        }
        if (pass instanceof Post post) {
            return new Post(
                    post.name(),
                    post.day(),
                    post.daysLate(),
                    post.group(),
                    post.rate(),
                    post.missedShare(),
                    List.of(post.responses().get(weed)));
        }
        return pass;
    }

    /** Whether it does anything to a weed. */
    boolean touches(int weed) {
        if (pass instanceof Residual soil) {
            return soil.responses().get(weed).ed50() < Double.POSITIVE_INFINITY;
        }
        return !(pass instanceof Post post) || post.responses().get(weed).ed50() < Double.POSITIVE_INFINITY;
    }
}
