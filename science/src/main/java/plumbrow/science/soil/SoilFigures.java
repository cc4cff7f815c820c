package plumbrow.science.soil;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class SoilFigures {
    public static final List<Figure> ALL = List.of(
            TextureClass.FIGURE,
            TillageFloor.FIGURE,
            Incorporation.FIGURE,
            Incorporation.SPECIES,
            SweepOverlap.FIGURE,
            ResidueCover.FIGURE,
            ResiduePasses.FIGURE,
            ResidueCover.COUNTED,
            PolygonAcres.FIGURE,
            SetbackAcres.FIGURE,
            IrrigationDepth.FIGURE,
            Activation.FIGURE,
            SoilWater.FIGURE);

    private SoilFigures() {}
}
