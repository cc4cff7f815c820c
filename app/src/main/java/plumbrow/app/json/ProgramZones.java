package plumbrow.app.json;

import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.land.Zones;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * What setbacks leave of a field under one program, product by product.
 *
 * @param surveyed whether somebody has looked over what lies around the field; where not, it is at most what is left
 */
public record ProgramZones(String field, String program, boolean surveyed, List<Zones> passes) {
    public ProgramZones {
        passes = List.copyOf(passes);
    }

    public static ProgramZones of(Season season, Gates gates, Field field, Program program) {
        return new ProgramZones(
                field.name(), program.name(), season.ground().lookedForAll(field.name()), gates.zones(field, program));
    }
}
