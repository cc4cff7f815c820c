package plumbrow.app.desk.weighing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.weighing.UncertainInput;

/** The boxes in which a distribution is asked for, one shape for the distributions that are typed alike. */
enum Shape {
    /** A number, or lowest, most likely and highest. */
    SPREAD {
        @Override
        List<String> labels() {
            return List.of("lowest", "most likely", "highest");
        }

        @Override
        List<String> texts(Distribution distribution) {
            if (distribution instanceof Distribution.Fixed fixed) {
                return List.of("", BoxText.of(fixed.value()), "");
            }
            if (distribution instanceof Distribution.Triangular triangle) {
                return numbers(triangle.low(), triangle.likely(), triangle.high());
            }
            if (distribution instanceof Distribution.Even even) {
                return numbers(even.low(), (even.low() + even.high()) / 2, even.high());
            }
            Distribution.Pert pert = (Distribution.Pert) distribution;
            return numbers(pert.low(), pert.likely(), pert.high());
        }

        @Override
        Distribution distribution(UncertainInput input, List<String> typed) {
            double likely = number(input, typed, 1);
            boolean low = typed.get(0).isBlank();
            boolean high = typed.get(2).isBlank();
            if (low && high) {
                return new Distribution.Fixed(likely);
            }
            if (low != high) {
                throw new BoxFault(low ? 0 : 2, "fill in both lowest and highest, or neither");
            }
            return spread(input, number(input, typed, 0), likely, number(input, typed, 2));
        }
    },
    /** A mean and how far it spreads. */
    BELL {
        @Override
        List<String> labels() {
            return List.of("mean", "spread in %");
        }

        @Override
        List<String> texts(Distribution distribution) {
            if (distribution instanceof Distribution.Weibull weibull) {
                return List.of(BoxText.of(weibull.mean()), BoxText.percent(weibull.cv()));
            }
            Distribution.Normal normal = (Distribution.Normal) distribution;
            return List.of(BoxText.of(normal.mean()), BoxText.percent(normal.cv()));
        }

        @Override
        Distribution distribution(UncertainInput input, List<String> typed) {
            double mean = number(input, typed, 0);
            double cv = number(typed, 1) / 100;
            if (cv <= 0) {
                throw new BoxFault(1, "expected more than 0 %");
            }
            return input.distribution() instanceof Distribution.Weibull
                    ? new Distribution.Weibull(mean, cv)
                    : new Distribution.Normal(mean, cv);
        }
    },
    /** A price today and how far it may move. */
    PRICE {
        @Override
        List<String> labels() {
            return List.of("price today", "moves in a year, %", "years until known");
        }

        @Override
        List<String> texts(Distribution distribution) {
            Distribution.Lognormal price = (Distribution.Lognormal) distribution;
            return List.of(BoxText.of(price.price()), BoxText.percent(price.volatility()), BoxText.of(price.years()));
        }

        @Override
        Distribution distribution(UncertainInput input, List<String> typed) {
            double price = number(input, typed, 0);
            double volatility = number(typed, 1) / 100;
            double years = number(typed, 2);
            if (volatility < 0) {
                throw new BoxFault(1, "expected at least 0 %");
            }
            if (years < 0) {
                throw new BoxFault(2, "expected 0 or more");
            }
            return new Distribution.Lognormal(price, volatility, years);
        }
    },
    /** What it was in earlier years. */
    PAST {
        @Override
        List<String> labels() {
            return List.of("past values, semicolons between");
        }

        @Override
        List<String> texts(Distribution distribution) {
            return List.of(((Distribution.Past) distribution)
                    .values().stream().map(BoxText::of).collect(Collectors.joining("; ")));
        }

        @Override
        Distribution distribution(UncertainInput input, List<String> typed) {
            List<Double> values = Arrays.stream(typed.get(0).split("[;\\s]+", -1))
                    .filter(text -> !text.isBlank())
                    .map(text ->
                            BoxText.number(text).orElseThrow(() -> new BoxFault(0, "'" + text + "' is not a number")))
                    .toList();
            if (values.size() < 2) {
                throw new BoxFault(0, "expected at least two numbers, such as 170; 182");
            }
            return new Distribution.Past(values);
        }
    },
    /** A number that differs by a factor, or a share that differs from trial to trial. */
    AROUND {
        @Override
        List<String> labels() {
            return List.of("middle", "lowest", "highest");
        }

        @Override
        List<String> texts(Distribution distribution) {
            return distribution instanceof Distribution.Factor factor
                    ? List.of(BoxText.of(factor.median()), "", "")
                    : List.of(BoxText.of(((Distribution.LogOdds) distribution).median()), "", "");
        }

        @Override
        Distribution distribution(UncertainInput input, List<String> typed) {
            double middle = number(input, typed, 0);
            boolean low = typed.get(1).isBlank();
            boolean high = typed.get(2).isBlank();
            if (low != high) {
                throw new BoxFault(low ? 1 : 2, "fill in both lowest and highest, or neither");
            }
            if (low) {
                return again(input.distribution(), middle);
            }
            double lowest = number(input, typed, 1);
            double highest = number(input, typed, 2);
            if (lowest > middle) {
                throw new BoxFault(1, "expected no more than the middle");
            }
            if (highest < middle) {
                throw new BoxFault(2, "expected no less than the middle");
            }
            return lowest == highest ? new Distribution.Fixed(middle) : new Distribution.Pert(lowest, middle, highest);
        }

        /** The same spread about another middle; at an end of the range nothing is left to spread. */
        private static Distribution again(Distribution distribution, double middle) {
            if (distribution instanceof Distribution.Factor factor) {
                return middle > 0 ? new Distribution.Factor(middle, factor.logSd()) : new Distribution.Fixed(middle);
            }
            return middle > 0 && middle < 1
                    ? new Distribution.LogOdds(middle, ((Distribution.LogOdds) distribution).logitSd())
                    : new Distribution.Fixed(middle);
        }
    },
    /** How often something works. */
    CHANCE {
        @Override
        List<String> labels() {
            return List.of("chance in %");
        }

        @Override
        List<String> texts(Distribution distribution) {
            return List.of(BoxText.percent(((Distribution.Chance) distribution).chance()));
        }

        @Override
        Distribution distribution(UncertainInput input, List<String> typed) {
            double chance = number(typed, 0) / 100;
            if (chance < 0 || chance > 1) {
                throw new BoxFault(0, "expected 0 to 100 %");
            }
            return new Distribution.Chance(chance);
        }
    };

