package plumbrow.documents.card;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;

/** The size of a jug or bag as a person writes it. */
public final class ContainerText {
    /** What would be right, for a sentence. */
    public static final String EXPECTED = "a volume or a weight more than 0, such as 2.5 gal, 1 qt, 25 lb";

    private static final Pattern SHAPE =
            Pattern.compile("\\s*(\\d{1,6}(?:\\.\\d{1,4})?)\\s*([A-Za-z][A-Za-z. ]{0,12})");

    private ContainerText() {}

    /** "2.5 gal", "25 lb"; empty where it is no volume and no weight more than 0. */
    public static Optional<Amount> read(String text) {
        Matcher parts = SHAPE.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(parts.group(1));
        return FarmUnit.parse(parts.group(2))
                .filter(unit ->
                        value > 0 && (unit.dimension() == Dimension.VOLUME || unit.dimension() == Dimension.MASS))
                .map(unit -> new Amount(value, unit));
    }
}
