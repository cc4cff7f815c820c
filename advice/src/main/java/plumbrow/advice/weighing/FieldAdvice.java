package plumbrow.advice.weighing;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;

/**
 * The answer for one field.
 *
 * @param courses all of them, highest mean margin first, barred ones too
 * @param baseline the course the others are compared with
 * @param advised the course advised; null where none may be
 * @param sentence the advice in one sentence, with its odds
 * @param reason why, in one sentence
 * @param doubt what is doubtful or must be looked up, in one sentence
 * @param comparisons the advised course against each other one; empty where nothing is advised
 * @param breakEvens for each uncertain input, where the order of the two best advisable courses turns
 * @param whatMatters uncertain inputs by what knowing them is worth, most first
 * @param samples planned scouting samples by what they are worth
 * @param inputs the uncertain inputs
 * @param worthOfKnowingAllUsdPerAcre expected value of knowing everything before deciding [$/ac]
 * @param cautions sentences that stand beside the advice
 */
public record FieldAdvice(
        Field field,
        String grower,
        int draws,
        long seed,
        List<WeighedCourse> courses,
        String baseline,
        @Nullable String advised,
        String sentence,
        String reason,
        String doubt,
        List<Comparison> comparisons,
        List<BreakEven> breakEvens,
        List<Knowing> whatMatters,
        List<SampleWorth> samples,
        List<UncertainInput> inputs,
        double worthOfKnowingAllUsdPerAcre,
        List<String> cautions) {
    public FieldAdvice {
        courses = List.copyOf(courses);
        comparisons = List.copyOf(comparisons);
        breakEvens = List.copyOf(breakEvens);
        whatMatters = List.copyOf(whatMatters);
        samples = List.copyOf(samples);
        inputs = List.copyOf(inputs);
        cautions = List.copyOf(cautions);
    }

    public Optional<WeighedCourse> course(String name) {
        return courses.stream().filter(course -> course.name().equals(name)).findFirst();
    }

    /** The course advised, where there is one. */
    public Optional<WeighedCourse> advisedCourse() {
        return advised == null ? Optional.empty() : course(advised);
    }

    /** Mean gain of the advised course over the baseline for the whole field [$]; 0 where nothing is advised. */
    public double advisedGainUsd() {
        return advisedCourse()
                .map(course -> course.meanGainUsdPerAcre() * field.acres())
                .orElse(0.0);
    }
}
