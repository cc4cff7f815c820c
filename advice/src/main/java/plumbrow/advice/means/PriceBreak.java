package plumbrow.advice.means;

/**
 * The price of every unit bought by a farm from a quantity on.
 *
 * @param fromQuantity in the unit the product is priced for
 * @param priceUsd for one of that unit, all that is bought [$]
 */
public record PriceBreak(String farm, String product, double fromQuantity, double priceUsd, String source) {}
