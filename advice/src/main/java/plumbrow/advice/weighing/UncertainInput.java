package plumbrow.advice.weighing;

import plumbrow.advice.outlook.Law;

/**
 * One uncertain input of a field's weighing.
 *
 * @param id the name under which it can be changed, such as "price" or "pressure: corn rootworm"
 * @param label what a person reads
 * @param law how it is spread in this weighing
 * @param mean its mean over the draws
 * @param band its 10, 50 and 90 % points over the draws
 * @param source who says so
 */
public record UncertainInput(String id, String label, String unit, Law law, double mean, Band band, String source) {}
