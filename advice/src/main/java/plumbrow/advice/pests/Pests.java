package plumbrow.advice.pests;

import java.util.List;

/** Everything that presses on the fields of a season. */
public record Pests(
        List<InsectPressure> insects,
        List<TraitDoubt> traitDoubts,
        List<WeedPressure> weeds,
        List<KnownResistance> resistance) {
    public Pests {
        insects = List.copyOf(insects);
        traitDoubts = List.copyOf(traitDoubts);
        weeds = List.copyOf(weeds);
        resistance = List.copyOf(resistance);
    }

    /** With no resistance known. */
    public Pests(List<InsectPressure> insects, List<TraitDoubt> traitDoubts, List<WeedPressure> weeds) {
        this(insects, traitDoubts, weeds, List.of());
    }
}
