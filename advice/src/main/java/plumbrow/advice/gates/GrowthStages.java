package plumbrow.advice.gates;

import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether the crop is within the growth stages that the label allows.
 *
 * <p>Protects the law and the crop. Both ends are included. Measured and limit are how many stages of the crop come
 * before the one planned and the one allowed. Unknown where an end was not read, the stage is not planned, or either is
 * no stage of this crop.
 *
 * <p>Source: the label. Needs: earliest and latest stage, and the crop's stage on the day.
 */
final class GrowthStages extends UseGate {
    GrowthStages() {
        super("growth-stage", Protects.LAW, "Is the crop at a growth stage the label allows?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        SprayPlan plan = application.plan();
        if (plan == null) {
            return Stream.of();
        }
        Crop crop = at.field().crop();
        return Stream.of(
                end(application, crop, plan.cropStage(), terms.earliestStage(), false),
                end(application, crop, plan.cropStage(), terms.latestStage(), true));
    }

    private Finding end(
            Application application, Crop crop, @Nullable String planned, @Nullable String allowed, boolean latest) {
        String word = latest ? "latest" : "earliest";
        if (allowed == null) {
            return unknown(
                    application.subject(),
                    "The " + word + " growth stage has not been read.",
                    "Look up the " + word + " growth stage on the label.");
        }
        if (allowed.isEmpty()) {
            return clear(application.subject(), "The label sets no " + word + " growth stage.");
        }
        String limit = "the " + word + " stage allowed is " + allowed;
        if (planned == null) {
            return unknown(
                    application.subject(),
                    "The growth stage on the day is not planned; " + limit + ".",
                    "Plan the growth stage of this pass.");
        }
        OptionalInt found = GrowthStage.place(crop, planned);
        OptionalInt bound = GrowthStage.place(crop, allowed);
        if (found.isEmpty() || bound.isEmpty()) {
            return unknown(
                    application.subject(),
                    (found.isEmpty() ? planned : allowed) + " is no growth stage of " + crop.word() + ".",
                    "Write it as one of " + GrowthStage.words(crop) + ".");
        }
        String says = crop.word() + " at " + planned + "; " + limit + ".";
        boolean past = latest ? found.getAsInt() > bound.getAsInt() : found.getAsInt() < bound.getAsInt();
        Finding finding = past
                ? barred(
                        application.subject(), says, "Go at " + allowed + " or " + (latest ? "earlier" : "later") + ".")
                : clear(application.subject(), says);
        return finding.against(found.getAsInt(), bound.getAsInt(), "stages");
    }
}
