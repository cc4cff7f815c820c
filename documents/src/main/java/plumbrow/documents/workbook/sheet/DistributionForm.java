package plumbrow.documents.workbook.sheet;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.assumptions.Distribution;

/** The ways in which the assumptions sheet states what is uncertain, and what its columns a, b and c then hold. */
enum DistributionForm {
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

    DistributionForm(String word, String... parts) {
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

    Distribution distribution(List<Double> abc, List<Double> past) {
        return switch (this) {
            case NUMBER -> new Distribution.Fixed(abc.get(0));
            case PERT -> new Distribution.Pert(abc.get(0), abc.get(1), abc.get(2));
            case TRIANGULAR -> new Distribution.Triangular(abc.get(0), abc.get(1), abc.get(2));
            case NORMAL -> new Distribution.Normal(abc.get(0), abc.get(1));
            case WEIBULL -> new Distribution.Weibull(abc.get(0), abc.get(1));
            case PRICE -> new Distribution.Lognormal(abc.get(0), abc.get(1), abc.get(2));
            case PAST -> new Distribution.Past(past);
        };
    }

    static DistributionForm of(Distribution distribution) {
        return Stream.of(values())
                .filter(form -> form.type().isInstance(distribution))
                .findFirst()
                .orElseThrow();
    }

    /** The numbers of a distribution in the order of the columns; past values are none of them. */
    static List<Double> abc(Distribution distribution) {
        if (distribution instanceof Distribution.Fixed fixed) {
            return List.of(fixed.value());
        } else if (distribution instanceof Distribution.Pert pert) {
            return List.of(pert.low(), pert.likely(), pert.high());
        } else if (distribution instanceof Distribution.Triangular triangular) {
            return List.of(triangular.low(), triangular.likely(), triangular.high());
        } else if (distribution instanceof Distribution.Normal normal) {
            return List.of(normal.mean(), normal.cv());
        } else if (distribution instanceof Distribution.Weibull weibull) {
            return List.of(weibull.mean(), weibull.cv());
        } else if (distribution instanceof Distribution.Lognormal price) {
            return List.of(price.price(), price.volatility(), price.years());
        }
        return List.of();
    }

    private Class<? extends Distribution> type() {
        return switch (this) {
            case NUMBER -> Distribution.Fixed.class;
            case PERT -> Distribution.Pert.class;
            case TRIANGULAR -> Distribution.Triangular.class;
            case NORMAL -> Distribution.Normal.class;
            case WEIBULL -> Distribution.Weibull.class;
            case PRICE -> Distribution.Lognormal.class;
            case PAST -> Distribution.Past.class;
        };
    }
}
