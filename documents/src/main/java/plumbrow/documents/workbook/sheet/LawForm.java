package plumbrow.documents.workbook.sheet;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.outlook.Law;

/** The ways in which the outlook sheet states what is uncertain, and what its columns a, b and c then hold. */
enum LawForm {
    NUMBER("number", "number"),
    PERT("pert", "lowest", "most likely", "highest"),
    TRIANGULAR("triangular", "lowest", "most likely", "highest"),
    NORMAL("normal", "mean", "coefficient of variation"),
    WEIBULL("weibull", "mean", "coefficient of variation"),
    PRICE("price", "price today", "volatility in a year", "years until it is known"),
    PAST("past");

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> parts;

    LawForm(String word, String... parts) {
        this.word = word;
        this.parts = List.of(parts);
    }

    String word() {
        return word;
    }

    /** What a, b and c hold, as far as they are used. */
    List<String> parts() {
        return parts;
    }

    boolean ordered() {
        return this == PERT || this == TRIANGULAR;
    }

    /** Whether the part at an index is in the quantity's own unit; spreads and years are not. */
    boolean inUnit(int index) {
        return index == 0 || ordered();
    }

    Law law(List<Double> abc, List<Double> past) {
        return switch (this) {
            case NUMBER -> new Law.Fixed(abc.get(0));
            case PERT -> new Law.Pert(abc.get(0), abc.get(1), abc.get(2));
            case TRIANGULAR -> new Law.Triangular(abc.get(0), abc.get(1), abc.get(2));
            case NORMAL -> new Law.Normal(abc.get(0), abc.get(1));
            case WEIBULL -> new Law.Weibull(abc.get(0), abc.get(1));
            case PRICE -> new Law.Lognormal(abc.get(0), abc.get(1), abc.get(2));
            case PAST -> new Law.Past(past);
        };
    }

    static LawForm of(Law law) {
        return Stream.of(values())
                .filter(form -> form.type().isInstance(law))
                .findFirst()
                .orElseThrow();
    }

    /** The numbers of a law in the order of the columns; past values are none of them. */
    static List<Double> abc(Law law) {
        if (law instanceof Law.Fixed fixed) {
            return List.of(fixed.value());
        } else if (law instanceof Law.Pert pert) {
            return List.of(pert.low(), pert.likely(), pert.high());
        } else if (law instanceof Law.Triangular triangular) {
            return List.of(triangular.low(), triangular.likely(), triangular.high());
        } else if (law instanceof Law.Normal normal) {
            return List.of(normal.mean(), normal.cv());
        } else if (law instanceof Law.Weibull weibull) {
            return List.of(weibull.mean(), weibull.cv());
        } else if (law instanceof Law.Lognormal price) {
            return List.of(price.price(), price.volatility(), price.years());
        }
        return List.of();
    }

    private Class<? extends Law> type() {
        return switch (this) {
            case NUMBER -> Law.Fixed.class;
            case PERT -> Law.Pert.class;
            case TRIANGULAR -> Law.Triangular.class;
            case NORMAL -> Law.Normal.class;
            case WEIBULL -> Law.Weibull.class;
            case PRICE -> Law.Lognormal.class;
            case PAST -> Law.Past.class;
        };
    }
}
