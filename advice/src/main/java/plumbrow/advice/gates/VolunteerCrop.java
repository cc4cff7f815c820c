package plumbrow.advice.gates;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.CropName;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.pests.WeedPressure;

/**
 * Whether what is planned against a volunteer crop still works on it: what comes up of last year's crop tolerates what its
 * seed did.
 *
 * <p>Protects the usefulness of the chemistry. Asked where a weed is written as volunteer crop, such as volunteer corn, and a
 * herbicide is planned that the control sheet says works on it. Conditional where an ingredient of that herbicide is one that
 * the crop tolerated; unknown where nobody has written what it tolerated; clear otherwise.
 *
 * <p>Source: the tags of last year's seed; a tolerance passes on to the grain. Needs: the herbicide traits of the crops that
 * the field carried.
 */
final class VolunteerCrop extends Question {
    private static final String VOLUNTEER = "volunteer ";

    VolunteerCrop() {
        super(
                "volunteer-crop",
                Protects.USEFULNESS,
                "Does what is planned work on a volunteer crop that tolerates herbicide?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.index().weeds(at.field().name()).stream()
                .map(WeedPressure::weed)
                .filter(weed -> weed.toLowerCase(Locale.ROOT).startsWith(VOLUNTEER))
                .distinct()
                .flatMap(weed -> judge(at, weed))
                .map(finding -> finding.standingIn("tags of last year's seed; tolerance passes on to the grain"))
                .toList();
    }

    private Stream<Finding> judge(Case at, String weed) {
        String crop = weed.substring(VOLUNTEER.length());
        List<String> tolerated = last(at, crop).map(CropYear::herbicideTraits).orElse(null);
        return at.planned().stream()
                .map(Application::product)
                .distinct()
                .filter(product -> at.index().kills(product, weed).stream().anyMatch(Kill::effective))
                .map(product -> judge(at, product, weed, tolerated));
    }

    private static Optional<CropYear> last(Case at, String crop) {
        return at.index().history(at.field().name()).stream()
                .filter(year -> CropName.same(year.crop(), crop))
                .max(Comparator.comparingInt(CropYear::year));
    }

    private Finding judge(Case at, String product, String weed, @Nullable List<String> tolerated) {
        String subject = product + ", " + weed;
        if (tolerated == null) {
            return unknown(
                    subject,
                    "Which herbicides the crop tolerated that " + weed + " comes from is not written.",
                    "Enter the herbicide traits of last year's seed on "
                            + at.field().name() + ".");
        }
        List<String> lost = at.index().actives(product).stream()
                .map(content -> content.ingredient())
                .filter(ingredient -> tolerated.stream().anyMatch(one -> Tolerance.same(one, ingredient)))
                .toList();
        return lost.isEmpty()
                ? clear(
                        subject,
                        "It tolerates " + (tolerated.isEmpty() ? "no herbicide" : String.join(", ", tolerated)) + ".")
                : conditional(
                        subject,
                        "It comes from a crop that tolerates " + String.join(" and ", lost) + ", so " + product
                                + " does not kill it by that.",
                        "Count on another group against " + weed + ".");
    }
}
