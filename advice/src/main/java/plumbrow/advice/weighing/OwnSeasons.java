package plumbrow.advice.weighing;

import plumbrow.advice.field.Field;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;

/** A season cut once into all that the answers of its fields come out of, to ask for field after field. */
public final class OwnSeasons {
    private final FieldSeasons fields;
    private final DanglingNames dangling;

    private OwnSeasons(Season season) {
        this.fields = FieldSeasons.of(season);
        this.dangling = new DanglingNames(season);
    }

    public static OwnSeasons of(Season season) {
        return new OwnSeasons(season);
    }

    public OwnSeason of(Field field) {
        return new OwnSeason(fields.of(field), field, dangling.cautions(fields.programs(field), field));
    }
}
