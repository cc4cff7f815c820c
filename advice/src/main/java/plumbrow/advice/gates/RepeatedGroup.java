package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import plumbrow.advice.program.Done;
import plumbrow.advice.shelf.ProductKind;

/**
 * Whether a herbicide group goes on year after year.
 *
 * <p>Protects the usefulness of the chemistry. A group that the log has on this field in each of the two seasons before, and
 * the program plans again, is conditional. Silent where the log does not reach back. Never barred.
 *
 * <p>Source: group numbers of the reference data; two seasons are common practice, no source. Needs: the log and the content
 * of products.
 */
final class RepeatedGroup extends Question {
    private static final int SEASONS = 2;

    RepeatedGroup() {
        super("repeated-group", Protects.USEFULNESS, "Does a herbicide group go on year after year?");
    }

    @Override
    public List<Finding> check(Case at) {
        Set<String> planned = ProductGroups.of(
                at, at.planned().stream().map(Application::product).toList(), ProductKind.HERBICIDE);
        Map<Integer, Set<String>> logged = new TreeMap<>();
        for (int back = 1; back <= SEASONS; back++) {
            logged.put(back, ProductGroups.of(at, before(at, back), ProductKind.HERBICIDE));
        }
        if (logged.values().stream().allMatch(Set::isEmpty)) {
            return List.of();
        }
        return planned.stream().map(group -> judge(group, logged.values())).toList();
    }

    /** Products of the log in the season so many years back. */
    private static List<String> before(Case at, int back) {
        LocalDate from = at.index().seasonStart(at.field().crop()).minusYears(back);
        return at.index().before(at.field()).stream()
                .filter(line -> !line.date().isBefore(from) && line.date().isBefore(from.plusYears(1)))
                .map(Done::product)
                .toList();
    }

    private Finding judge(String group, Collection<Set<String>> seasons) {
        long again = seasons.stream().filter(groups -> groups.contains(group)).count();
        String says = "Group " + group + " is planned, and the log has it in " + again + " of the " + SEASONS
                + " seasons before.";
        Finding finding = again == SEASONS
                ? conditional(
                        "group " + group,
                        says,
                        "Lean on another group this year, or add one that works on the same weeds in the same pass.")
                : clear("group " + group, says);
        return finding.against(again + 1.0, SEASONS, "seasons in a row").standingIn("common practice, no source");
    }
}
