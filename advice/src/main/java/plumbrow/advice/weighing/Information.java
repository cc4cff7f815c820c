package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.season.Season;
import plumbrow.science.figure.Numbers;

/** What knowing each input, or taking each planned sample, is worth before deciding. */
final class Information {
    private Information() {}

    /**
     * What knowing each input exactly, before deciding, is worth [$/ac], by its place: by the same means as the range over which
     * the advice holds, so that what turns nothing is worth nothing by itself. Where price or weather is tied to the yield, one
     * tells of the other, which only a regression over the draws sees.
     */
    static double[] worths(FieldModel model, double[][] columns, Knowledge knowledge, Optional<AdviceRanges> ranges) {
        double[] worths = new double[columns.length];
        for (int place = 0; place < worths.length; place++) {
            Variable variable = model.variables().get(place);
            if (!Chances.settled(variable.distribution()) && !TriggerReader.luck(variable) && ranges.isPresent()) {
                worths[place] = Math.min(
                        knowledge.ofEverything(),
                        tied(model, place)
                                ? knowledge.of(columns[place], columns[place].length)
                                : ranges.get().worth(place));
            }
        }
        return worths;
    }

    private static boolean tied(FieldModel model, int place) {
        WeatherTie weather = model.weather();
        boolean byWeather = weather != null && weather.ties() && (place == weather.place() || place == model.yield());
        return (model.tie() != 0 && (place == model.price() || place == model.yield())) || byWeather;
    }

    /** Every input that is in doubt, by what knowing it is worth, most first. */
    static List<InformationValue> onInputs(FieldModel model, double[][] columns, Knowledge knowledge, double[] worths) {
        List<InformationValue> all = new ArrayList<>();
        for (int place = 0; place < columns.length; place++) {
            Variable input = model.variables().get(place);
            if (Chances.settled(input.distribution()) || TriggerReader.luck(input)) {
                continue;
            }
            double[] draws = columns[place];
            double value = worths[place];
            double half = knowledge.of(draws, draws.length / 2);
            double field = value * model.field().acres();
            all.add(new InformationValue(input.id(), input.label(), value, field, half, says(input, value, field)));
        }
        all.sort(Comparator.comparingDouble(InformationValue::usdPerAcre).reversed());
        return all;
    }

    private static String says(Variable input, double value, double field) {
        String what = input.distribution() instanceof Distribution.Chance
                ? input.label().replace("chance that ", "whether ")
                : "the " + input.label();
        return value < 0.005
                ? "Knowing " + what + " by itself is worth less than a cent an acre."
                : "Knowing " + what + " beforehand is worth at most " + Numbers.dollars(value, 2) + "/ac, "
                        + Numbers.dollars(field, 0) + " for the field.";
    }

    /** Every planned sample of an insect, by what it is worth, most first. */
    static List<SampleWorth> onSamples(
            Season season, FieldModel model, double[][] columns, Knowledge knowledge, DrawSource source) {
        List<SampleWorth> all = new ArrayList<>();
        for (InsectPressure pressure : season.pests().insects()) {
            if (pressure.field().equals(model.field().name()) && pressure.sample() != null) {
                all.add(worth(pressure, pressure.sample(), model, columns, knowledge, source));
            }
        }
        all.sort(Comparator.comparingDouble(SampleWorth::usdPerAcre).reversed());
        return all;
    }

    /** A sample's mean is the true pressure plus an error that shrinks with the root of its size. */
    private static SampleWorth worth(
            InsectPressure pressure,
            ScoutingSample sample,
            FieldModel model,
            double[][] columns,
            Knowledge knowledge,
            DrawSource source) {
        int place = place(model, "pressure: " + pressure.insect());
        double error = sample.spread() / Math.sqrt(sample.size());
        double[] seen = source.normals("sample of " + pressure.insect() + " on " + pressure.field());
        for (int i = 0; i < seen.length; i++) {
            seen[i] = Math.max(0, columns[place][i] + error * seen[i]);
        }
        double value = knowledge.of(seen, seen.length);
        double field = value * model.field().acres();
        double net = field - sample.costUsd();
        String says = "Looking at " + sample.size() + " samples for " + pressure.insect() + " before deciding is worth "
                + Numbers.dollars(value, 2) + "/ac, " + Numbers.dollars(field, 0) + " for the field; it costs "
                + Numbers.dollars(sample.costUsd(), 0)
                + (net > 0 ? ": do it." : ": it does not pay on this field.");
        return new SampleWorth(pressure.insect(), sample, value, field, net, says);
    }

    private static int place(FieldModel model, String id) {
        for (int place = 0; place < model.variables().size(); place++) {
            if (model.variables().get(place).id().equals(id)) {
                return place;
            }
        }
        throw new IllegalStateException("the model has no " + id);
    }
}
