package plumbrow.science.fate;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class FateFigures {
    public static final List<Figure> ALL = List.of(
            HenryConstant.FIGURE,
            VapourFlux.FIGURE,
            Dissipation.FIGURE,
            LeachingScore.FIGURE,
            Retardation.FIGURE,
            Attenuation.FIGURE,
            DriftDeposit.FIGURE,
            DriftIntoWater.FIGURE,
            StandingWater.FIGURE,
            FoodResidue.FIGURE,
            RiskQuotient.FIGURE,
            BeeExposure.FIGURE,
            BeeToxicityClass.FIGURE);

    private FateFigures() {}
}
