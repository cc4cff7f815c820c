package plumbrow.science.economics;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class EconomicsFigures {
    public static final List<Figure> ALL = List.of(
            PartialBudget.FIGURE,
            BreakEvenGain.FIGURE,
            BreakEvenPrice.FIGURE,
            BreakEvenChance.FIGURE,
            SeedCost.FIGURE,
            SavedSeedCost.FIGURE,
            RefugeLoss.FIGURE,
            PriceQuantile.FIGURE,
            PriceChanceAbove.FIGURE,
            Pert.FIGURE,
            Triangular.FIGURE,
            TailShortfall.FIGURE,
            DominanceCheck.FIGURE,
            PerfectInformation.FIGURE,
            SampleInformation.FIGURE);

    private EconomicsFigures() {}
}
