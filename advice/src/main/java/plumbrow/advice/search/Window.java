package plumbrow.advice.search;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.course.SprayPlan;

/**
 * A time at which the adviser has planned to put something on: day, growth stage, heights and how it is sprayed, as one of
 * the field's courses has it.
 *
 * @param plan how it is sprayed, its course, pass and tank not counting; null where no course says
 * @param chargeUsdPerAcre the trip [$/ac]
 */
record Window(
        PassKind kind, @Nullable LocalDate date, @Nullable SprayPlan plan, double chargeUsdPerAcre) {

    /** Whether the crop is up on that day: what is sprayed must then be one that the crop stands. */
    boolean afterEmergence() {
        String stage = plan == null ? null : plan.cropStage();
        return stage == null || !stage.toUpperCase(Locale.ROOT).equals("PRE");
    }

    boolean sameTime(Window other) {
        return kind == other.kind && Objects.equals(date, other.date) && Objects.equals(plan, other.plan);
    }

    /** The plan of the window for a pass of a course. */
    @Nullable
    SprayPlan planFor(String field, String course, int pass, @Nullable String tank) {
        return plan == null ? null : plan.forPass(field, course, pass, tank);
    }
}
