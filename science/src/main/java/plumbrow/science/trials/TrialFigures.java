package plumbrow.science.trials;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class TrialFigures {
    public static final List<Figure> ALL = List.of(
            PairedStrips.FIGURE,
            BlockAnova.FIGURE,
            ReplicatesNeeded.FIGURE,
            ReplicatesNeeded.POWER,
            RandomEffects.FIGURE,
            DoseResponseFit.FIGURE);

    private TrialFigures() {}
}
