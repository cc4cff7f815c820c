package plumbrow.advice.weedseason;

/**
 * A growth stage of the crop and when it comes.
 *
 * @param word as labels write it: "V6"
 * @param day of the year, in the season in the middle
 * @param early day of the year before which it comes in one season of ten
 * @param late day of the year after which it comes in one season of ten
 */
public record CropStage(String word, int day, int early, int late) {}
