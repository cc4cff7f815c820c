package plumbrow.app.desk.weighing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.outlook.Law;

/** The boxes in which a law is asked for, one shape for the laws that are typed alike. */
enum Shape {
    /** A number, or lowest, most likely and highest. */
    SPREAD("lowest", "most likely", "highest") {
        @Override
        List<String> texts(Law law) {
            if (law instanceof Law.Fixed fixed) {
                return List.of("", BoxText.of(fixed.value()), "");
            }
            if (law instanceof Law.Triangular triangle) {
                return numbers(triangle.low(), triangle.likely(), triangle.high());
            }
            Law.Pert pert = (Law.Pert) law;
            return numbers(pert.low(), pert.likely(), pert.high());
        }

        @Override
        Law law(Law season, List<String> typed) {
            double likely = number(typed, 1);
            boolean low = typed.get(0).isBlank();
            boolean high = typed.get(2).isBlank();
            if (low && high) {
                return new Law.Fixed(likely);
            }
            if (low != high) {
                throw new BoxFault(low ? 0 : 2, "fill in both lowest and highest, or neither");
            }
            return spread(season, number(typed, 0), likely, number(typed, 2));
        }
    },
    /** A mean and how far it spreads. */
    BELL("mean", "spread, % of the mean") {
        @Override
        List<String> texts(Law law) {
            if (law instanceof Law.Weibull weibull) {
                return List.of(BoxText.of(weibull.mean()), BoxText.percent(weibull.cv()));
            }
            Law.Normal normal = (Law.Normal) law;
            return List.of(BoxText.of(normal.mean()), BoxText.percent(normal.cv()));
        }

        @Override
        Law law(Law season, List<String> typed) {
            double mean = number(typed, 0);
            double cv = number(typed, 1) / 100;
            if (cv <= 0) {
                throw new BoxFault(1, "expected more than 0 %");
            }
            return season instanceof Law.Weibull ? new Law.Weibull(mean, cv) : new Law.Normal(mean, cv);
        }
    },
    /** A price today and how far it may move. */
    PRICE("price today", "moves, % a year", "years until known") {
        @Override
        List<String> texts(Law law) {
            Law.Lognormal price = (Law.Lognormal) law;
            return List.of(BoxText.of(price.price()), BoxText.percent(price.volatility()), BoxText.of(price.years()));
        }

        @Override
        Law law(Law season, List<String> typed) {
            double price = number(typed, 0);
            double volatility = number(typed, 1) / 100;
            double years = number(typed, 2);
            if (price <= 0) {
                throw new BoxFault(0, "expected more than 0");
            }
            if (volatility < 0) {
                throw new BoxFault(1, "expected 0 % or more");
            }
            if (years < 0) {
                throw new BoxFault(2, "expected 0 or more");
            }
            return new Law.Lognormal(price, volatility, years);
        }
    },
    /** What it was in earlier years. */
    PAST("past values, semicolons between") {
        @Override
        List<String> texts(Law law) {
            return List.of(((Law.Past) law).values().stream().map(BoxText::of).collect(Collectors.joining("; ")));
        }

        @Override
        Law law(Law season, List<String> typed) {
            List<Double> values = Arrays.stream(typed.get(0).split("[;\\s]+"))
                    .filter(text -> !text.isBlank())
                    .map(text ->
                            BoxText.number(text).orElseThrow(() -> new BoxFault(0, "'" + text + "' is not a number")))
                    .toList();
            if (values.size() < 2) {
                throw new BoxFault(0, "expected at least two numbers, such as 170; 182");
            }
            return new Law.Past(values);
        }
    },
    /** How often something works. */
    CHANCE("chance, %") {
        @Override
        List<String> texts(Law law) {
            return List.of(BoxText.percent(((Law.Chance) law).chance()));
        }

        @Override
        Law law(Law season, List<String> typed) {
            double chance = number(typed, 0) / 100;
            if (chance < 0 || chance > 1) {
                throw new BoxFault(0, "expected 0 to 100 %");
            }
            return new Law.Chance(chance);
        }
    };

    private final List<String> labels;

    Shape(String... labels) {
        this.labels = List.of(labels);
    }

    static Shape of(Law law) {
        if (law instanceof Law.Normal || law instanceof Law.Weibull) {
            return BELL;
        }
        if (law instanceof Law.Lognormal) {
            return PRICE;
        }
        if (law instanceof Law.Past) {
            return PAST;
        }
        return law instanceof Law.Chance ? CHANCE : SPREAD;
    }

    /** What stands over each box. */
    List<String> labels() {
        return labels;
    }

    /** The law as it is typed, one text for each box. */
    abstract List<String> texts(Law law);

    /**
     * The law typed, of the season's kind where that can be kept.
     *
     * @throws BoxFault naming the box at fault
     */
    abstract Law law(Law season, List<String> typed);

    private static List<String> numbers(double low, double likely, double high) {
        return List.of(BoxText.of(low), BoxText.of(likely), BoxText.of(high));
    }

    private static Law spread(Law season, double low, double likely, double high) {
        if (low > likely) {
            throw new BoxFault(0, "expected no more than the most likely value");
        }
        if (high < likely) {
            throw new BoxFault(2, "expected no less than the most likely value");
        }
        if (low == high) {
            return new Law.Fixed(likely);
        }
        return season instanceof Law.Triangular
                ? new Law.Triangular(low, likely, high)
                : new Law.Pert(low, likely, high);
    }

    private static double number(List<String> typed, int box) {
        String text = typed.get(box);
        return BoxText.number(text)
                .orElseThrow(() -> new BoxFault(
                        box, text.isBlank() ? "it is empty; expected a number" : "'" + text + "' is not a number"));
    }
}
