package plumbrow.science.insects;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class InsectFigures {
    public static final List<Figure> ALL = List.of(
            EconomicInjuryLevel.FIGURE,
            DaysToThreshold.FIGURE,
            DoublingTime.FIGURE,
            AphidThreshold.FIGURE,
            AphidDays.FIGURE,
            AphidSampling.FIGURE,
            PresenceSampling.FIGURE,
            RootwormLoss.FIGURE,
            RootwormBreakEven.FIGURE,
            RootwormBreakEven.CHANCE,
            NodeInjury.TACTICS,
            NodeInjury.BLEND,
            ConsistencyScore.FIGURE,
            BeetleCounts.TRAPS,
            BeetleCounts.PLANTS,
            BorerLoss.FIGURE,
            BorerWorksheet.FIRST,
            BorerWorksheet.SECOND,
            BeanLeafBeetle.FIGURE,
            WheatAphid.FIGURE,
            DegreeDays.FIGURE,
            RefugeAcres.FIGURE,
            InsectResistance.FIGURE);

    private InsectFigures() {}
}
