package plumbrow.advice.weeds;

/**
 * A weed without numbers of its own, and the weed whose numbers stand in: borrowed, and shown as such.
 *
 * @param weed as the fields' rows name it
 * @param as a weed that the weed season knows
 * @param source who says that they are alike
 */
public record LikeWeed(String weed, String as, String source) {}
