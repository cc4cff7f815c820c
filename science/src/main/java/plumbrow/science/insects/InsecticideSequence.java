package plumbrow.science.insects;

import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether one insecticide or fungicide may follow another by their resistance groups.
 *
 *   the same group in both: hard warning;  another subgroup of the same number (4A, 4C, 4D): soft;  else none
 *
 * Seed treatments count as applications; a co-formulation brings all its groups. The label's own group number counts.
 *
 * Source: rotation guidance of the resistance action committees, as in no-tillfarmer.com/articles/9037 (subgroups: no
 * cross-resistance documented, but advised to avoid in sequence).
 */
public final class InsecticideSequence {
    private static final Pattern GROUP = Pattern.compile("([0-9]{1,2})([A-D]?)|M0?([0-9]{1,2})");

    public static final Figure FIGURE = Figure.declare("insecticide-sequence", Subject.INSECTS)
            .question("May this insecticide follow that one?")
            .input(text("first", "Groups of the first, seed treatment included, commas between", "4A"))
            .input(text("second", "Groups of the one that follows, commas between", "4C"))
            .output("warning", "Warning", "")
            .output("shared", "Groups that meet again", "")
            .output("count", "How many of them", "")
            .formula("the same group: hard; another subgroup of the same number: soft; else none")
            .source("[insecticide-rotation]", VERIFIED)
            .validity("Groups as printed on the label, such as 4A or 28. The label's own rotation words go further.")
            .caution("No warning says nothing of the pest: it may already resist either group.")
            .example(
                    "first=4A second=4A", "warning=hard shared=4A count=1", "thiamethoxam, then imidacloprid", COMPUTED)
            .example("first=4A second=4C", "warning=soft shared=4 count=1", "thiamethoxam, then sulfoxaflor", COMPUTED)
            .example(
                    "first=3A,28 second=3A",
                    "warning=hard shared=3A count=1",
                    "bifenthrin + chlorantraniliprole, then lambda-cyhalothrin",
                    COMPUTED)
            .example(
                    "first=4A second=28",
                    "warning=none shared=none count=0",
                    "thiamethoxam, then chlorantraniliprole",
                    COMPUTED)
            .model(InsecticideSequence::solve);

    private InsecticideSequence() {}

    private static Outputs solve(Given given, Working working) {
        Set<String> first = groups(given, "first");
        Set<String> second = groups(given, "second");
        Set<String> same = new TreeSet<>(first);
        same.retainAll(second);
        Set<String> numbers = numbers(first);
        numbers.retainAll(numbers(second));
        Set<String> shared = same.isEmpty() ? numbers : same;
        String warning = !same.isEmpty() ? "hard" : numbers.isEmpty() ? "none" : "soft";
        Set<String> apart = new TreeSet<>(first);
        apart.addAll(second);
        working.line(
                "the same group in both, counted by what is named twice",
                same.size(),
                "",
                "{} + {} − {}",
                first.size(),
                second.size(),
                apart.size());
        return new Outputs()
                .put("warning", warning)
                .put("shared", shared.isEmpty() ? "none" : String.join(", ", shared))
                .put("count", shared.size());
    }

    private static Set<String> numbers(Set<String> groups) {
        Set<String> numbers = new TreeSet<>();
        groups.forEach(group -> numbers.add(group.startsWith("M") ? group : group.replaceAll("[A-D]$", "")));
        return numbers;
    }

    private static Set<String> groups(Given given, String key) {
        Set<String> groups = new TreeSet<>();
        for (String cell : given.word(key).split(",", -1)) {
            String group = cell.strip().toUpperCase(Locale.ROOT).replaceFirst("^M0", "M");
            if (!GROUP.matcher(group).matches()) {
                throw given.refuse(key, "group numbers as the label prints them, commas between, such as 4A,28");
            }
            groups.add(group);
        }
        return groups;
    }
}
