package plumbrow.science.stand;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class StandFigures {
    public static final List<Figure> ALL = List.of(
            FieldEmergence.FIGURE,
            CornResponse.FIGURE,
            SoybeanResponse.FIGURE,
            WheatResponse.FIGURE,
            BestSeedingRate.FIGURE,
            ReplantNet.FIGURE);

    private StandFigures() {}
}
