package plumbrow.science;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.science.economics.EconomicsFigures;
import plumbrow.science.fate.FateFigures;
import plumbrow.science.figure.Figure;
import plumbrow.science.insects.InsectFigures;
import plumbrow.science.safety.SafetyFigures;
import plumbrow.science.soil.SoilFigures;
import plumbrow.science.spraying.SprayingFigures;
import plumbrow.science.stand.StandFigures;
import plumbrow.science.trials.TrialFigures;
import plumbrow.science.weather.WeatherFigures;
import plumbrow.science.weeds.WeedFigures;

/** Every figure there is, in the order of their subjects. */
public final class Figures {
    private static final List<Figure> ALL = Stream.of(
                    EconomicsFigures.ALL,
                    TrialFigures.ALL,
                    WeedFigures.ALL,
                    InsectFigures.ALL,
                    SafetyFigures.ALL,
                    FateFigures.ALL,
                    StandFigures.ALL,
                    SprayingFigures.ALL,
                    WeatherFigures.ALL,
                    SoilFigures.ALL)
            .flatMap(List::stream)
            .toList();
    private static final Map<String, Figure> BY_ID =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Figure::id, Function.identity()));

    private Figures() {}

    public static List<Figure> all() {
        return ALL;
    }

    public static Optional<Figure> find(String id) {
        return Optional.ofNullable(BY_ID.get(id));
    }
}
