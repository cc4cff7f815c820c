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
            BlendInsecticide.FIGURE,
            RateChoice.FIGURE,
            ConsistencyScore.FIGURE,
            BeetleCounts.TRAPS,
            BeetleCounts.PLANTS,
            BorerLoss.FIGURE,
            BorerWorksheet.FIRST,
            BorerWorksheet.SECOND,
            BeanLeafBeetle.FIGURE,
            WheatAphid.FIGURE,
            WesternBeanCutworm.DEGREE_DAYS,
            WesternBeanCutworm.INJURY_LEVEL,
            InsectCalendars.ROOTWORM,
            InsectCalendars.BLACK_CUTWORM,
            DegreeDays.FIGURE,
            DegreeDaySum.FIGURE,
            CornStage.FIGURE,
            EffectiveModes.FIGURE,
            RefugeAcres.FIGURE,
            RefugeLayout.PLANTER,
            RefugeLayout.ROWS,
            RefugeLayout.BAND,
            InsectResistance.FIGURE,
            ResistanceCost.FIGURE,
            BlendResistance.FIGURE,
            PyramidResistance.FIGURE);

    private InsectFigures() {}
}
