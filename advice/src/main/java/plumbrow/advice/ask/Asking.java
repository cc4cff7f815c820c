package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.Where;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.NextInput;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.OwnSeason;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.science.reference.TypicalValue;

/** Answers a question: the season its boxes make goes through the same checks and the same weighing as any other. */
public final class Asking {
    /** Boxes that say where or what, which are answered first of all. */
    private static final Set<String> ONLY_WHERE = Set.of("state", "crop", "pest", "weed", "acres");

    /** Before the id of a box in the id of what it tells. */
    private static final String BOX = "box: ";

    private static final int FEW_DRAWS = 500;
    private static final DrawSource DRAWN = new DrawSource(FEW_DRAWS, WeighingOptions.DEFAULT.seed());

    private Asking() {}

    /** The harvest that is decided about on a day. */
    public static int year(LocalDate asOf) {
        return Draft.year(asOf);
    }

    /**
     * The answer to a question.
     *
     * @param typed what was typed, by box; anything else is left alone
     * @param asOf the day it is asked
     * @throws SeasonGapException where what was typed can't be weighed, in a sentence
     */
    public static AskAnswer answer(Question question, Map<String, String> typed, LocalDate asOf, int draws) {
        Answers answers = question.read(typed, asOf);
        AskedSeason asked = question.season(answers, asOf);
        OwnSeason own = OwnSeasons.of(asked.season()).of(asked.field());
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(draws).asIfAllLookedUp();
        DrawSource source = new DrawSource(draws, options.seed());
        FieldAdvice advice = Adviser.adviseField(own, options, source);
        Map<String, String> boxes = boxes(question, answers, asked);
        NextInputs next = next(question, answers, asOf, asked, own, options, source);
        return new AskAnswer(
                question.id(),
                question.asks(),
                answers.typed(),
                answers.faults(),
                byTheMoney(advice.sentence()),
                notLookedUp(advice),
                onTypical(answers, asked),
                next,
                asked.typicals().stream().map(Asking::typical).toList(),
                boxes,
                advice);
    }

    /**
     * What to tell next by itself, which takes less than the answer.
     *
     * @throws SeasonGapException as {@link #answer} does
     */
    public static NextInputs next(Question question, Map<String, String> typed, LocalDate asOf, int draws) {
        Answers answers = question.read(typed, asOf);
        AskedSeason asked = question.season(answers, asOf);
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(draws).asIfAllLookedUp();
        return next(
                question,
                answers,
                asOf,
                asked,
                OwnSeasons.of(asked.season()).of(asked.field()),
                options,
                new DrawSource(draws, options.seed()));
    }

    /** The mean margins of the programs that are not barred [$/ac], by name, as if what nobody has looked up came out clear. */
    public static Map<String, Double> means(Question question, Map<String, String> typed, LocalDate asOf) {
        return means(question.season(question.read(typed, asOf), asOf));
    }

    /** The box that tells an input, by the input. */
    public static Map<String, String> boxes(Question question, Map<String, String> typed, LocalDate asOf) {
        Answers answers = question.read(typed, asOf);
        return boxes(question, answers, question.season(answers, asOf));
    }

    private static Map<String, String> boxes(Question question, Answers answers, AskedSeason asked) {
        Map<String, String> boxes = new LinkedHashMap<>(asked.boxes());
        open(question, answers).forEach(box -> boxes.put(BOX + box.id(), box.id()));
        return boxes;
    }

    /** Boxes that nobody has filled yet, other than those of place and pest, and of what changes no order. */
    private static List<Box> open(Question question, Answers answers) {
        return question.boxes().stream()
                .filter(box -> !answers.told(box.id()) && !ONLY_WHERE.contains(box.id()))
                .toList();
    }

    private static NextInputs next(
            Question question,
            Answers answers,
            LocalDate asOf,
            AskedSeason asked,
            OwnSeason own,
            WeighingOptions options,
            DrawSource source) {
        List<NextInput> inputs = new ArrayList<>();
        Set<String> boxes = new LinkedHashSet<>();
        Map<String, Double> now = means(asked);
        for (Box box : open(question, answers)) {
            inputs.add(told(question, answers, asOf, box, now, asked.field().acres()));
            boxes.add(box.id());
        }
        Adviser.next(own, options, source).inputs().stream()
                .filter(one -> !boxes.contains(asked.boxes().getOrDefault(one.input(), "")))
                .forEach(inputs::add);
        return NextInputs.of(inputs);
    }

