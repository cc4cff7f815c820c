package plumbrow.app.desk.machine;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.app.json.RateMapSummary;

/**
 * The page of a machine file.
 *
 * @param passes those that put seed or a product on
 * @param pass the one shown; null where there is none
 * @param map null where no file can be made, {@code fault} says why
 * @param query the address's question for the downloads, with its "?"
 * @param cell side of a cell as typed, {@code unread} feet as typed
 */
public record MachineView(
        Field field,
        Program program,
        List<Pass> passes,
        @Nullable Pass pass,
        @Nullable RateMapSummary map,
        String fault,
        String query,
        String cell,
        String unread) {
    public MachineView {
        passes = List.copyOf(passes);
    }
}
