package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Licence;
import plumbrow.advice.crew.Licence.Cover;
import plumbrow.advice.crew.LicenceKind;
import plumbrow.advice.crew.Person;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether a restricted product is put on by someone licensed for it, on the day and in every state the field lies in.
 *
 * <p>Protects the law and people. In each state the best of the person's licences there counts. Barred where he has none of
 * that state, where it has run out by the day (its last day is within it), where a private licence is used for hire, or where
 * its categories don't cover field crops (a commercial one) or work from the air. Unknown where nobody is named, he is not in
 * the crew, no licence is on file, or its kind, categories or a day are missing. Whoever sprays for pay under a licence that is
 * not for hire asks his state first: many license work for hire apart. Work under the direct supervision of a licensed person
 * is lawful too: name that person.
 *
 * <p>Source: 7 U.S.C. 136(e), 136j(a)(2)(F); 40 CFR 171.101, 171.105 (value from memory). Needs: whether the product is
 * restricted; applicator and method of the pass; number, state, last day, kind and categories of each licence; whether the
 * person works for hire.
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
        SprayPlan plan = application.plan();
        String name = plan == null ? null : plan.applicator();
        if (care.restrictedUse() == Ask.NO) {
            return Stream.of(
                    name == null
                            ? unrestricted(application)
                            : at.season()
                                    .work()
                                    .crew()
                                    .person(name)
                                    .filter(person -> paidWithout(at, person))
                                    .map(person -> forPay(application, person))
                                    .orElseGet(() -> unrestricted(application)));
        }
        if (care.restrictedUse() == Ask.UNKNOWN) {
            return Stream.of(unknown(
                    application.subject(),
                    "Whether the product is restricted has not been read.",
                    "Look for RESTRICTED USE PESTICIDE at the top of the label."));
        }
        if (name == null) {
            return Stream.of(unknown(
                    application.subject(),
                    "The product is restricted, and nobody is named to put it on.",
                    "Name a licensed applicator, or the one who supervises."));
        }
        return at.season()
                .work()
                .crew()
                .person(name)
                .map(person -> at.places().stream()
                        .map(Place::state)
                        .distinct()
                        .map(state -> held(at, application, person, state)))
                .orElseGet(() -> Stream.of(unknown(
                        application.subject(),
                        name + " is not among the people of the book.",
                        "Enter " + name + " with licence, state and last day.")));
    }

    private Finding unrestricted(Application application) {
        return clear(application.subject(), "The product is not restricted.");
    }

    /** Whether a person sprays for pay and no commercial licence of his is on file. */
    private static boolean paidWithout(Case at, Person person) {
        return person.forHire() == Ask.YES
                && at.season().work().crew().licences(person).stream()
                        .noneMatch(licence -> licence.number() != null
                                && licence.kind() != null
                                && licence.kind() != LicenceKind.PRIVATE);
    }

    private Finding forPay(Application application, Person person) {
        return unknown(
                application.subject(),
                person.name()
                        + " sprays for pay, and no commercial licence of his is on file. Most states ask for one even "
                        + "where the product is not restricted.",
                "Ask the state's department of agriculture, and enter the licence of " + person.name() + ".");
    }

    /** What the best of his licences in one state says. */
    private Finding held(Case at, Application application, Person person, String state) {
        List<Licence> licences = at.season().work().crew().licences(person).stream()
                .filter(licence -> licence.number() != null || licence.state() != null || licence.validUntil() != null)
                .toList();
        if (licences.isEmpty()) {
            return incomplete(application, person, "has no licence");
        }
        Optional<Finding> best = licences.stream()
                .flatMap(licence -> licence(application, person, licence, state).stream())
                .max(Comparator.comparing(Finding::standing));
        return best.orElseGet(() -> barred(
                application.subject(),
                "The licence of " + person.name() + " is of "
                        + String.join(
                                " and ",
                                licences.stream()
                                        .flatMap(licence -> Stream.ofNullable(licence.state()))
                                        .distinct()
                                        .toList())
                        + "; the field lies in " + state + ".",
                "Name someone licensed in " + state + ", or enter his licence of " + state
                        + " on the sheet licences."));
    }

    private Finding incomplete(Application application, Person person, String has) {
        return unknown(
                application.subject(),
                "The product is restricted, and " + person.name() + " " + has + " with state and last day on file.",
                "Enter the licence of " + person.name() + ", or name someone who has one.");
    }

    /** What one licence says in a state; empty where it is of another. */
    private Optional<Finding> licence(Application application, Person person, Licence licence, String state) {
        String of = licence.state();
        LocalDate last = licence.validUntil();
        if (licence.number() == null || of == null || last == null) {
            return Optional.of(incomplete(application, person, "has no licence"));
        }
        if (!of.strip().equalsIgnoreCase(state.strip())) {
            return Optional.empty();
        }
        Finding day = onTheDay(application, person, of, last, application.date());
        return Optional.of(
                day.standing() == Standing.BARRED
                        ? day
                        : worse(day, covers(application, person, licence, of), kind(application, person, licence, of)));
    }

    private static Finding worse(Finding day, Optional<Finding> covers, Optional<Finding> kind) {
        return Stream.of(Optional.of(day), covers, kind)
                .flatMap(Optional::stream)
                .min(Comparator.comparing(Finding::standing))
                .orElse(day);
    }

    /** For whom he sprays; empty where the licence lets him. */
    private Optional<Finding> kind(Application application, Person person, Licence licence, String state) {
        LicenceKind kind = licence.kind();
        String whose = "The " + state + " licence of " + person.name();
        if (kind == null) {
            return Optional.of(unknown(
                    application.subject(),
                    "Whether the " + state + " licence of " + person.name()
                            + " is private, commercial or for hire is not on " + "file.",
                    "Read it on the licence, and enter its kind."));
        }
        if (kind == LicenceKind.FOR_HIRE || person.forHire() == Ask.NO) {
            return Optional.empty();
        }
        if (person.forHire() == Ask.UNKNOWN) {
            return Optional.of(unknown(
                    application.subject(),
                    whose + " is " + kind.word()
                            + ", and whether he sprays for pay on other people's ground is not on file.",
                    "Enter on the sheet people whether " + person.name() + " works for hire."));
        }
        return Optional.of(
                kind == LicenceKind.PRIVATE
                        ? barred(
                                application.subject(),
                                whose
                                        + " is private: he may not put on a restricted product for pay on ground that is neither "
                                        + "his own nor his employer's.",
                                "Name someone with a commercial licence of " + state + ".")
                        : conditional(
                                application.subject(),
                                whose
                                        + " is commercial, and he sprays for pay. Many states license work for hire apart.",
                                "Ask the " + state
                                        + " department of agriculture whether his licence covers work for hire."));
    }

    /** What the categories cover; empty where that is what the pass asks for. */
    private Optional<Finding> covers(Application application, Person person, Licence licence, String state) {
        Cover asked = application.method() == Method.AERIAL
                ? Cover.AERIAL
                : licence.kind() == LicenceKind.PRIVATE ? null : Cover.FIELD_CROPS;
        Set<Cover> covers = licence.covers();
        if (asked == null || licence.kind() == null) {
            return Optional.empty();
        }
        if (covers == null) {
            return Optional.of(unknown(
                    application.subject(),
                    "What the categories of the " + state + " licence of " + person.name()
                            + " cover is not on file; this asks " + "for " + asked.word() + ".",
                    "Read the categories on the licence, and enter what they cover."));
        }
        return covers.contains(asked)
                ? Optional.empty()
                : Optional.of(barred(
                        application.subject(),
                        "The categories of the " + state + " licence of " + person.name() + " don't cover "
                                + asked.word() + ".",
                        "Name someone whose licence covers " + asked.word() + "."));
    }

    private Finding onTheDay(
            Application application, Person person, String state, LocalDate last, @Nullable LocalDate day) {
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
                : clear(application.subject(), person.name() + " is licensed in " + state + " until " + last + ".");
    }
}
