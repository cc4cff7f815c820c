package plumbrow.advice.land;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;

/**
 * What the setbacks of one product leave of a field.
 *
 * @param pass number of the pass
 * @param acres area inside the outline [ac]; the field's acres where it has no outline
 * @param zones the setbacks that ask for a distance, and what each takes
 * @param sprayableAcres what is left when every zone is kept, whatever the wind [ac]; null where one is not drawn
 * @param windAcres how much more may be sprayed while the wind blows away from what a setback guards downwind only
 *     [ac]; null where one is not drawn
 * @param sprayable what is left, as an outline; null where nothing is left or it is not drawn
 * @param notRead kinds of features around whose setback nobody has read on the label
 */
public record Zones(
        int pass,
        String product,
        double acres,
        List<Zone> zones,
        @Nullable Double sprayableAcres,
        @Nullable Double windAcres,
        @Nullable Boundary sprayable,
        List<String> notRead) {
    public Zones {
        zones = List.copyOf(zones);
        notRead = List.copyOf(notRead);
    }

    /** What must be left unsprayed [ac]; null where a zone is not drawn. */
    public @Nullable Double lostAcres() {
        return sprayableAcres == null ? null : Double.valueOf(Math.max(0, acres - sprayableAcres));
    }
}
