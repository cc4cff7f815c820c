package plumbrow.app.book;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.outlook.Law;

/** The laws of one season, numbered from 1 in the order in which its rows name them. */
final class Laws {
    static final RowKind<Shape> LAW = new RowKind<>(
            "law",
            "form a b c",
            season -> List.of(),
            (law, cells) -> cells.text(law.form()).real(law.a()).real(law.b()).real(law.c()),
            row -> new Shape(row.text(), row.maybeReal(), row.maybeReal(), row.maybeReal()));

    static final RowKind<PastValue> PAST = new RowKind<>(
            "law_past",
            "law value",
            season -> List.of(),
            (past, cells) -> cells.whole(past.law()).real(past.value()),
            row -> new PastValue(row.whole(), row.real()));

    /** A law as its form and numbers; the numbers of past values stand by themselves. */
    record Shape(
            String form,
            @Nullable Double a,
            @Nullable Double b,
            @Nullable Double c) {}

    /** One past value of a law. */
    record PastValue(int law, double value) {}

    private final List<Law> laws = new ArrayList<>();

    /** Takes a law in and gives the number under which it stands. */
    int number(Law law) {
        laws.add(law);
        return laws.size();
    }

    Law law(int number) {
        if (number < 1 || number > laws.size()) {
            throw new BookException("The book is damaged: a row names law " + number + ", which isn't there.");
        }
        return laws.get(number - 1);
    }

    List<Shape> shapes() {
        return laws.stream().map(Laws::shape).toList();
    }

    List<PastValue> pastValues() {
        List<PastValue> values = new ArrayList<>();
        for (int i = 0; i < laws.size(); i++) {
            if (laws.get(i) instanceof Law.Past past) {
                int number = i + 1;
                past.values().forEach(value -> values.add(new PastValue(number, value)));
            }
        }
        return values;
    }

    static Laws of(List<Shape> shapes, List<PastValue> pastValues) {
        List<List<Double>> past = new ArrayList<>();
        shapes.forEach(shape -> past.add(new ArrayList<>()));
        pastValues.forEach(value -> past.get(value.law() - 1).add(value.value()));
        Laws laws = new Laws();
        for (int i = 0; i < shapes.size(); i++) {
            laws.laws.add(law(shapes.get(i), past.get(i)));
        }
        return laws;
    }

    private static Shape shape(Law law) {
        if (law instanceof Law.Fixed fixed) {
            return new Shape("number", fixed.value(), null, null);
        } else if (law instanceof Law.Pert pert) {
            return new Shape("pert", pert.low(), pert.likely(), pert.high());
        } else if (law instanceof Law.Triangular triangle) {
            return new Shape("triangular", triangle.low(), triangle.likely(), triangle.high());
        } else if (law instanceof Law.Even even) {
            return new Shape("even", even.low(), even.high(), null);
        } else if (law instanceof Law.Normal normal) {
            return new Shape("normal", normal.mean(), normal.cv(), null);
        } else if (law instanceof Law.Weibull weibull) {
            return new Shape("weibull", weibull.mean(), weibull.cv(), null);
        } else if (law instanceof Law.Lognormal price) {
            return new Shape("price", price.price(), price.volatility(), price.years());
        } else if (law instanceof Law.Factor factor) {
            return new Shape("factor", factor.median(), factor.logSd(), null);
        } else if (law instanceof Law.LogOdds share) {
            return new Shape("log-odds", share.median(), share.logitSd(), null);
        } else if (law instanceof Law.Past) {
            return new Shape("past", null, null, null);
        } else if (law instanceof Law.Chance chance) {
            return new Shape("chance", chance.chance(), null, null);
        }
        throw new IllegalStateException("a law that has no form in a book: " + law);
    }

    private static Law law(Shape shape, List<Double> past) {
        return switch (shape.form()) {
            case "number" -> new Law.Fixed(given(shape.a()));
            case "pert" -> new Law.Pert(given(shape.a()), given(shape.b()), given(shape.c()));
            case "triangular" -> new Law.Triangular(given(shape.a()), given(shape.b()), given(shape.c()));
            case "even" -> new Law.Even(given(shape.a()), given(shape.b()));
            case "normal" -> new Law.Normal(given(shape.a()), given(shape.b()));
            case "weibull" -> new Law.Weibull(given(shape.a()), given(shape.b()));
            case "price" -> new Law.Lognormal(given(shape.a()), given(shape.b()), given(shape.c()));
            case "factor" -> new Law.Factor(given(shape.a()), given(shape.b()));
            case "log-odds" -> new Law.LogOdds(given(shape.a()), given(shape.b()));
            case "chance" -> new Law.Chance(given(shape.a()));
            case "past" -> new Law.Past(past);
            default ->
                throw new BookException("The book is damaged: it holds a law of the form '" + shape.form() + "'.");
        };
    }

    private static double given(@Nullable Double number) {
        if (number == null) {
            throw new BookException("The book is damaged: a number of a law is blank.");
        }
        return number;
    }
}
