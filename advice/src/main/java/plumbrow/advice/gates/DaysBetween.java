package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether enough days lie between two applications of a product.
 *
 * <p>Protects the law. Calendar days between one application and the next, in the order of the days; what the log says
 * went on this season counts. Exactly the interval is enough. A product that goes on once, or whose label asks for no
 * days, needs no day. Unknown where the interval was not read or a day is missing.
 *
 * <p>Source: the label. Needs: the days between applications, and the day of each.
 */
final class DaysBetween extends Question {
    DaysBetween() {
        super("days-between", Protects.LAW, "Do enough days lie between two applications?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.byProduct().entrySet().stream()
                .flatMap(entry -> at.terms(entry.getKey()).stream().flatMap(terms -> judge(entry, terms)))
                .toList();
    }

    private Stream<Finding> judge(Map.Entry<String, List<Application>> product, UseTerms terms) {
        String name = product.getKey();
        Integer least = terms.daysBetween();
        if (least == null) {
            return Stream.of(unknown(
                            name,
                            "The days between two applications have not been read.",
                            "Look up the interval between applications on the label.")
                    .standingIn(terms.source()));
        }
        List<Application> applications = product.getValue();
        if (least == 0 || applications.size() == 1) {
            return Stream.of();
        }
        if (applications.stream().anyMatch(one -> one.date() == null)) {
            return Stream.of(unknown(
                            name,
                            "The label asks for " + least + " days between applications, and one has no planned day.",
                            "Plan a day for each pass of " + name + ".")
                    .standingIn(terms.source()));
        }
        List<LocalDate> days = applications.stream()
                .map(one -> Objects.requireNonNull(one.date()))
                .sorted()
                .toList();
        return IntStream.range(1, days.size())
                .mapToObj(i -> gap(name, days.get(i - 1), days.get(i), least).standingIn(terms.source()));
    }

    private Finding gap(String product, LocalDate first, LocalDate second, int least) {
        long days = ChronoUnit.DAYS.between(first, second);
        String says = days + " days from " + first + " to " + second + "; the label asks for " + least + ".";
        Finding finding = days < least
                ? barred(product, says, "Go again on " + first.plusDays(least) + " or later.")
                : clear(product, says);
        return finding.against((double) days, least, "days");
    }
}
