package plumbrow.advice.search;

/**
 * One reason why a program earns less than another: a line of the difference of their mean margins.
 *
 * @param says what differs and its arithmetic
 * @param usdPerAcre how much of the difference it makes [$/ac]; below 0 where it speaks for the program that lost
 */
public record LostBy(String says, double usdPerAcre) {}
