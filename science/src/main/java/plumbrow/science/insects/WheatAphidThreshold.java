package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * At how many aphids a stem wheat is treated, by kind of aphid and stage.
 *
 * Where the table prints "more than", the number itself is not yet enough. Greenbug on seedlings is printed 5 to 15: the
 * careful end is taken and the other end stands in the validity.
 *
 * Source: cropwatch.unl.edu/identifying-and-treating-aphids-wheat (Nebraska).
 */
public final class WheatAphidThreshold {
    private static final List<String> KINDS = List.of("greenbug", "corn-leaf", "bird-cherry-oat", "english-grain");
    private static final List<String> STAGES = List.of("seedling", "boot-to-head", "flower", "milk", "milk-to-dough");
    private static final double[][] APHIDS = {
        {5, 25, 25, 25, 25}, {20, 30, 25, 25, 25}, {20, 30, 5, 10, 10}, {30, 50, 5, 10, 10}
    };
    private static final boolean[][] MORE_THAN = {
        {false, false, true, true, true},
        {false, false, true, true, true},
        {false, false, true, false, true},
        {false, false, false, false, true}
    };

    public static final Figure FIGURE = Figure.declare("wheat-aphid-threshold", Subject.INSECTS)
            .question("Are there so many aphids that wheat is treated?")
            .input(number("aphids_stem", "Aphids a stem, mean of the field", "aphids/stem", Range.NOT_NEGATIVE, "12"))
            .input(word("kind", "Kind of aphid", KINDS, "bird-cherry-oat"))
            .input(word("stage", "Stage of the wheat", STAGES, "milk"))
            .output("threshold", "Threshold", "aphids/stem")
            .output("of_threshold", "Aphids over the threshold", "")
            .output("verdict", "In words", "")
            .formula("treat from the table's aphids a stem; where it prints 'more than', only above it")
            .source("[nebraska-wheat-aphids]", VERIFIED)
            .validity(
                    "Nebraska. Greenbug on seedlings is printed 5 to 15 a stem: 5 is taken. No treatment after soft dough.")
            .caution("Where 5 to 10 % of the aphids are mummies, wait: wasps are winning.")
            .caution("Bird cherry-oat aphids also carry a virus in autumn, which no count in spring undoes.")
            .example(
                    "aphids_stem=12 kind=bird-cherry-oat stage=milk",
                    "threshold=10 of_threshold=1.2 verdict=treat",
                    "[nebraska-wheat-aphids]",
                    VERIFIED)
            .example(
                    "aphids_stem=20 kind=greenbug stage=boot-to-head",
                    "threshold=25 verdict=below the threshold",
                    "[nebraska-wheat-aphids]",
                    VERIFIED)
            .example(
                    "aphids_stem=25 kind=greenbug stage=flower",
                    "threshold=25 verdict=below the threshold",
                    "[nebraska-wheat-aphids]: more than 25",
                    VERIFIED)
            .example(
                    "aphids_stem=25 kind=corn-leaf stage=seedling",
                    "threshold=20 verdict=treat",
                    "[nebraska-wheat-aphids]",
                    VERIFIED)
            .example(
                    "aphids_stem=49 kind=english-grain stage=boot-to-head",
                    "threshold=50",
                    "[nebraska-wheat-aphids]",
                    VERIFIED)
            .example(
                    "aphids_stem=5 kind=english-grain stage=flower",
                    "threshold=5 verdict=treat",
                    "[nebraska-wheat-aphids]",
                    VERIFIED)
            .example(
                    "aphids_stem=5 kind=bird-cherry-oat stage=flower",
                    "threshold=5 verdict=below the threshold",
                    "[nebraska-wheat-aphids]: more than 5",
                    VERIFIED)
            .model(WheatAphidThreshold::solve);

    private WheatAphidThreshold() {}

    private static Outputs solve(Given given, Working working) {
        double aphids = given.number("aphids_stem");
        int kind = KINDS.indexOf(given.word("kind"));
        int stage = STAGES.indexOf(given.word("stage"));
        double threshold = APHIDS[kind][stage];
        double of = working.line("aphids over the threshold", aphids / threshold, "", "{} ÷ {}", aphids, threshold);
        boolean reached = MORE_THAN[kind][stage] ? of > 1 : of >= 1;
        return new Outputs()
                .put("threshold", threshold)
                .put("of_threshold", of)
                .put("verdict", reached ? "treat" : "below the threshold");
    }
}
