package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Pass;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelUse;

/**
 * Whether enough days pass between each application and the harvest.
 *
 * <p>Protects people: residues in the grain. Days are calendar days from the application to the earliest harvest pass;
 * exactly the interval is enough, and an interval of none asks for no day. Soil and seed treatments at planting go through the same arithmetic. Unknown where the
 * interval or either day is missing, or the plan puts the application after the harvest.
 *
 * <p>Source: the label. Needs: the pre-harvest interval and the planned days.
 */
final class PreHarvestInterval implements Gate {

    @Override
    public String id() {
        return "pre-harvest-interval";
    }

    @Override
    public Protects protects() {
        return Protects.PEOPLE;
    }

    @Override
    public String question() {
        return "Do enough days pass before harvest?";
    }

    @Override
    public List<Finding> check(Season season, Field field, Course course) {
        LocalDate harvest = harvest(course).orElse(null);
        return Application.of(season, course).stream()
                .flatMap(application -> season.shelf().labelUse(application.product(), field.crop()).stream()
                        .map(use -> judge(application, use, harvest)))
                .toList();
    }

    private Finding judge(Application application, LabelUse use, @Nullable LocalDate harvest) {
        Integer interval = use.preHarvestDays();
        LocalDate applied = application.pass().date();
        if (interval == null) {
            return unknown(
                    application,
                    use,
                    "The pre-harvest interval on " + use.crop().word() + " has not been read.",
                    "Look up the days before harvest for " + use.crop().word() + " on the label.");
        }
        if (interval == 0 && (applied == null || harvest == null)) {
            return Finding.of(this, Standing.CLEAR, application.subject(), "The label asks for no days before harvest.")
                    .standingIn(use.source());
        }
        if (applied == null || harvest == null) {
            return unknown(
                    application,
                    use,
                    "The label asks for " + days(interval) + " before harvest, but "
                            + (applied == null ? "this pass" : "the harvest") + " has no planned day.",
                    "Plan a day for " + (applied == null ? "this pass." : "the harvest pass."));
        }
        long between = ChronoUnit.DAYS.between(applied, harvest);
        if (between < 0) {
            return unknown(
                    application,
                    use,
                    "The pass is planned for " + applied + ", after the harvest on " + harvest + ".",
                    "Check both days.");
        }
        Finding finding = between < interval
                ? Finding.of(
                                this,
                                Standing.BARRED,
                                application.subject(),
                                days(between) + " from " + applied + " to harvest; the label asks for " + days(interval)
                                        + ".")
                        .clearedBy("Go by " + harvest.minusDays(interval) + " or harvest on "
                                + applied.plusDays(interval) + " or later.")
                : Finding.of(
                        this,
                        Standing.CLEAR,
                        application.subject(),
                        days(between) + " to harvest; the label asks for " + days(interval) + ".");
        return finding.against((double) between, interval, "days").standingIn(use.source());
    }

    /** The earliest harvest; none where any harvest pass lacks its day. */
    private static Optional<LocalDate> harvest(Course course) {
        List<Pass> harvests = course.passes().stream()
                .filter(pass -> pass.kind() == PassKind.HARVEST)
                .toList();
        return harvests.stream().anyMatch(pass -> pass.date() == null)
                ? Optional.empty()
                : harvests.stream()
                        .flatMap(pass -> Optional.ofNullable(pass.date()).stream())
                        .min(Comparator.naturalOrder());
    }

    private Finding unknown(Application application, LabelUse use, String says, String clears) {
        return Finding.of(this, Standing.UNKNOWN, application.subject(), says)
                .standingIn(use.source())
                .clearedBy(clears);
    }

    private static String days(long number) {
        return number == 1 ? "1 day" : number + " days";
    }
}
