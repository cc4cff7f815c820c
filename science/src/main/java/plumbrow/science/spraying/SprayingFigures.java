package plumbrow.science.spraying;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class SprayingFigures {
    public static final List<Figure> ALL = List.of(
            SprayVolume.FIGURE,
            NozzleFlow.FIGURE,
            SpraySpeed.FIGURE,
            SpraySpeed.TIMED,
            NozzlePressure.FIGURE,
            NozzlePressure.FLOW,
            NozzlePressure.CARRIER,
            SpeedRange.FIGURE,
            Loads.FIGURE,
            ProductPerLoad.FIGURE,
            MeasuredAmount.FIGURE,
            MeasuredAmount.LEFTOVER,
            ProductForIngredient.LIQUID,
            ProductForIngredient.DRY,
            WaterConditioner.FIGURE,
            RowLength.FIGURE,
            RowGranules.FIGURE,
            RowGranules.PER_ROW,
            RowGranules.CATCH,
            CatchCourse.FIGURE,
            CatchCourse.NOZZLES,
            VolumeCheck.FIGURE,
            BandRate.FIGURE,
            BandRate.FURROW,
            NozzleSize.FIGURE,
            DropletClass.FIGURE,
            MixingOrder.FIGURE,
            JarTest.FIGURE,
            JarTest.RINSE,
            Stand.SPACING,
            Stand.SEEDING,
            Stand.COUNT,
            CornStand.FIGURE,
            CornStandIowa.FIGURE,
            CornStand.REPLANT,
            PlantingDelay.FIGURE,
            FieldCapacity.FIGURE,
            FieldTime.FIGURE,
            FieldTime.DAYS,
            SuitableDays.FIGURE);

    private SprayingFigures() {}
}
