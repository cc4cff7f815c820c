package plumbrow.advice.gates;

import java.util.stream.Stream;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether crop and weeds are no taller than the label allows.
 *
 * <p>Protects the law, the crop, and the chemistry: what survives on weeds past the height breeds resistance.
 *
 * <p>Source: the label. Needs: tallest crop and tallest weed of the label, and both heights on the day.
 */
final class Heights extends UseGate {
    Heights() {
        super("height", Protects.LAW, "Are crop and weeds no taller than the label allows?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        SprayPlan plan = application.plan();
        return plan == null
                ? Stream.of()
                : Stream.of(
                        new Limit(this, application.subject(), "height of the crop", "in")
                                .atMost(plan.cropHeightIn(), terms.highestCropIn()),
                        new Limit(this, application.subject(), "height of the weeds", "in")
                                .atMost(plan.weedHeightIn(), terms.highestWeedIn()));
    }
}
