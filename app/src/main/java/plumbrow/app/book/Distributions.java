package plumbrow.app.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcOperations;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.app.book.StoredTable.Filled;
import plumbrow.documents.workbook.form.Storage;

/** The distributions of one season, numbered from 1 in the order in which its rows name them. */
final class Distributions {
    static final StoredTable TABLE = StoredTable.of(
            "distribution",
            new StoredTable.Column("form", Storage.Type.TEXT),
            new StoredTable.Column("a", Storage.Type.REAL),
            new StoredTable.Column("b", Storage.Type.REAL),
            new StoredTable.Column("c", Storage.Type.REAL));

    static final StoredTable PAST = StoredTable.of(
            "distribution_past",
            new StoredTable.Column("distribution", Storage.Type.INTEGER),
            new StoredTable.Column("value", Storage.Type.REAL));

    /** A distribution as its form and numbers; the numbers of past values stand by themselves. */
    record Shape(
            String form,
            @Nullable Double a,
            @Nullable Double b,
            @Nullable Double c) {}

    /** One past value of a distribution. */
    record PastValue(int distribution, double value) {}

    private final List<Distribution> distributions = new ArrayList<>();

    /** Takes a distribution in and gives the number under which it stands. */
    int number(Distribution distribution) {
        distributions.add(distribution);
        return distributions.size();
    }

    Distribution distribution(int number) {
        if (number < 1 || number > distributions.size()) {
            throw new BookException("The book is damaged: a row names distribution " + number + ", which isn't there.");
        }
        return distributions.get(number - 1);
    }

    List<Shape> shapes() {
        return distributions.stream().map(Distributions::shape).toList();
    }

    List<PastValue> pastValues() {
        List<PastValue> values = new ArrayList<>();
        for (int i = 0; i < distributions.size(); i++) {
            if (distributions.get(i) instanceof Distribution.Past past) {
                int number = i + 1;
                past.values().forEach(value -> values.add(new PastValue(number, value)));
            }
        }
        return values;
    }

    /** As they go into their tables. */
    List<Filled> fill(int season) {
        List<@Nullable Object[]> rows = new ArrayList<>();
        shapes().forEach(shape -> rows.add(new @Nullable Object[] {shape.form(), shape.a(), shape.b(), shape.c()}));
        List<@Nullable Object[]> past = new ArrayList<>();
        pastValues().forEach(value -> past.add(new @Nullable Object[] {value.distribution(), value.value()}));
        return List.of(TABLE.fill(season, rows), PAST.fill(season, past));
    }

    static Distributions read(JdbcOperations sql, int season) {
        List<Shape> shapes = new ArrayList<>();
        for (@Nullable Object[] row : TABLE.rows(sql, season)) {
            shapes.add(new Shape(String.valueOf(row[0]), (Double) row[1], (Double) row[2], (Double) row[3]));
        }
        List<PastValue> past = new ArrayList<>();
        for (@Nullable Object[] row : PAST.rows(sql, season)) {
            past.add(new PastValue((Integer) Objects.requireNonNull(row[0]), (Double) Objects.requireNonNull(row[1])));
        }
        return of(shapes, past);
    }

    static Distributions of(List<Shape> shapes, List<PastValue> pastValues) {
        List<List<Double>> past = new ArrayList<>();
        shapes.forEach(shape -> past.add(new ArrayList<>()));
        pastValues.forEach(value -> past.get(value.distribution() - 1).add(value.value()));
        Distributions distributions = new Distributions();
        for (int i = 0; i < shapes.size(); i++) {
            distributions.distributions.add(distribution(shapes.get(i), past.get(i)));
        }
        return distributions;
    }

    private static Shape shape(Distribution distribution) {
        if (distribution instanceof Distribution.Fixed fixed) {
            return new Shape("number", fixed.value(), null, null);
        } else if (distribution instanceof Distribution.Pert pert) {
            return new Shape("pert", pert.low(), pert.likely(), pert.high());
        } else if (distribution instanceof Distribution.Triangular triangle) {
            return new Shape("triangular", triangle.low(), triangle.likely(), triangle.high());
        } else if (distribution instanceof Distribution.Even even) {
            return new Shape("even", even.low(), even.high(), null);
        } else if (distribution instanceof Distribution.Normal normal) {
            return new Shape("normal", normal.mean(), normal.cv(), null);
        } else if (distribution instanceof Distribution.Weibull weibull) {
            return new Shape("weibull", weibull.mean(), weibull.cv(), null);
        } else if (distribution instanceof Distribution.Lognormal price) {
            return new Shape("price", price.price(), price.volatility(), price.years());
        } else if (distribution instanceof Distribution.Factor factor) {
            return new Shape("factor", factor.median(), factor.logSd(), null);
        } else if (distribution instanceof Distribution.LogOdds share) {
            return new Shape("log-odds", share.median(), share.logitSd(), null);
        } else if (distribution instanceof Distribution.Past) {
            return new Shape("past", null, null, null);
        } else if (distribution instanceof Distribution.Chance chance) {
            return new Shape("chance", chance.chance(), null, null);
        }
        throw new IllegalStateException("a distribution that has no form in a book: " + distribution);
    }

    private static Distribution distribution(Shape shape, List<Double> past) {
        return switch (shape.form()) {
            case "number" -> new Distribution.Fixed(given(shape.a()));
            case "pert" -> new Distribution.Pert(given(shape.a()), given(shape.b()), given(shape.c()));
            case "triangular" -> new Distribution.Triangular(given(shape.a()), given(shape.b()), given(shape.c()));
            case "even" -> new Distribution.Even(given(shape.a()), given(shape.b()));
            case "normal" -> new Distribution.Normal(given(shape.a()), given(shape.b()));
            case "weibull" -> new Distribution.Weibull(given(shape.a()), given(shape.b()));
            case "price" -> new Distribution.Lognormal(given(shape.a()), given(shape.b()), given(shape.c()));
            case "factor" -> new Distribution.Factor(given(shape.a()), given(shape.b()));
            case "log-odds" -> new Distribution.LogOdds(given(shape.a()), given(shape.b()));
            case "chance" -> new Distribution.Chance(given(shape.a()));
            case "past" -> new Distribution.Past(past);
            default ->
                throw new BookException(
                        "The book is damaged: it holds a distribution of the form '" + shape.form() + "'.");
        };
    }

    private static double given(@Nullable Double number) {
        if (number == null) {
            throw new BookException("The book is damaged: a number of a distribution is blank.");
        }
        return number;
    }
}
