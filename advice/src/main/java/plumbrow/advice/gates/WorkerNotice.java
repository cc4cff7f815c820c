package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.UseTerms;

/**
 * How workers are told of a treated field.
 *
 * <p>Protects people. Where the label asks for both, warning signs and word of mouth; where the restricted-entry interval is more than
 * 48 hours, signs; else one of the two. Nobody need be told who doesn't come within a quarter mile of the field while the
 * interval runs, nor the owner's own family. Clear where the interval is 0 hours. {@link ReEntry} asks for an interval that
 * was not read.
 *
 * <p>Source: 40 CFR 170.409, 170.601(a) (value from memory). Needs: the restricted-entry interval, and whether the label asks for
 * both.
 */
final class WorkerNotice extends UseGate {
    private static final int SIGNS_OVER_HOURS = 48;

    WorkerNotice() {
        super("notice", Protects.PEOPLE, "How are workers told of the treated field?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        Integer hours = terms.reentryHours();
        if (!application.outdoors() || hours == null) {
            return Stream.of();
        }
        if (hours == 0) {
            return Stream.of(
                    clear(application.product(), "It has no restricted-entry interval, so nobody need be told."));
        }
        List<LabelLimit> both =
                at.index().limits(application.product(), at.field().crop(), LabelLimit.Kind.SIGNS_AND_WORD);
        boolean signs = hours > SIGNS_OVER_HOURS;
        String duty = !both.isEmpty()
                ? "Post warning signs and tell workers by word of mouth as well"
                : signs ? "Post warning signs" : "Post warning signs, or tell workers by word of mouth";
        Finding finding = conditional(
                application.product(),
                !both.isEmpty()
                        ? "The label asks that workers be told both ways; the restricted-entry interval is " + hours
                                + " h."
                        : "The restricted-entry interval is " + hours + " h: signs must stand where it is more than "
                                + SIGNS_OVER_HOURS + " h.",
                duty
                        + ", before it goes on and until the interval is over, where anyone may come within a quarter mile of the "
                        + "field.");
        return Stream.of(finding.against(hours, SIGNS_OVER_HOURS, "h")
                .standingIn(
                        both.isEmpty()
                                ? terms.source() + "; 40 CFR 170.409"
                                : both.get(0).source()));
    }
}
