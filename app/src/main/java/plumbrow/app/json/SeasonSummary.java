package plumbrow.app.json;

import java.time.LocalDate;
import java.util.List;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * What a season holds, in short.
 *
 * @param products number of products on the shelf
 * @param acres of all fields [ac]
 */
public record SeasonSummary(
        int year,
        LocalDate asOf,
        String adviser,
        List<String> farms,
        int products,
        double acres,
        List<FieldSummary> fields) {
    public SeasonSummary {
        farms = List.copyOf(farms);
        fields = List.copyOf(fields);
    }

    /** A field with its candidate programs, in the order of entry. */
    public record FieldSummary(String field, String farm, Crop crop, double acres, List<String> programs) {
        public FieldSummary {
            programs = List.copyOf(programs);
        }
    }

    public static SeasonSummary of(Season season) {
        List<FieldSummary> fields = season.fields().stream()
                .map(field -> new FieldSummary(
                        field.name(),
                        field.farm(),
                        field.crop(),
                        field.acres(),
                        season.programs(field.name()).stream()
                                .map(Program::name)
                                .toList()))
                .toList();
        return new SeasonSummary(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms().stream().map(Farm::name).toList(),
                season.shelf().products().size(),
                fields.stream().mapToDouble(FieldSummary::acres).sum(),
                fields);
    }
}
