package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import plumbrow.advice.weeds.FloorDepth;
import plumbrow.advice.weeds.Tool;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.science.figure.Numbers;
import plumbrow.science.soil.TillageFloor;

/** What a floor check says: how deep and how evenly a tool ran, and what to set. Limits by {@link TillageFloor}. */
final class FloorCheck {
    private static final double GOOD_CV_PCT = 15;
    private static final double POOR_CV_PCT = 25;
    private static final double RIDGE_IN = .5;

    private FloorCheck() {}

    /** Mean depth that was dug behind a tool on a field [in]; empty where nobody has dug. */
    static OptionalDouble depthIn(WeedBook book, String field, Tool tool) {
        return book.floor().stream()
                .filter(hole -> hole.field().equals(field) && hole.tool() == tool)
                .mapToDouble(FloorDepth::depthIn)
                .average();
    }

    /**
     * How uneven the floor of a tool is.
     *
     * @param logSd SD of the logarithm of its depth, which for an unevenness this small is its coefficient of variation; 0 for even
     */
    record Spread(double logSd, String source) {}

    /** As dug on a field, else at the end of what is called even. */
    static Spread spread(WeedBook book, String field, Tool tool) {
        double[] depths = book.floor().stream()
                .filter(hole -> hole.field().equals(field) && hole.tool() == tool)
                .mapToDouble(FloorDepth::depthIn)
                .toArray();
        return depths.length > 1
                ? new Spread(
                        TillageFloor.standardDeviation(depths) / TillageFloor.mean(depths),
                        depths.length + " holes dug on the field; a draw is one place of it")
                : new Spread(
                        GOOD_CV_PCT / 100,
                        "nobody dug: varies by 15 %, the end of an even floor (common practice, no source); a draw is one place"
                                + " of the field");
    }

    static List<String> sentences(WeedBook book, String field) {
        Map<Tool, List<FloorDepth>> byTool = new EnumMap<>(Tool.class);
        book.floor().stream()
                .filter(hole -> hole.field().equals(field))
                .forEach(hole -> byTool.computeIfAbsent(hole.tool(), tool -> new ArrayList<>())
                        .add(hole));
        List<String> sentences = new ArrayList<>();
        byTool.forEach((tool, holes) -> sentences.add(sentence(tool, holes)));
        return sentences;
    }

    private static String sentence(Tool tool, List<FloorDepth> holes) {
        double[] depths = holes.stream().mapToDouble(FloorDepth::depthIn).toArray();
        double mean = TillageFloor.mean(depths);
        String ran = "The " + tool.word() + " ran " + Numbers.fixed(mean, 1) + " in deep by " + depths.length
                + (depths.length == 1 ? " hole" : " holes") + " dug";
        if (depths.length < 2) {
            return ran + ": dig ten or more across the width to see how even the floor is.";
        }
        FloorDepth deepest = holes.get(0);
        FloorDepth shallowest = holes.get(0);
        for (FloorDepth hole : holes) {
            deepest = hole.depthIn() > deepest.depthIn() ? hole : deepest;
            shallowest = hole.depthIn() < shallowest.depthIn() ? hole : shallowest;
        }
        double variation = 100 * TillageFloor.standardDeviation(depths) / mean;
        double ridge = deepest.depthIn() - shallowest.depthIn();
        String even = variation <= GOOD_CV_PCT ? "even" : variation <= POOR_CV_PCT ? "fairly even" : "uneven";
        String set = variation <= GOOD_CV_PCT && ridge <= RIDGE_IN
                ? "leave it so"
                : "raise it at " + deepest.place() + " (" + Numbers.fixed(deepest.depthIn(), 2)
                        + " in) and lower it at "
                        + shallowest.place() + " (" + Numbers.fixed(shallowest.depthIn(), 2)
                        + " in) until they differ by half an inch at most, then dig again";
        return ran + ", floor " + even + " (they vary by " + Numbers.fixed(variation, 0) + " %): " + set + ".";
    }
}
