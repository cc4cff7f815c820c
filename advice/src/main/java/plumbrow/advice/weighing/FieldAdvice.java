package plumbrow.advice.weighing;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Field;

/**
 * The answer for one field.
 *
 * @param programs all of them, highest mean margin first, barred ones too
 * @param baseline the program the others are compared with
 * @param advised the program advised, which leads; null where none may be
 * @param aboutEqual the programs about equal to it, where there are any; null where it leads by more than that
 * @param equal the rule by which programs are told as about equal
 * @param sentence the advice in one sentence, with its odds
 * @param reason why, in one sentence
 * @param doubt what is doubtful or must be looked up, in one sentence
 * @param gainDoubt what the doubt about the advised program's gain is made of; null where no doubt that counts was entered
 * @param comparisons the advised program against each other one; empty where nothing is advised
 * @param ranges for each uncertain input, the values over which the advised program stays the best of all that may be advised;
 *     those that turn it first, nearest first
 * @param whatMatters uncertain inputs by what knowing them is worth, most first
 * @param samples planned scouting samples by what they are worth
 * @param inputs the uncertain inputs
 * @param evpiUsdPerAcre expected value of knowing everything before deciding [$/ac]
 * @param cautions sentences that stand beside the advice
 */
public record FieldAdvice(
        Field field,
        String grower,
        int draws,
        long seed,
        List<WeighedProgram> programs,
        String baseline,
        @Nullable String advised,
        @Nullable AboutEqual aboutEqual,
        EqualRule equal,
        String sentence,
        String reason,
        String doubt,
        @Nullable GainDoubt gainDoubt,
        List<Comparison> comparisons,
        List<AdviceRange> ranges,
        List<InformationValue> whatMatters,
        List<SampleWorth> samples,
        List<UncertainInput> inputs,
        double evpiUsdPerAcre,
        List<String> cautions) {
    /** The doubt of a choice that none of its inputs turns. */
    public static final String NOTHING_TURNS = "No single input turns the choice within its plausible range.";

    public FieldAdvice {
        programs = List.copyOf(programs);
        comparisons = List.copyOf(comparisons);
        ranges = List.copyOf(ranges);
        whatMatters = List.copyOf(whatMatters);
        samples = List.copyOf(samples);
        inputs = List.copyOf(inputs);
        cautions = List.copyOf(cautions);
    }

    public Optional<WeighedProgram> program(String name) {
        return programs.stream().filter(program -> program.name().equals(name)).findFirst();
    }

    /** The program advised, where there is one. */
    public Optional<WeighedProgram> advisedProgram() {
        return advised == null ? Optional.empty() : program(advised);
    }

    /** Names of the advised program and those about equal to it, it first; empty where nothing is advised. */
    public List<String> leading() {
        if (advised == null) {
            return List.of();
        }
        return aboutEqual == null ? List.of(advised) : aboutEqual.programs();
    }

    /** Whether any input was entered as more than a single value. */
    public boolean doubtEntered() {
        return inputs.stream().anyMatch(input -> !Chances.settled(input.distribution()));
    }

    /** A chance as odds; that no doubt was entered where every input is a single value. */
    public String odds(double chance) {
        return doubtEntered() ? Odds.words(chance) : Odds.NO_DOUBT;
    }

    /** How often a program leads another; the three counts where many seasons are level, else odds in which a tie counts half. */
    public String odds(Comparison pair) {
        return doubtEntered() && pair.leads().manyLevel() ? pair.leads().words() : odds(pair.chanceBetter());
    }

    /** The chance that a program beats the baseline, told the same way where it is the advised one. */
    public String oddsAgainstBaseline(WeighedProgram program) {
        return comparisons.stream()
                .filter(pair ->
                        pair.program().equals(program.name()) && pair.other().equals(baseline))
                .findFirst()
                .map(this::odds)
                .orElseGet(() -> odds(program.chanceBeatsBaseline()));
    }

    /** Mean gain of the advised program over the baseline for the whole field [$]; 0 where nothing is advised. */
    public double advisedGainUsd() {
        return advisedProgram()
                .map(program -> program.meanGainUsdPerAcre() * field.acres())
                .orElse(0.0);
    }
}
