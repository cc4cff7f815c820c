package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.outlook.DoubtKind;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.weedseason.SeasonInputs;

/** The uncertain inputs of one field, each entered once and known by its place. */
final class Variables implements SeasonInputs {
    private final Map<String, Law> changed;
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final List<Variable> all = new ArrayList<>();

    Variables(Map<String, Law> changed) {
        this.changed = changed;
    }

    /** The place of an input; entered now if it is new, with the law a person changed it to, if he did. */
    @Override
    public int place(String id, String label, String unit, Law law, String source, String stream, DoubtKind doubt) {
        return places.computeIfAbsent(id, key -> {
            Law changedLaw = changed.get(id);
            all.add(
                    changedLaw == null
                            ? new Variable(id, label, unit, law, source, stream, doubt)
                            : new Variable(id, label, unit, changedLaw, "changed at the desk", stream, doubt));
            return all.size() - 1;
        });
    }

    List<Variable> all() {
        return List.copyOf(all);
    }
}
