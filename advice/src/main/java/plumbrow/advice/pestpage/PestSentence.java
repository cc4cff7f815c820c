package plumbrow.advice.pestpage;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbrow.science.figure.Numbers;

/** What matters most of a pest, in a sentence or two. */
final class PestSentence {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d", Locale.US);

    private PestSentence() {}

    static String of(String name, int fields, List<Coming> coming, List<Pressing> pressing, List<TwoPasses> plans) {
        String capital = Character.toUpperCase(name.charAt(0)) + name.substring(1);
        StringBuilder says = new StringBuilder();
        if (fields == 0) {
            says.append(capital)
                    .append(
                            " is on none of this season’s fields, as far as the book says. Look before you trust that.");
        } else {
            says.append(capital).append(" presses on ").append(fields).append(fields == 1 ? " field" : " fields");
            pressing.stream()
                    .max(Comparator.comparingDouble(Pressing::lossPct))
                    .ifPresent(worst -> says.append(", hardest on ")
                            .append(worst.field())
                            .append(": it would cost ")
                            .append(Numbers.fixed(worst.lossPct(), 0))
                            .append(" % of the yield if nothing were done"));
            says.append('.');
        }
        middle(coming).ifPresent(says::append);
        long holds = plans.stream().filter(TwoPasses::holds).count();
        if (fields > 0 && plans.size() > 1) {
            says.append(" Two passes with two sites stand on this shelf in ")
                    .append(holds)
                    .append(" of ")
                    .append(plans.size())
                    .append(" crops.");
        } else if (fields > 0 && plans.size() == 1) {
            says.append(' ').append(plans.get(0).says());
        }
        return says.toString();
    }

    private static Optional<String> middle(List<Coming> coming) {
        return coming.stream()
                .filter(one ->
                        one.days().size() == 3 && one.days().get(1).event().startsWith("50 % up"))
                .flatMap(one -> Optional.ofNullable(one.days().get(1).date()).stream())
                .min(LocalDate::compareTo)
                .map(day -> " Half of it is up by about " + DAY.format(day) + " at the earliest field.");
    }
}
