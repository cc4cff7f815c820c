package plumbrow.advice.pestpage;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A site of action or trait group that fails, or may fail, on a field.
 *
 * @param sharePct share of the plants that resist [%], or the chance that a trait fails [%]; null where nobody has counted
 * @param log times it was used there all the same
 */
public record FailedSite(
        String field, String group, @Nullable Double sharePct, String says, List<String> log, String source) {
    public FailedSite {
        log = List.copyOf(log);
    }
}
