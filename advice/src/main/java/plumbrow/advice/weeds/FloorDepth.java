package plumbrow.advice.weeds;

/**
 * One hole of a floor check: how deep a tool ran at one place of its width.
 *
 * @param place where across the width, as "left wing, 2nd shank"
 * @param depthIn from the surface to the floor [in]
 */
public record FloorDepth(String field, Tool tool, String place, double depthIn, String source) {}
