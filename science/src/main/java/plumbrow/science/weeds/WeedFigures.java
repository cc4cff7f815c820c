package plumbrow.science.weeds;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class WeedFigures {
    public static final List<Figure> ALL = List.of(
            WeedLoss.FIGURE,
            WeedLossLate.FIGURE,
            MixedWeedLoss.FIGURE,
            RelativeLeafArea.FIGURE,
            WeedThreshold.FIGURE,
            RateMargin.FIGURE,
            CriticalPeriod.FIGURE,
            CriticalWindow.FIGURE,
            PostDelay.FIGURE,
            WeedEmergence.FIGURE,
            ResidualLeft.FIGURE,
            ResidualControl.FIGURE,
            ResidualControl.RECORD,
            HerbicideDose.FIGURE,
            HerbicideDose.HALF_DOSE,
            PassesControl.FIGURE,
            WeedCohorts.FIGURE,
            SeedbankNext.FIGURE,
            SeedbankNext.CONTROL_NEEDED,
            SeedbankRotation.FIGURE,
            ResistanceYears.FIGURE,
            ResistanceYears.SELECTION,
            ResistanceGenes.ALLELES,
            ResistanceGenes.DOUBLE,
            ResistanceGenes.GROUPS);

    private WeedFigures() {}
}
