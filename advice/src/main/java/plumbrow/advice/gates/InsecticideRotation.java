package plumbrow.advice.gates;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import plumbrow.advice.shelf.ProductKind;

/**
 * Whether an insecticide group goes on more than once a season.
 *
 * <p>Protects the usefulness of the chemistry. A second application of a group, the log counted, is conditional: another
 * kind of insect may call for it, another generation of the same one breeds resistance. Never barred.
 *
 * <p>Source: group numbers of the reference data; once a season is common practice, no source. Needs: the content of
 * products.
 */
final class InsecticideRotation extends Question {
    InsecticideRotation() {
        super("insecticide-rotation", Protects.USEFULNESS, "Does an insecticide group go on once a season?");
    }

    @Override
    public List<Finding> check(Case at) {
        Map<String, Long> times = new TreeMap<>();
        at.all().stream()
                .flatMap(one -> ProductGroups.of(at, List.of(one.product()), ProductKind.INSECTICIDE).stream())
                .forEach(group -> times.merge(group, 1L, Long::sum));
        Set<String> planned = ProductGroups.of(
                at, at.planned().stream().map(Application::product).toList(), ProductKind.INSECTICIDE);
        return planned.stream()
                .map(group -> judge(group, times.getOrDefault(group, 0L)))
                .toList();
    }

    private Finding judge(String group, long times) {
        String says = "Insecticide group " + group + " goes on " + times + " times this season.";
        Finding finding = times > 1
                ? conditional(
                        "insecticide group " + group,
                        says,
                        "Take another group for the later pass where insects of the same kind come again.")
                : clear("insecticide group " + group, "Insecticide group " + group + " goes on once this season.");
        return finding.against((double) times, 1, "times").standingIn("common practice, no source");
    }
}
