package plumbrow.advice.field;

import org.jspecify.annotations.Nullable;

/**
 * A field in this season.
 *
 * @param name unique in the book
 * @param farm the farm it belongs to
 * @param acres area [ac], more than 0
 * @param boundary its outline, where one is on file
 * @param state two-letter postal code
 * @param county county name, without the word county
 * @param crop the crop of this season
 * @param texture soil texture, where known
 * @param organicMatterPct soil organic matter [%], where known
 * @param ph soil pH, where known
 * @param slopePct slope [%], where known
 */
public record Field(
        String name,
        String farm,
        double acres,
        @Nullable Boundary boundary,
        String state,
        String county,
        Crop crop,
        @Nullable Texture texture,
        @Nullable Double organicMatterPct,
        @Nullable Double ph,
        @Nullable Double slopePct) {
    /** The same field in a season of another crop. */
    public Field growing(Crop other) {
        return new Field(name, farm, acres, boundary, state, county, other, texture, organicMatterPct, ph, slopePct);
    }
}
