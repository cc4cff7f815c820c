package plumbrow.science.trials;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class TrialFigures {
    public static final List<Figure> ALL = List.of(
            StripYield.FIGURE,
            PairedStrips.FIGURE,
            BlockAnova.FIGURE,
            ManyTreatments.DIFFERENCES,
            ManyTreatments.LOST_PLOT,
            SplitPlot.FIGURE,
            ReplicatesNeeded.FIGURE,
            ReplicatesNeeded.POWER,
            TwoGroups.FIGURE,
            RandomEffects.FIGURE,
            SitesReml.FIGURE,
            DoseResponseFit.FIGURE,
            EffectiveDose.FIGURE,
            KillFit.FIGURE,
            YieldCurveFit.QUADRATIC,
            YieldCurveFit.PLATEAU);

    private TrialFigures() {}
}
