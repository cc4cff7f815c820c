package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether planned entries keep out of the restricted-entry interval.
 *
 * <p>Protects people who scout, till, plant and harvest. Of all that goes on on one day the longest interval counts, and it
 * runs from the end of the application. Plans know days, not hours: an entry on a later day is surely so many whole days
 * after,
 *
 * <pre>  least hours = 24 × (days between − 1);  most hours = 24 × (days between + 1)</pre>
 *
 * <p>Clear where the least is enough, barred where the most is not, else conditional: go in when the hours are over. An
 * entry on the day itself goes before the spraying or waits. Exactly the interval is enough. A pass that sprays again is
 * the work of a trained handler and no entry, and so is planting with the granules or the furrow spray of that day, and
 * tillage that works in what the labels ask to be worked in, in their time: who drives wears a handler's gear. Unknown where an interval or a day is missing. The log counts.
 *
 * <p>Source: the labels; 40 CFR 170.309, 156.208(c), the longest of a mix. Needs: the restricted-entry interval of each product and
 * the days of passes.
 */
final class ReEntry extends Question {
    ReEntry() {
        super("re-entry", Protects.PEOPLE, "Do people stay out until the restricted-entry interval (REI) is over?");
    }

    @Override
    public List<Finding> check(Case at) {
        List<Finding> findings = new ArrayList<>();
        Map<LocalDate, List<Application>> byDay = new TreeMap<>();
        for (Application application : at.all()) {
            Optional<UseTerms> terms = at.terms(application.product());
            if (terms.isPresent() && terms.get().reentryHours() == null) {
                findings.add(unread(application, terms.get()));
            } else if (application.date() != null) {
                byDay.computeIfAbsent(application.date(), day -> new ArrayList<>())
                        .add(application);
            } else if (hours(at, application) > 0) {
                findings.add(undated(at, application));
            }
        }
        byDay.forEach((day, applications) -> judge(at, day, applications).forEach(findings::add));
        return findings;
    }

    private Finding unread(Application application, UseTerms terms) {
        return unknown(
                        application.subject(),
                        "The restricted-entry interval has not been read.",
                        "Look up the restricted-entry interval (REI) on the label.")
                .standingIn(terms.source());
    }

    private Finding undated(Case at, Application application) {
        return unknown(
                application.subject(),
                "The restricted-entry interval is " + hours(at, application) + " h, and the pass has no planned day.",
                "Plan a day for the pass, and keep people out until the interval is over.");
    }

    private static int hours(Case at, Application application) {
        return at.terms(application.product())
                .map(terms -> Objects.requireNonNullElse(terms.reentryHours(), 0))
                .orElse(0);
    }

    private Stream<Finding> judge(Case at, LocalDate day, List<Application> applications) {
        Application longest = applications.stream()
                .max(Comparator.comparingInt(one -> hours(at, one)))
                .orElseThrow();
        int hours = hours(at, longest);
        if (hours == 0) {
            return Stream.of();
        }
        String subject = applications.stream().map(Application::subject).collect(Collectors.joining("; "));
        String source = at.terms(longest.product()).map(UseTerms::source).orElse("");
        List<Pass> entries = entries(at);
        Stream<Finding> undated = entries.stream()
                .filter(entry -> entry.date() == null)
                .map(entry -> unknown(
                        subject,
                        "The restricted-entry interval is " + hours + " h, and the " + words(entry)
                                + " has no planned day.",
                        "Plan a day for the " + words(entry) + "."));
        List<Pass> dated = entries.stream()
                .filter(entry -> entry.date() != null && !entry.date().isBefore(day))
                .filter(entry -> !(entry.kind() == PassKind.SEED
                        && day.equals(entry.date())
                        && applications.stream().allMatch(ReEntry::withPlanter)))
                .sorted(Comparator.comparing((Pass entry) -> Objects.requireNonNull(entry.date()))
                        .thenComparing(Pass::number))
                .toList();
        List<Pass> sameDay =
                dated.stream().filter(entry -> day.equals(entry.date())).toList();
        Stream<Pass> firstAfter = dated.stream().skip(sameDay.size()).limit(1);
        Stream<Finding> next = dated.isEmpty()
                ? Stream.of(clear(subject, "No entry is planned after it; the interval is " + hours + " h."))
                : Stream.concat(sameDay.stream(), firstAfter)
                        .map(entry -> works(at, applications, day, entry)
                                ? handler(at, subject, applications, entry)
                                : held(subject, hours, day, entry, Objects.requireNonNull(entry.date())));
        return Stream.concat(undated, next).map(finding -> finding.standingIn(source));
    }

