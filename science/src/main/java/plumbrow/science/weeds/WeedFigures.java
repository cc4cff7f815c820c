package plumbrow.science.weeds;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class WeedFigures {
    public static final List<Figure> ALL = List.of(
            WeedDensity.COUNT,
            WeedLoss.FIGURE,
            WeedDensity.FOR_LOSS,
            WeedLossLate.FIGURE,
            MixedWeedLoss.FIGURE,
            RelativeLeafArea.FIGURE,
            WeedThreshold.FIGURE,
            RateMargin.FIGURE,
            CriticalPeriod.FIGURE,
            CriticalWindow.FIGURE,
            PostDelay.FIGURE,
            SoilHeat.FIGURE,
            WeedEmergence.FIGURE,
            EmergenceSpecies.NAMED,
            EmergenceSpecies.WATERHEMP,
            ResidualLeft.FIGURE,
            ResidualControl.FIGURE,
            ResidualRating.FIGURE,
            ResidualRating.FIT,
            ResidualRating.RECORD,
            ResidualSoil.DOSE,
            ResidualSoil.DAYS_LOST,
            HerbicideDose.FIGURE,
            HerbicideDose.HALF_DOSE,
            PassesControl.FIGURE,
            WeedCohorts.FIGURE,
            SeedbankNext.FIGURE,
            SeedbankNext.CONTROL_NEEDED,
            SeedbankRotation.FIGURE,
            WeedSeeds.LAMBSQUARTERS,
            WeedSeeds.CROWDED,
            WeedSeeds.CLEAN,
            ResistanceYears.FIGURE,
            ResistanceYears.SELECTION,
            ResistanceGenes.ALLELES,
            GenotypeShares.FIGURE,
            TwoHerbicides.FIGURE,
            ResistanceGenes.DOUBLE,
            ResistanceGenes.GROUPS);

    private WeedFigures() {}
}
