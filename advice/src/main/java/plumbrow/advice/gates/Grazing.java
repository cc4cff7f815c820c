package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.UseTerms;

/**
 * When treated crop and stubble may be grazed or fed.
 *
 * <p>Protects people who eat meat and milk. No pass of a program grazes, so a ban or an interval that runs past the
 * harvest is a condition. Clear where the label forbids nothing and the interval ends by the harvest. Unknown where it
 * was not read.
 *
 * <p>Source: the label. Needs: grazing days, whether feeding is forbidden, and the days of the pass and the harvest.
 */
final class Grazing extends UseGate {
    Grazing() {
        super("grazing-feeding", Protects.PEOPLE, "When may treated crop be grazed or fed?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        Integer days = terms.grazingDays();
        if (terms.feedingForbidden() == Ask.UNKNOWN || days == null) {
            return Stream.of(unknown(
                    application.subject(),
                    "Whether and when treated crop may be grazed or fed has not been read.",
                    "Look up grazing and feeding on the label."));
        }
        if (terms.feedingForbidden() == Ask.YES) {
            return Stream.of(conditional(
                    application.subject(),
                    "The label forbids grazing or feeding the treated crop.",
                    "Do not graze or feed any of it: no silage, no fodder, no stubble grazing."));
        }
        return Stream.of(
                days == 0
                        ? clear(application.subject(), "The label asks for no days before grazing or feeding.")
                        : interval(
                                application,
                                days,
                                application.date(),
                                at.harvest().orElse(null)));
    }

    private Finding interval(
            Application application, int days, @Nullable LocalDate applied, @Nullable LocalDate harvest) {
        if (applied == null) {
            return conditional(
                    application.subject(),
                    "The label asks for " + days + " days before grazing or feeding, and the pass has no planned day.",
                    "Do not graze or feed within " + days + " days of the pass.");
        }
        LocalDate from = applied.plusDays(days);
        if (harvest == null || harvest.isBefore(applied)) {
            return conditional(
                    application.subject(),
                    "The label asks for " + days + " days before grazing or feeding.",
                    "Do not graze or feed before " + from + ".");
        }
        long between = ChronoUnit.DAYS.between(applied, harvest);
        String says = between + " days to harvest; the label asks for " + days + " before grazing or feeding.";
        Finding finding = between < days
                ? conditional(application.subject(), says, "Do not graze or feed before " + from + ".")
                : clear(application.subject(), says);
        return finding.against((double) between, days, "days");
    }
}
