package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Person;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether a restricted product is put on by someone licensed for it, on the day and in every state the field lies in.
 *
 * <p>Protects the law and people. Barred where the licence is of another state or has run out by the day; its last day is
 * within it. Unknown where nobody is named, he is not in the crew, no licence is on file, or a day is missing. Work under
 * the direct supervision of a licensed person is lawful too: name that person.
 *
 * <p>Source: 7 U.S.C. 136j(a)(2)(F), 40 CFR 171 (value from memory). Needs: whether the product is restricted; applicator
 * of the pass; licence, state and last day of the person.
 */
final class RestrictedUse extends Question {
    RestrictedUse() {
        super("restricted-use", Protects.LAW, "Is a restricted product put on by someone licensed?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .flatMap(application -> at.care(application.product()).stream()
                        .flatMap(
                                care -> judge(at, application, care).map(finding -> finding.standingIn(care.source()))))
                .toList();
    }

    private Stream<Finding> judge(Case at, Application application, ProductCare care) {
        if (care.restrictedUse() == Ask.NO) {
            return Stream.of(clear(application.subject(), "The product is not restricted."));
        }
        if (care.restrictedUse() == Ask.UNKNOWN) {
            return Stream.of(unknown(
                    application.subject(),
                    "Whether the product is restricted has not been read.",
                    "Look for RESTRICTED USE PESTICIDE at the top of the label."));
        }
        SprayPlan plan = application.plan();
        String name = plan == null ? null : plan.applicator();
        if (name == null) {
            return Stream.of(unknown(
                    application.subject(),
                    "The product is restricted, and nobody is named to put it on.",
                    "Name a licensed applicator, or the one who supervises."));
        }
        return named(at, name)
                .map(person -> at.places().stream()
                        .map(Place::state)
                        .distinct()
                        .map(state -> held(application, person, state)))
                .orElseGet(() -> Stream.of(unknown(
                        application.subject(),
                        name + " is not among the people of the book.",
                        "Enter " + name + " with licence, state and last day.")));
    }

    private static Optional<Person> named(Case at, String name) {
        return at.season().work().crew().person(name);
    }

    private Finding held(Application application, Person person, String state) {
        LocalDate last = person.validUntil();
        if (person.licence() == null || person.state() == null || last == null) {
            return unknown(
                    application.subject(),
                    "The product is restricted, and " + person.name() + " has no licence with state and last day on "
                            + "file.",
                    "Enter the licence of " + person.name() + ", or name someone who has one.");
        }
        if (!person.state().strip().equalsIgnoreCase(state.strip())) {
            return barred(
                    application.subject(),
                    "The licence of " + person.name() + " is of " + person.state() + "; the field lies in " + state
                            + ".",
                    "Name someone licensed in " + state + ".");
        }
        return onTheDay(application, person, last, application.date());
    }

    private Finding onTheDay(Application application, Person person, LocalDate last, @Nullable LocalDate day) {
        if (day == null) {
            return unknown(
                    application.subject(),
                    "The licence of " + person.name() + " is valid until " + last
                            + ", and the pass has no planned day.",
                    "Plan a day for the pass.");
        }
        return day.isAfter(last)
                ? barred(
                        application.subject(),
                        "The licence of " + person.name() + " runs out on " + last + ", before " + day + ".",
                        "Renew the licence, or name someone whose licence is valid on " + day + ".")
                : clear(
                        application.subject(),
                        person.name() + " is licensed in " + person.state() + " until " + last + ".");
    }
}
