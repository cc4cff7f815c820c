package plumbrow.science.economics;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class EconomicsFigures {
    public static final List<Figure> ALL = List.of(
            PartialBudget.FIGURE,
            BreakEvenGain.FIGURE,
            SharedBreakEven.FIGURE,
            BreakEvenPrice.FIGURE,
            BreakEvenChance.FIGURE,
            MarginGain.FIGURE,
            SeedCost.FIGURE,
            BagSaving.FIGURE,
            SeedUnits.FIGURE,
            SeedByWeight.FIGURE,
            GerminationCorrection.FIGURE,
            SavedSeedCost.FIGURE,
            GeneticLag.FIGURE,
            GeneticLag.BREAK_EVEN_AGE,
            RefugeLoss.FIGURE,
            PriceQuantile.FIGURE,
            PriceChanceAbove.FIGURE,
            PriceShortfall.FIGURE,
            Pert.FIGURE,
            Triangular.FIGURE,
            YieldDistributions.BETA,
            YieldDistributions.WEIBULL,
            MovingTogether.FIGURE,
            MovingTogether.REVENUE,
            DrawShare.ERROR,
            TailShortfall.FIGURE,
            DominanceCheck.FIGURE,
            ChanceBetter.FIGURE,
            BrierScore.FIGURE,
            BrierScore.PARTS,
            IntervalCoverage.FIGURE,
            PerfectInformation.FIGURE,
            PartialInformation.FIGURE,
            InformationNormal.FIGURE,
            SampleInformation.FIGURE,
            ScoutingValue.FIGURE,
            TrialValue.FIGURE,
            YieldMetric.FIGURE,
            DoseResponse.FIGURE,
            BestRateQuadratic.FIGURE,
            BestRatePlateau.FIGURE);

    private EconomicsFigures() {}
}
