package plumbrow.advice.gates;

import java.util.List;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelUse;

/**
 * Whether each application's rate is within the label.
 *
 * <p>Protects the law. More than the highest rate is barred. Less than the lowest is barred where the label forbids it,
 * conditional where it does not, unknown where nobody has looked: federal law lets a grower use less than the label
 * rate unless the label forbids it, but a guarantee or resistance guidance may still ask for the full rate, and a
 * state's law may differ. A label with a single rate has it as lowest and highest.
 *
 * <p>Source: the label; 7 U.S.C. 136(ee) for less than the label rate (value from memory). Needs: lowest and highest
 * rate and whether less is forbidden. Rates are compared within one kind of unit only: a weight is never held against a
 * volume.
 */
final class LabelRate implements Gate {
    private static final String LESS_IS_LAWFUL = "7 U.S.C. 136(ee), value from memory";

    @Override
    public String id() {
        return "label-rate";
    }

    @Override
    public Protects protects() {
        return Protects.LAW;
    }

    @Override
    public String question() {
        return "Is the rate within the label?";
    }

    @Override
    public List<Finding> check(Season season, Field field, Course course) {
        return Application.of(season, course).stream()
                .flatMap(application -> season.shelf().labelUse(application.product(), field.crop()).stream()
                        .map(use -> judge(application, use)))
                .toList();
    }

    private Finding judge(Application application, LabelUse use) {
        Amount rate = application.rate();
        Amount high = use.highRate();
        if (rate == null) {
            return unknown(application, use, "No rate is planned.", "Enter the rate per acre of this pass.");
        }
        if (high == null) {
            return unknown(
                    application,
                    use,
                    "The highest rate on " + use.crop().word() + " has not been read.",
                    "Look up the highest rate per application for " + use.crop().word() + " on the label.");
        }
        if (!rate.comparableWith(high)) {
            return notComparable(application, use, rate, high);
        }
        Amount planned = rate.in(high.unit());
        if (Rounding.above(planned.value(), high.value())) {
            return Finding.of(
                            this,
                            Standing.BARRED,
                            application.subject(),
                            planned.text() + "/ac is more than the highest labelled rate, " + high.text() + "/ac.")
                    .against(planned.value(), high.value(), high.unit().symbol() + "/ac")
                    .standingIn(use.source())
                    .clearedBy("Cut the rate to " + high.text() + "/ac or less.");
        }
        return notTooLittle(application, use, planned, high);
    }

    private Finding notTooLittle(Application application, LabelUse use, Amount planned, Amount high) {
        Amount low = use.lowRate();
        if (low == null) {
            return lowestUnread(application, use, planned);
        }
        if (!planned.comparableWith(low)) {
            return notComparable(application, use, planned, low);
        }
        Amount inLowUnit = planned.in(low.unit());
        return Rounding.below(inLowUnit.value(), low.value())
                ? less(application, use, inLowUnit, low)
                : within(application, use, planned, high);
    }

    private Finding within(Application application, LabelUse use, Amount planned, Amount high) {
        return Finding.of(
                        this,
                        Standing.CLEAR,
                        application.subject(),
                        planned.text() + "/ac is within the label, at most " + high.text() + "/ac.")
                .against(planned.value(), high.value(), high.unit().symbol() + "/ac")
                .standingIn(use.source());
    }

    private Finding less(Application application, LabelUse use, Amount planned, Amount low) {
        String tooLittle = planned.text() + "/ac is less than the lowest labelled rate, " + low.text() + "/ac";
        Finding finding = switch (use.lessForbidden()) {
            case YES ->
                Finding.of(this, Standing.BARRED, application.subject(), tooLittle + ", and the label forbids less.")
                        .standingIn(use.source())
                        .clearedBy("Raise the rate to " + low.text() + "/ac or more.");
            case NO -> lessAllowed(application, use, tooLittle + "; the label does not forbid less.");
            case UNKNOWN ->
                Finding.of(
                                this,
                                Standing.UNKNOWN,
                                application.subject(),
                                tooLittle + "; whether the label forbids less has not been read.")
                        .standingIn(use.source())
                        .clearedBy("Look on the label for words that forbid less than " + low.text() + "/ac.");
        };
        return finding.against(planned.value(), low.value(), low.unit().symbol() + "/ac");
    }

    private Finding lowestUnread(Application application, LabelUse use, Amount planned) {
        String says = planned.text() + "/ac may be less than the lowest labelled rate, which has not been read";
        return switch (use.lessForbidden()) {
            case NO -> lessAllowed(application, use, says + "; the label does not forbid less.");
            case YES, UNKNOWN ->
                unknown(
                        application,
                        use,
                        says + ".",
                        "Look up the lowest rate for " + use.crop().word() + " and whether the label forbids less.");
        };
    }

    private Finding lessAllowed(Application application, LabelUse use, String says) {
        return Finding.of(this, Standing.CONDITIONAL, application.subject(), says)
                .standingIn(use.source() + "; " + LESS_IS_LAWFUL)
                .clearedBy("Check the state's rule, the product's guarantee and resistance guidance: "
                        + "they may still ask for the full rate.");
    }

    private Finding notComparable(Application application, LabelUse use, Amount rate, Amount limit) {
        return unknown(
                application,
                use,
                rate.text() + "/ac is " + rate.unit().dimension().words() + ", the label's " + limit.text() + "/ac is "
                        + limit.unit().dimension().words() + ".",
                "Write the rate in the label's unit.");
    }

    private Finding unknown(Application application, LabelUse use, String says, String clears) {
        return Finding.of(this, Standing.UNKNOWN, application.subject(), says)
                .standingIn(use.source())
                .clearedBy(clears);
    }
}
