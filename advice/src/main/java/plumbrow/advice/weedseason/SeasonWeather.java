package plumbrow.advice.weedseason;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/** The weather of a field's season as one of its uncertain inputs: which of the seasons that may come, comes. */
public final class SeasonWeather {
    /** The input's name on every field. */
    public static final String ID = "weather";

    private final FieldClimate climate;

    private SeasonWeather(FieldClimate climate) {
        this.climate = climate;
    }

    /** Of a field; empty where nothing is known of its weather, or all of it. */
    public static Optional<SeasonWeather> of(Season season, Field field) {
        return FieldClimate.of(season, field)
                .filter(climate -> climate.seasons().size() > 1)
                .map(SeasonWeather::new);
    }

    /**
     * The input's place. Its draws come from one stream for all fields: fields near each other have the same season. Where two
     * places differ, a wet season is wet at both.
     */
    public int place(SeasonInputs inputs) {
        return place(inputs, climate);
    }

    static int place(SeasonInputs inputs, FieldClimate climate) {
        return inputs.place(
                ID,
                "weather of the season, by the rain of its spring",
                "% of seasons have a drier one",
                new Distribution.Even(0, 100),
                climate.source(),
                "weather of the season",
                DoubtKind.YEAR);
    }

    /** How many seasons there are. */
    public int seasons() {
        return climate.seasons().size();
    }

    /** The season that a drawn value stands for, from 0 for the driest spring. */
    public int at(double drawn) {
        return climate.at(drawn);
    }

    /** What each season has for the yield of a crop, low to high; empty where nothing of the kind is known of the crop. */
    public double[] summer(Crop crop) {
        return climate.summer(crop);
    }

    /** Where the seasons come from. */
    public String source() {
        return climate.source();
    }

    /** What must be said of them. */
    public List<String> says() {
        return climate.says();
    }
}
