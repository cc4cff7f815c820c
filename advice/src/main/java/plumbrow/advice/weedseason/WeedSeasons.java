package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.LikeWeed;
import plumbrow.science.weedseason.KnownWeeds;
import plumbrow.science.weedseason.Species;

/** Says whether the weeds of a field can be followed day by day, and makes it so. */
public final class WeedSeasons {
    private WeedSeasons() {}

    /** The weeds of a field, in the order of the season. */
    public static List<WeedPressure> weeds(Season season, Field field) {
        return season.pests().weeds().stream()
                .filter(weed -> weed.field().equals(field.name()))
                .toList();
    }

    /**
     * The season of weeds of a field, under any program.
     *
     * @param inputs where its uncertain inputs are entered; left untouched where something is missing
     */
    public static SeasonAnswer of(Season season, Field field, SeasonInputs inputs) {
        Optional<FieldClimate> climate = FieldClimate.of(season, field);
        List<String> missing = missing(season, field, climate);
        return missing.isEmpty() && climate.isPresent()
                ? new FieldSeason(season, field, climate.get(), inputs)
                : new SeasonLacks(missing);
    }

    /** What a field lacks for its weeds to be followed day by day under each of its programs; empty where nothing is. */
    public static List<String> lacks(Season season, Field field) {
        return missing(season, field, FieldClimate.of(season, field));
    }

    private static List<String> missing(Season season, Field field, Optional<FieldClimate> climate) {
        List<String> missing = new ArrayList<>();
        List<WeedPressure> weeds = weeds(season, field);
        if (weeds.isEmpty()) {
            missing.add("a weed in the weeds sheet");
        }
        for (WeedPressure weed : weeds) {
            if (species(season, weed.weed()).isEmpty()) {
                missing.add(
                        "which known weed " + weed.weed() + " is like (sheet like_weeds; known are " + known() + ")");
            }
        }
        if (climate.isEmpty()) {
            missing.add("its climate, twelve months (sheet climate), or its days (sheet of weather days)");
        }
        List<Program> programs = season.programs(field.name());
        for (Program program : programs) {
            missing.addAll(ProgramGaps.of(season, field, program, climate));
        }
        return missing.stream().distinct().toList();
    }

    /** The numbers of a weed: its own, or those of the weed it is said to be like. */
    public static Optional<Species> species(Season season, String weed) {
        return KnownWeeds.find(weed)
                .or(() -> season.pests().weedBook().likes().stream()
                        .filter(like -> like.weed().equalsIgnoreCase(weed))
                        .findFirst()
                        .map(LikeWeed::as)
                        .flatMap(KnownWeeds::find));
    }

    /** Whether another weed stands in for one of which no numbers are known. */
    public static boolean borrowed(Season season, String weed) {
        return KnownWeeds.find(weed).isEmpty() && species(season, weed).isPresent();
    }

    private static String known() {
        return String.join(", ", KnownWeeds.all().stream().map(Species::name).toList());
    }
}
