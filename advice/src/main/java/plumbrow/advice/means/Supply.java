package plumbrow.advice.means;

/**
 * The most of a product that a farm can buy.
 *
 * @param mostQuantity in the unit the product is priced for
 */
public record Supply(String farm, String product, double mostQuantity, String source) {}