    /**
     * What filling a box is worth that nobody has filled yet: the season of each answer that might be given is weighed, all on the same
     * draws.
     *
     * <pre>  mean over answers of ( max_c E(m_c | answer) − E(m_now | answer) ), now = the program that leads without it</pre>
     */
    private static NextInput told(
            Question question, Answers answers, LocalDate asOf, Box box, Map<String, Double> now, double acres) {
        String leads = leading(now);
        double sum = 0;
        for (Question.Likely answer : question.likely(box, answers, asOf)) {
            Map<String, String> typed = new LinkedHashMap<>(answers.typed());
            typed.put(box.id(), answer.typed());
            Map<String, Double> means = means(question.season(question.read(typed, asOf), asOf));
            double best = means.values().stream()
                    .mapToDouble(Double::doubleValue)
                    .max()
                    .orElse(0);
            double worst = means.values().stream()
                    .mapToDouble(Double::doubleValue)
                    .min()
                    .orElse(0);
            sum += answer.chance() * (best - means.getOrDefault(leads, worst));
        }
        return NextInput.of(
                BOX + box.id(),
                box.options().size() == 2 ? NextInput.Kind.YES_OR_NO : NextInput.Kind.NUMBER,
                box.label() + (box.label().endsWith("?") ? "" : "?"),
                box.hint().isEmpty() ? "own records" : box.hint(),
                box.findingOutUsd(),
                sum,
                acres,
                List.of());
    }

    private static Map<String, Double> means(AskedSeason asked) {
        return Adviser.means(
                OwnSeasons.of(asked.season()).of(asked.field()), WeighingOptions.DEFAULT.withDraws(FEW_DRAWS), DRAWN);
    }

    private static String leading(Map<String, Double> means) {
        return means.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private static AskAnswer.Typical typical(TypicalValue value) {
        String spread = value.low().isPresent() && value.high().isPresent()
                ? " (" + Draft.shown(value.low().getAsDouble()) + " to "
                        + Draft.shown(value.high().getAsDouble()) + ")"
                : "";
        String unit = value.unit().equals("1") ? "" : " " + value.unit();
        return new AskAnswer.Typical(value.quantity(), Draft.shown(value.likely()) + spread + unit, value.words());
    }

    private static String onTypical(Answers answers, AskedSeason asked) {
        String state = answers.choice("state");
        int told = answers.numbers().size()
                + answers.days().size()
                + answers.choices().size()
                - (state.isEmpty() ? 0 : 1);
        String where =
                state.isEmpty() ? "typical values of no one state" : "typical " + UsStates.name(state) + " values";
        return (told == 0 ? "On " : "On what you’ve told (" + told + ") and ") + where + ", "
                + asked.typicals().size() + " of them: typical, not yours.";
    }

    /** "By the money, stay with …": what nobody has looked up may still forbid it. */
    private static String byTheMoney(String sentence) {
        boolean verb = sentence.startsWith("Take ") || sentence.startsWith("Stay ") || sentence.startsWith("Nothing ");
        return "By the money, " + (verb ? Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1) : sentence);
    }

    /** What nobody has looked up, in one line. */
    private static String notLookedUp(FieldAdvice advice) {
        Set<String> things = new LinkedHashSet<>();
        Set<String> all = new LinkedHashSet<>();
        for (WeighedProgram program : advice.programs()) {
            for (Finding finding : program.findings()) {
                if (finding.standing() == Standing.UNKNOWN) {
                    String thing = LookUp.thing(finding);
                    things.add(
                            switch (Where.of(finding)) {
                                case LABEL -> "label or tag of " + thing;
                                case PLAN -> "how it is sprayed";
                                case FIELD -> "soil and surroundings of the field";
                                case FARM -> "crops and people of the farm";
                            });
                    all.add(thing + finding.clears());
                }
            }
        }
        return all.isEmpty()
                ? ""
                : "Not looked up, so unknown, and nothing here is cleared for use yet: " + String.join(", ", things)
                        + " (" + all.size() + (all.size() == 1 ? " thing)." : " things).");
    }
}