    static Shape of(Distribution distribution) {
        if (distribution instanceof Distribution.Normal || distribution instanceof Distribution.Weibull) {
            return BELL;
        }
        if (distribution instanceof Distribution.Lognormal) {
            return PRICE;
        }
        if (distribution instanceof Distribution.Factor || distribution instanceof Distribution.LogOdds) {
            return AROUND;
        }
        if (distribution instanceof Distribution.Past) {
            return PAST;
        }
        return distribution instanceof Distribution.Chance ? CHANCE : SPREAD;
    }

    /** What stands over each box. */
    abstract List<String> labels();

    /** The distribution as it is typed, one text for each box. */
    abstract List<String> texts(Distribution distribution);

    /**
     * The distribution typed, of the same kind as the season's where that can be kept.
     *
     * @throws BoxFault naming the box at fault
     */
    abstract Distribution distribution(UncertainInput input, List<String> typed);

    private static List<String> numbers(double low, double likely, double high) {
        return List.of(BoxText.of(low), BoxText.of(likely), BoxText.of(high));
    }

    private static Distribution spread(UncertainInput input, double low, double likely, double high) {
        if (low > likely) {
            throw new BoxFault(0, "expected no more than the most likely value");
        }
        if (high < likely) {
            throw new BoxFault(2, "expected no less than the most likely value");
        }
        if (low == high) {
            return new Distribution.Fixed(likely);
        }
        return input.distribution() instanceof Distribution.Triangular
                ? new Distribution.Triangular(low, likely, high)
                : new Distribution.Pert(low, likely, high);
    }

    private static double number(UncertainInput input, List<String> typed, int box) {
        return inRange(input, number(typed, box), box);
    }

    private static double number(List<String> typed, int box) {
        return number(typed.get(box), box);
    }

    private static double number(String text, int box) {
        return BoxText.number(text)
                .orElseThrow(() -> new BoxFault(
                        box, text.isBlank() ? "it is empty; expected a number" : "'" + text + "' is not a number"));
    }

    private static double inRange(UncertainInput input, double value, int box) {
        if (!input.range().holds(value)) {
            throw new BoxFault(box, "expected " + input.range().words() + " " + input.unit());
        }
        return value;
    }
}
