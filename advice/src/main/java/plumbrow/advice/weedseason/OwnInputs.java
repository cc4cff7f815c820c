package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.assumptions.DrawSource;

/** The uncertain inputs of a weed season reckoned by itself. Their draws are those that the weighing takes. */
public final class OwnInputs implements SeasonInputs {
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final List<Input> all = new ArrayList<>();

    /**
     * An input.
     *
     * @param id its name within the field
     * @param distribution how it is spread, in its unit
     * @param source who says so
     */
    public record Input(
            String id, String label, String unit, Distribution distribution, String source, String stream) {}

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
            all.add(new Input(id, label, unit, distribution, source, stream));
            return all.size() - 1;
        });
    }

    /** All entered so far, by their places. */
    public List<Input> all() {
        return List.copyOf(all);
    }

    /** A row of draws for each input entered so far. */
    public double[][] draws(DrawSource source) {
        return all.stream()
                .map(input ->
                        source.column(input.stream(), input.distribution()).values())
                .toArray(double[][]::new);
    }
}
