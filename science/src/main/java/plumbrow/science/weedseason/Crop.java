package plumbrow.science.weedseason;

/**
 * The crop as the weeds see it.
 *
 * @param emergenceDay day of the year on which it is up
 * @param closedDay day of the year on which its leaves meet between the rows, later
 */
public record Crop(int emergenceDay, int closedDay) {
    public Crop {
        if (closedDay <= emergenceDay) {
            throw new IllegalArgumentException(
                    "the crop closes on day " + closedDay + "; expected after it is up, day " + emergenceDay);
        }
    }
}
