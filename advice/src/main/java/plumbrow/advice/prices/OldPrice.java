package plumbrow.advice.prices;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.means.PriceBreak;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.science.figure.Numbers;

/**
 * A price that came along from an earlier season. Its mark stands before the source of its row and names the price, so that it
 * holds until somebody confirms the price, which takes the mark away, or enters another one, by whatever door.
 *
 * @param of harvest year it was asked for
 * @param price the number as it was [$ per the row's unit]; the mean where it is uncertain
 * @param forYear harvest year it has not been confirmed for
 * @param what whose price it is: a product, or a price of the assumptions in words
 */
public record OldPrice(int of, double price, int forYear, String what) {
    private static final Pattern MARK =
            Pattern.compile("^Price of (\\d{4}) \\(([-0-9.]+)\\), not confirmed for (\\d{4})\\. ", Pattern.DOTALL);

    /** The source of a row with the mark before it; a mark that stands there already is replaced, its year kept. */
    public static String marked(String source, int of, double price, int forYear) {
        Matcher there = MARK.matcher(source);
        int since = there.lookingAt() && number(price).equals(there.group(2)) ? Integer.parseInt(there.group(1)) : of;
        String mark = "Price of " + since + " (" + number(price) + "), not confirmed for " + forYear + ". ";
        String rest = confirmed(source);
        return mark + rest.substring(0, Math.min(rest.length(), 1000 - mark.length()));
    }

    /** The source of a row without the mark. */
    public static String confirmed(String source) {
        return MARK.matcher(source).replaceFirst("");
    }

    /** The mark of a product's price, where it has one and its price is still that. */
    public static Optional<OldPrice> of(Product product) {
        return read(product.source(), product.priceUsd(), product.name());
    }

    /** The mark of a price of the assumptions, likewise. */
    public static Optional<OldPrice> of(AssumptionLine line) {
        return priced(line.quantity())
                ? read(line.source(), Chances.of(line.distribution()).mean(), words(line))
                : Optional.empty();
    }

    /** The mark of a price for a larger quantity, likewise. */
    public static Optional<OldPrice> of(PriceBreak one) {
        return read(
                one.source(),
                one.priceUsd(),
                one.product() + " from " + Numbers.plain(one.fromQuantity()) + " on, " + one.farm());
    }

    /** Every such price of a season: assumptions, products, prices for larger quantities. */
    public static List<OldPrice> all(Season season) {
        List<OldPrice> all = new ArrayList<>();
        season.assumptions().forEach(line -> of(line).ifPresent(all::add));
        season.shelf().products().forEach(product -> of(product).ifPresent(all::add));
        season.work().means().breaks().forEach(one -> of(one).ifPresent(all::add));
        return List.copyOf(all);
    }

    /** "Prices of an earlier season, not confirmed for 2027: price of corn (2026), Undersod G (2026)." */
    public static String sentence(List<OldPrice> old) {
        return (old.size() == 1 ? "Price" : "Prices") + " of an earlier season, not confirmed for "
                + old.get(0).forYear() + ": "
                + old.stream().map(one -> one.what() + " (" + one.of() + ")").collect(Collectors.joining(", ")) + ".";
    }

    /** Whether a quantity of the assumptions is asked for anew each season. */
    public static boolean priced(AssumptionQuantity quantity) {
        return quantity == AssumptionQuantity.PRICE
                || quantity == AssumptionQuantity.HANDLING
                || quantity == AssumptionQuantity.DRYING;
    }

    private static Optional<OldPrice> read(String source, double price, String what) {
        Matcher mark = MARK.matcher(source);
        return mark.lookingAt() && number(price).equals(mark.group(2))
                ? Optional.of(
                        new OldPrice(Integer.parseInt(mark.group(1)), price, Integer.parseInt(mark.group(3)), what))
                : Optional.empty();
    }

    private static String words(AssumptionLine line) {
        String of =
                line.field() == null ? (line.crop() == null ? "" : line.crop().word()) : line.field();
        return line.quantity().word() + " of " + of;
    }

    private static String number(double price) {
        return new BigDecimal(price)
                .round(new MathContext(7))
                .stripTrailingZeros()
                .toPlainString();
    }
}
