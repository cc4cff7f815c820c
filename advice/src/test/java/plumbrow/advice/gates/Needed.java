package plumbrow.advice.gates;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds which values a gate needs, by forgetting each in turn and looking whether the gate then says unknown. */
final class Needed {
    /** The parts of a scene whose values may be forgotten, by their names in a decision table. */
    static final List<String> PARTS = List.of(
            "product",
            "use",
            "active",
            "limit",
            "terms",
            "care",
            "plan",
            "pass",
            "feature",
            "next",
            "setback",
            "plantback",
            "soil",
            "special",
            "log",
            "field",
            "crew",
            "person",
            "refuge",
            "rule",
            "rights",
            "tag",
            "tolerance",
            "labellimit",
            "history",
            "licence",
            "land");

    private Needed() {}

    /** The edits of one part that turn a gate unknown: "terms.boomHighestIn=?" and "-terms". */
    static List<String> of(Gate gate, @Nullable String base, String part) {
        List<String> needed = new ArrayList<>();
        for (RecordComponent value : Edits.values(Edits.apply(WholeLabel.scene(), base), part)) {
            if (LabelValues.mayBeUnread(value)) {
                String forget = part + "." + value.getName() + "=?";
                if (unknown(gate, base, forget)) {
                    needed.add(forget);
                }
            }
        }
        return needed;
    }

    private static boolean unknown(Gate gate, @Nullable String base, String forget) {
        Scene scene = Edits.apply(Edits.apply(WholeLabel.scene(), base), forget);
        return scene.standing(gate) == Standing.UNKNOWN;
    }
}
