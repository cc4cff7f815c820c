package plumbrow.science.fate;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class FateFigures {
    public static final List<Figure> ALL = List.of(
            VolatilityClass.FIGURE,
            WarmVapour.FIGURE,
            WarmVapour.HEAT,
            HenryConstant.FIGURE,
            VapourFlux.FIGURE,
            ThiocarbamateLoss.FIGURE,
            Dissipation.FIGURE,
            SeasonDissipation.FIGURE,
            SeasonDissipation.SAFE,
            SeasonDissipation.YEARLY,
            LeachingScore.FIGURE,
            Retardation.FIGURE,
            Attenuation.FIGURE,
            GroundwaterScreen.FIGURE,
            RunoffRating.FIGURE,
            RunoffRating.WITH_SOIL,
            DriftDeposit.FIGURE,
            DriftIntoWater.FIGURE,
            DriftBuffer.FIGURE,
            DriftBuffer.WATER,
            DriftBuffer.NEIGHBOUR,
            StandingWater.FIGURE,
            FarmPond.FIGURE,
            FoodResidue.FIGURE,
            ResidueMean.FIGURE,
            ResidueMean.ENERGY,
            WildlifeDose.FIGURE,
            WildlifeDose.ADJUSTED,
            GranuleExposure.FIGURE,
            RiskQuotient.FIGURE,
            WildlifeToxicity.FIGURE,
            BeeExposure.FIGURE,
            BeeToxicityClass.FIGURE);

    private FateFigures() {}
}
