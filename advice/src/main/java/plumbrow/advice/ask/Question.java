package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.field.Crop;
import plumbrow.science.reference.TypicalValue;

/** One question that a grower asks, with its boxes and the season that they make. */
public interface Question {
    /** Boxes that are seen at once. */
    int MOST_SEEN = 8;

    /** A word for addresses and commands. */
    String id();

    /** The question in the grower's words. */
    String asks();

    /** What it is about, in one line for the list of questions. */
    String about();

    /** The crop it is asked of, as answered so far. */
    Crop crop(Answers answers);

    /** The boxes: the first eight are seen at once, any more open on request. */
    List<Box> boxes();

    /** The season made of the answers and of typical values. */
    AskedSeason season(Answers answers, LocalDate asOf);

    /** Reads what was typed. */
    default Answers read(Map<String, String> typed, LocalDate asOf) {
        return Answers.read(boxes(), typed, Draft.year(asOf));
    }

    /** What stands in a box that is left empty, as it is shown there; empty where nothing does. */
    Map<String, String> typical(Answers answers, LocalDate asOf);

    /** The boxes whose value, where they are left empty, is the book's own and not typical. */
    default Set<String> own(Answers answers) {
        return Set.of();
    }

    /** The same question where a book's season has assumptions for whole crops, which come before what is typical. */
    default Question knowing(List<AssumptionLine> assumptions) {
        List<AssumptionLine> own = assumptions.stream()
                .filter(line -> line.crop() != null && !TypicalValue.marked(line.source()))
                .toList();
        return own.isEmpty() ? this : new KnowingQuestion(this, own);
    }

    /** What might be told in a box that is left empty, with the chance of each. */
    List<Likely> likely(Box box, Answers answers, LocalDate asOf);

    /** One answer that might be given, and its chance. */
    record Likely(String typed, double chance) {}
}
