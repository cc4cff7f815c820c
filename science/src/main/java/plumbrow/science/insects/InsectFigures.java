package plumbrow.science.insects;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class InsectFigures {
    public static final List<Figure> ALL = List.of(
            EconomicInjuryLevel.FIGURE,
            DaysToThreshold.FIGURE,
            RootwormLoss.FIGURE,
            BorerLoss.FIGURE,
            DegreeDays.FIGURE,
            RefugeAcres.FIGURE,
            InsectResistance.FIGURE);

    private InsectFigures() {}
}
