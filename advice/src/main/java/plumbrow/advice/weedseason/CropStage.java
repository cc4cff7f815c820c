package plumbrow.advice.weedseason;

/**
 * A growth stage of the crop and when it comes.
 *
 * @param word as labels write it: "V6"
 * @param day of the year
 */
public record CropStage(String word, int day) {}
