package plumbrow.advice.weedseason;

import java.util.List;
import plumbrow.science.weedseason.Pass;
import plumbrow.science.weedseason.Post;
import plumbrow.science.weedseason.Residual;

/**
 * A pass of the engine and the pass of the course that it is part of.
 *
 * @param number of the course's pass; one with soil and leaf control is two passes here
 */
record MadePass(int number, Pass pass) {
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
