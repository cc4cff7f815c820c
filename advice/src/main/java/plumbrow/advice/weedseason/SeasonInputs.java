package plumbrow.advice.weedseason;

import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;

/** Where the uncertain inputs of a weed season are entered, each once, and known by its place. */
public interface SeasonInputs {
    /**
     * The place of an input; entered now if it is new.
     *
     * @param id its name within the field
     * @param stream the name its draws come from: the same on every field that shares it
     * @param doubt whether it belongs to the field, or a year brings it anew
     */
    int place(
            String id,
            String label,
            String unit,
            Distribution distribution,
            String source,
            String stream,
            DoubtKind doubt);
}
