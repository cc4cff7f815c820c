package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.weedseason.SeasonInputs;

/** The uncertain inputs of one field, each entered once and known by its place. */
final class Variables implements SeasonInputs {
    private final Map<String, Distribution> changed;
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final List<Variable> all = new ArrayList<>();

    Variables(Map<String, Distribution> changed) {
        this.changed = changed;
    }

    /** The place of an input; entered now if it is new, with the distribution a person changed it to, if he did. */
    @Override
    public int place(
            String id,
            String label,
            String unit,
            Distribution distribution,
            String source,
            String stream,
            DoubtKind doubt) {
        return places.computeIfAbsent(id, key -> {
            Distribution changedDistribution = changed.get(id);
            all.add(
                    changedDistribution == null
                            ? new Variable(id, label, unit, distribution, source, stream, doubt)
                            : new Variable(id, label, unit, changedDistribution, "changed at the desk", stream, doubt));
            return all.size() - 1;
        });
    }

    List<Variable> all() {
        return List.copyOf(all);
    }
}
