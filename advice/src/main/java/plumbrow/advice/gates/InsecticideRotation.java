package plumbrow.advice.gates;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether an insecticide group goes on more than once a season.
 *
 * <p>Protects the usefulness of the chemistry. A second application of a group, the log and treated
 * seed counted, is conditional: another
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
        List<Application> onSeed = TreatedSeed.of(at);
        Stream.concat(at.all().stream(), onSeed.stream())
                .flatMap(one -> groups(at, one).stream())
                .forEach(group -> times.merge(group, 1L, Long::sum));
        Set<String> planned = Stream.concat(at.planned().stream(), onSeed.stream())
                .flatMap(one -> groups(at, one).stream())
                .collect(Collectors.toCollection(TreeSet::new));
        return planned.stream()
                .map(group -> judge(group, times.getOrDefault(group, 0L)))
                .toList();
    }

    /** The insecticide groups of a product, on the seed or off it. */
    private static Set<String> groups(Case at, Application application) {
        return ProductGroups.insecticide(at, application.product());
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
