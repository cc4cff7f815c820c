package plumbrow.advice.gates;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.quantity.Amount;

/**
 * Whether a rate is too low to work on a pest that the product works on at a higher one.
 *
 * <p>Protects the usefulness of the chemistry: what survives a low rate breeds. The effective rate is the lowest in the book
 * at which control is 80 % or more. Below it is conditional, at it or above is clear. Silent where no rate in the book
 * reaches that; unknown where no rate is planned. Never barred: what is lawful the label says.
 *
 * <p>Source: the control rows of the book; 80 % is common practice, no source. Needs: control rows and pests of the field.
 */
final class EffectiveRate extends Question {
    EffectiveRate() {
        super("effective-rate", Protects.USEFULNESS, "Is the rate high enough to work?");
    }

    @Override
    public List<Finding> check(Case at) {
        List<String> pests = Stream.concat(
                        at.index().weeds(at.field().name()).stream().map(WeedPressure::weed),
                        at.index().insects(at.field().name()).stream().map(InsectPressure::insect))
                .distinct()
                .toList();
        return at.planned().stream()
                .flatMap(application -> pests.stream().flatMap(pest -> judge(at, application, pest).stream()))
                .toList();
    }

    private Optional<Finding> judge(Case at, Application application, String pest) {
        return at.index().kills(application.product(), pest).stream()
                .filter(Kill::effective)
                .min(Comparator.comparingDouble(row -> row.rate().inBase()))
                .map(row -> held(application, pest, row).standingIn(row.source()));
    }

    private Finding held(Application application, String pest, Kill row) {
        String subject = application.subject() + ", " + pest;
        Amount rate = application.rate();
        String works = row.rate().text() + "/ac is the lowest rate known to control 80 % of it";
        if (rate == null || !rate.comparableWith(row.rate())) {
            return unknown(
                    subject, works + "; the planned rate is not known in that unit.", "Enter the rate of this pass.");
        }
        Amount planned = rate.in(row.rate().unit());
        String says = planned.text() + "/ac; " + works + ".";
        Finding finding = Rounding.below(planned.value(), row.rate().value())
                ? conditional(
                        subject,
                        says,
                        "Raise the rate to " + row.rate().text() + "/ac, or leave the pass out where " + pest
                                + " does not pay for it.")
                : clear(subject, says);
        return finding.against(
                planned.value(), row.rate().value(), row.rate().unit().symbol() + "/ac");
    }
}
