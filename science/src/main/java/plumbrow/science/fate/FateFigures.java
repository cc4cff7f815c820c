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
            EvaporationFlux.FIGURE,
            AirEmission.SHARE,
            IncorporationNeed.FIGURE,
            ThiocarbamateLoss.FIGURE,
            Dissipation.FIGURE,
            HalfLifeAt.FIGURE,
            HalfLifeAt.ARRHENIUS,
            SeasonDissipation.FIGURE,
            SeasonDissipation.SAFE,
            SeasonDissipation.YEARLY,
            Sorption.STRENGTH,
            Sorption.IN_SOIL,
            Sorption.FROM_SOIL,
            LeachingScore.FIGURE,
            Retardation.FIGURE,
            Attenuation.FIGURE,
            GroundwaterScreen.FIGURE,
            RunoffRating.FIGURE,
            RunoffRating.WITH_SOIL,
            RunoffShare.LOWERED,
            RunoffShare.FIELD,
            RunoffShare.SCREEN,
            DriftDeposit.FIGURE,
            DriftByRules.REPEATED,
            DriftByRules.AERIAL,
            DriftByRules.FLAT,
            DriftIntoWater.FIGURE,
            DriftBuffer.FIGURE,
            DriftBuffer.WATER,
            DriftBuffer.NEIGHBOUR,
            StandingWater.FIGURE,
            FarmPond.FIGURE,
            AquaticBenchmark.FIGURE,
            FoodResidue.FIGURE,
            ResidueMean.FIGURE,
            ResidueMean.ENERGY,
            WildlifeDose.FIGURE,
            WildlifeDose.ADJUSTED,
            GranuleExposure.FIGURE,
            TreatedSeed.FEED,
            RiskQuotient.FIGURE,
            WildlifeToxicity.FIGURE,
            BeeExposure.FIGURE,
            TreatedSeed.BEES,
            BeeResidueTime.FIGURE,
            BeeToxicityClass.FIGURE);

    private FateFigures() {}
}
