package plumbrow.advice.pests;

import java.util.List;
import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weeds.WeedBook;

/** Everything that presses on the fields of a season. */
public record Pests(
        List<InsectPressure> insects,
        List<TraitDoubt> traitDoubts,
        List<WeedPressure> weeds,
        List<KnownResistance> resistance,
        WeedBook weedBook) {
    public Pests {
        insects = List.copyOf(insects);
        traitDoubts = List.copyOf(traitDoubts);
        weeds = List.copyOf(weeds);
        resistance = List.copyOf(resistance);
    }

    /** With nothing known of the weeds' season. */
    public Pests(
            List<InsectPressure> insects,
            List<TraitDoubt> traitDoubts,
            List<WeedPressure> weeds,
            List<KnownResistance> resistance) {
        this(insects, traitDoubts, weeds, resistance, WeedBook.BLANK);
    }

    /** The same with other insects and weeds on the fields. */
    public Pests withPressure(List<InsectPressure> otherInsects, List<WeedPressure> otherWeeds) {
        return new Pests(otherInsects, traitDoubts, otherWeeds, resistance, weedBook);
    }

    /** The same with other things known of the weeds' season. */
    public Pests withWeedBook(WeedBook other) {
        return new Pests(insects, traitDoubts, weeds, resistance, other);
    }

    /** The same with other tillage. */
    public Pests withTillage(List<TillageWork> tillage) {
        return new Pests(insects, traitDoubts, weeds, resistance, weedBook.withTillage(tillage));
    }

    /** The same with nothing known of the weeds' season. */
    public Pests withoutWeedBook() {
        return new Pests(insects, traitDoubts, weeds, resistance);
    }

    /** With no resistance known. */
    public Pests(List<InsectPressure> insects, List<TraitDoubt> traitDoubts, List<WeedPressure> weeds) {
        this(insects, traitDoubts, weeds, List.of());
    }
}