    /** Whether a pass works in, in the time the labels give, what goes on that day. */
    private static boolean works(Case at, List<Application> applications, LocalDate day, Pass entry) {
        LocalDate entered = entry.date();
        return entry.kind() == PassKind.TILLAGE
                && entered != null
                && WorkedIn.within(at, applications)
                        .filter(hours -> WorkedIn.may(day, entered, hours))
                        .isPresent();
    }

    /** Who works it in is a handler, and wears what the labels ask of one. */
    private Finding handler(Case at, String subject, List<Application> applications, Pass entry) {
        List<Optional<Set<String>>> worn = applications.stream()
                .map(one -> at.care(one.product()).map(ProductCare::wear))
                .toList();
        String says = "The " + words(entry) + " on " + entry.date()
                + " works it in before the restricted-entry interval is over: whoever drives is a handler.";
        return worn.stream().anyMatch(Optional::isEmpty)
                ? unknown(
                        subject,
                        says + " What handlers must wear has not been read.",
                        "Look up personal protective equipment (PPE) for handlers on the label.")
                : conditional(
                        subject,
                        says,
                        "Whoever works it in has been trained as a handler and wears "
                                + wear(worn.stream().flatMap(Optional::stream).toList()) + ".");
    }

    private static String wear(List<Set<String>> worn) {
        List<String> all =
                worn.stream().flatMap(Set::stream).distinct().sorted().toList();
        return all.isEmpty() ? "what the label lists, which is nothing" : String.join(", ", all);
    }

    private static List<Pass> entries(Case at) {
        return at.passes().stream()
                .filter(pass -> switch (pass.kind()) {
                    case SCOUTING, HAND_WORK, TILLAGE, HARVEST -> true;
                    case SEED -> at.planned().stream().noneMatch(one -> pass.equals(one.pass()));
                    case SPRAY, GRANULE -> false;
                })
                .toList();
    }

    private Finding held(String subject, int hours, LocalDate day, Pass entry, LocalDate entered) {
        long days = ChronoUnit.DAYS.between(day, entered);
        long least = Math.max(0, 24 * (days - 1));
        long most = 24 * (days + 1);
        String says = "The " + words(entry) + " on " + entered + " comes at least " + least
                + " h after the end of it; the restricted-entry interval is " + hours + " h.";
        if (least >= hours) {
            return clear(subject, says).against((double) least, hours, "h");
        }
        Finding finding = days > 0 && most <= hours
                ? barred(
                        subject,
                        says,
                        "Put the " + words(entry) + " off to " + day.plusDays(wholeDays(hours)) + " or later.")
                : conditional(subject, says, condition(hours, days, entry));
        return finding.against((double) least, hours, "h");
    }

    private static String condition(int hours, long days, Pass entry) {
        String wait = "until " + hours + " h after the end of the application";
        return days == 0
                ? "Finish the " + words(entry) + " before the application, or wait " + wait + "."
                : "Nobody goes in " + wait + ".";
    }

    /** Days after which the interval is surely over. */
    private static long wholeDays(int hours) {
        return 1L + (hours + 23) / 24;
    }

    /** Whether it goes on in the same trip as the planting: who plants is then the handler. */
    private static boolean withPlanter(Application application) {
        Pass pass = application.pass();
        return (pass != null && pass.kind() == PassKind.GRANULE) || application.method() == Method.IN_FURROW;
    }

    private static String words(Pass entry) {
        return (entry.kind() == PassKind.SEED ? "planting" : entry.kind().word()) + " of pass " + entry.number();
    }
}
