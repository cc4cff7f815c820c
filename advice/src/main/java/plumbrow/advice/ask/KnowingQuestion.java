package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Crop;

/** A question in a book whose season has assumptions for whole crops: these come before what is typical. */
record KnowingQuestion(Question question, List<AssumptionLine> own) implements Question {
    private static final Map<String, AssumptionQuantity> BOXES =
            Map.of("price", AssumptionQuantity.PRICE, "yield", AssumptionQuantity.YIELD);

    KnowingQuestion {
        own = List.copyOf(own);
    }

    @Override
    public String id() {
        return question.id();
    }

    @Override
    public String asks() {
        return question.asks();
    }

    @Override
    public String about() {
        return question.about();
    }

    @Override
    public Crop crop(Answers answers) {
        return question.crop(answers);
    }

    @Override
    public List<Box> boxes() {
        return question.boxes();
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        return question.season(answers, asOf);
    }

    @Override
    public Answers read(Map<String, String> typed, LocalDate asOf) {
        return question.read(typed, asOf).knowing(own);
    }

    @Override
    public Map<String, String> typical(Answers answers, LocalDate asOf) {
        Map<String, String> shown = new LinkedHashMap<>(question.typical(answers, asOf));
        BOXES.forEach((box, quantity) -> answers.own(crop(answers), quantity)
                .ifPresent(line -> shown.computeIfPresent(
                        box,
                        (same, typical) -> Draft.shown(
                                Math.round(Chances.of(line.distribution()).mean() * 100) / 100.0))));
        return shown;
    }

    @Override
    public Set<String> own(Answers answers) {
        Set<String> boxes = new LinkedHashSet<>();
        BOXES.forEach((box, quantity) -> answers.own(crop(answers), quantity).ifPresent(line -> boxes.add(box)));
        return boxes;
    }

    /** What the book says of price and yield is not asked again. */
    @Override
    public List<Likely> likely(Box box, Answers answers, LocalDate asOf) {
        return own(answers).contains(box.id()) ? List.of() : question.likely(box, answers, asOf);
    }
}
