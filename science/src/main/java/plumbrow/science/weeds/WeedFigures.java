package plumbrow.science.weeds;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class WeedFigures {
    public static final List<Figure> ALL = List.of(
            WeedLoss.FIGURE,
            WeedLossLate.FIGURE,
            MixedWeedLoss.FIGURE,
            WeedThreshold.FIGURE,
            CriticalPeriod.FIGURE,
            CriticalWindow.FIGURE,
            WeedEmergence.FIGURE,
            ResidualLeft.FIGURE,
            ResidualControl.FIGURE,
            ResidualControl.RECORD,
            PassesControl.FIGURE,
            SeedbankNext.FIGURE,
            SeedbankNext.CONTROL_NEEDED,
            SeedbankNext.ROTATION,
            ResistanceYears.FIGURE,
            ResistanceYears.SELECTION);

    private WeedFigures() {}
}
