package plumbrow.science.reference;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * One published rating of one active ingredient, or of a mix of them, on one weed at one timing.
 *
 * @param actives ISO common names in alphabetical order
 * @param group distinct site-of-action numbers, ascending, joined by +
 * @param printed the rating as the source prints it
 * @param scale what was rated, when, and on which biotype
 * @param lowPercent lowest control [%]; empty where the source gives only the best mean
 * @param highPercent highest control [%]
 * @param tallestInches tallest plant treated in the trial [in], not the label's limit
 */
public record Rating(
        String crop,
        String timing,
        List<String> actives,
        String group,
        String weed,
        String scientificName,
        String printed,
        String scale,
        OptionalDouble lowPercent,
        double highPercent,
        OptionalDouble tallestInches,
        String year,
        Origin origin,
        Backing backing,
        int row)
        implements Entry {

    /** Whether resistant plants were treated: such a row is never mixed with one on susceptible plants. */
    public boolean onResistantPlants() {
        String words = scale.toLowerCase(Locale.ROOT);
        return words.contains("resistant") && words.contains("biotype");
    }

    @Override
    public String about() {
        return String.join("+", actives) + " on " + weed + ", " + timing + ", " + crop + ", " + scale + ", " + year
                + tallestInches.stream()
                        .mapToObj(tall -> ", to " + tall + " in")
                        .findFirst()
                        .orElse("");
    }

    @Override
    public String says() {
        return printed;
    }
}
