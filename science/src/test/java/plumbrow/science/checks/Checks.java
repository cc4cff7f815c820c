package plumbrow.science.checks;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.science.Figures;
import plumbrow.science.economics.EconomicsChecks;
import plumbrow.science.fate.FateChecks;
import plumbrow.science.insects.InsectChecks;
import plumbrow.science.safety.SafetyChecks;
import plumbrow.science.soil.SoilChecks;
import plumbrow.science.spraying.SprayingChecks;
import plumbrow.science.stand.StandChecks;
import plumbrow.science.trials.TrialChecks;
import plumbrow.science.weather.WeatherChecks;
import plumbrow.science.weeds.WeedChecks;

/** Every value from outside that is held against this code. */
public final class Checks {
    private Checks() {}

    /** Tables, curves and reckonings of several steps. */
    public static List<Check> listed() {
        return Stream.of(
                        EconomicsChecks.all(),
                        TrialChecks.all(),
                        WeedChecks.all(),
                        InsectChecks.all(),
                        SafetyChecks.all(),
                        FateChecks.all(),
                        StandChecks.all(),
                        SprayingChecks.all(),
                        WeatherChecks.all(),
                        SoilChecks.all())
                .flatMap(List::stream)
                .toList();
    }

    /** The worked examples of the figures, then the listed ones. */
    public static List<Check> all() {
        return Stream.concat(
                        Figures.all().stream()
                                .flatMap(
                                        figure -> figure.examples().stream().map(example -> Check.of(figure, example))),
                        listed().stream())
                .toList();
    }
}
