package plumbrow.advice.program;

import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Numbers;

/**
 * What a pass waits for: it is made only where scouting counts so many of an insect or more. Scouting is paid for in any case.
 *
 * @param insect as in the insects of the field
 * @param threshold count at which the pass is made, more than 0 [{@code unit}]
 * @param unit what is counted, such as "aphids/plant"; null where it is the pressure itself, in its own measure
 * @param countPerPressure how many are counted on the day of scouting for each unit of the untreated pressure that comes of
 *     them; 1 where the pressure itself is counted
 * @param withinTimes the pressure that comes of a count lies within this factor of {@code count ÷ countPerPressure} in 80 of 100
 *     cases, at least 1
 * @param scoutingUsdPerAcre [$/ac of the field]; null where it is what the insect's scouting sample costs
 */
public record ScoutingTrigger(
        String insect,
        double threshold,
        @Nullable String unit,
        double countPerPressure,
        double withinTimes,
        @Nullable Double scoutingUsdPerAcre) {
    /** Counted in the measure of the pressure itself. */
    public ScoutingTrigger(String insect, double threshold, @Nullable Double scoutingUsdPerAcre) {
        this(insect, threshold, null, 1, 1, scoutingUsdPerAcre);
    }

    /** "250 aphids/plant", "4 of true armyworm". */
    public String limit() {
        return Numbers.plain(threshold) + (unit == null ? " of " + insect : " " + unit);
    }

    /** "only from 250 aphids/plant on", "only from 4 of true armyworm on". */
    public String words() {
        return "only from " + limit() + " on";
    }
}
