package plumbrow.app.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Acres;
import plumbrow.advice.land.CountyFit;
import plumbrow.advice.land.Nearness;
import plumbrow.advice.land.TypedPlace;
import plumbrow.advice.season.Season;

/**
 * What a field's outline says of it.
 *
 * @param acresWritten as written down [ac]
 * @param acresInside inside the outline [ac]; null without one
 * @param counties by the census map, the largest part first
 * @param remarks sentences on what does not agree or is not sure
 * @param surveyed whether somebody has looked over what lies around it; where not, what is not listed is unknown, not none
 */
public record LandSummary(
        String field,
        double acresWritten,
        @Nullable Double acresInside,
        String state,
        String county,
        List<InCounty> counties,
        List<String> remarks,
        boolean surveyed,
        List<Around> around) {

    /** Part of a field that lies in a county. */
    public record InCounty(String fips, String name, String state, double acres) {}

    /** A thing in or near a field, with the distance that counts. */
    public record Around(
            String kind,
            String name,
            @Nullable Double nearestFt,
            @Nullable Double writtenFt,
            @Nullable Double measuredFt,
            String says,
            String source) {}

    public static LandSummary of(Season season, Field field) {
        Boundary outline = field.boundary();
        boolean surveyed = season.ground().lookedForAll(field.name());
        List<Around> around = season.ground().features(field.name()).stream()
                .map(feature -> {
                    Nearness nearness = Nearness.of(outline, feature);
                    return new Around(
                            feature.kind().word(),
                            feature.name(),
                            nearness.feet(),
                            feature.nearestFt(),
                            nearness.measuredFt(),
                            nearness.says(),
                            feature.source());
                })
                .toList();
        if (outline == null) {
            return new LandSummary(
                    field.name(),
                    field.acres(),
                    null,
                    field.state(),
                    field.county(),
                    List.of(),
                    List.of(TypedPlace.UNDRAWN),
                    surveyed,
                    around);
        }
        CountyFit fit = CountyFit.of(outline);
        return new LandSummary(
                field.name(),
                field.acres(),
                Acres.inside(outline),
                field.state(),
                field.county(),
                fit.in().stream()
                        .map(part -> new InCounty(
                                part.county().fips(),
                                part.county().name(),
                                part.county().state(),
                                part.acres()))
                        .toList(),
                TypedPlace.remarks(field.state(), field.county(), fit),
                surveyed,
                around);
    }
}
