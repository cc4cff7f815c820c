package plumbrow.advice.search;

/**
 * One reason why a course earns less than another: a line of the difference of their mean margins.
 *
 * @param says what differs and its arithmetic
 * @param usdPerAcre how much of the difference it makes [$/ac]; below 0 where it speaks for the course that lost
 */
public record LostBy(String says, double usdPerAcre) {}
