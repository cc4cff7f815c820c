package plumbrow.advice.shelf;

import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.quantity.Amount;

/**
 * How well a product controls a pest at a rate.
 *
 * @param pest insect or weed, by the name the field's rows use
 * @param rate per acre
 * @param share share of the injury, insects or plants removed [0 to 1]
 * @param source who says so
 */
public record Control(String product, String pest, Amount rate, Distribution share, String source) {}
