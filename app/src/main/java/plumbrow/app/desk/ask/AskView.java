package plumbrow.app.desk.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.ask.AskAnswer;
import plumbrow.advice.ask.Box;
import plumbrow.advice.ask.Question;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.NextInput;
import plumbrow.app.desk.shown.Shown;

/**
 * What the page of a question shows.
 *
 * @param season the season that the boxes make
 * @param typical what stands in an empty box
 * @param own the boxes in which that is the book's own and not typical
 * @param rough whether fewer draws were taken because somebody is typing
 * @param keep what was typed of the field's names, by box; empty where nobody has
 * @param keepFaults what keeps it from being kept, by box
 */
public record AskView(
        Question question,
        AskAnswer answer,
        Season season,
        Map<String, String> typical,
        Set<String> own,
        boolean rough,
        Map<String, String> keep,
        Map<String, String> keepFaults) {
    /** The boxes that are seen at once. */
    public List<Box> seen() {
        List<Box> boxes = question.boxes();
        return boxes.subList(0, Math.min(Question.MOST_SEEN, boxes.size()));
    }

    /** Those that open on request. */
    public List<Box> more() {
        List<Box> boxes = question.boxes();
        return boxes.subList(Math.min(Question.MOST_SEEN, boxes.size()), boxes.size());
    }

    /** Whether any of those was answered or is faulty. */
    public boolean moreOpen() {
        return more().stream().anyMatch(box -> answer.typed().containsKey(box.id()));
    }

    /** The scale of the programs' gains. */
    public GainStrips strips() {
        return GainStrips.of(answer.advice());
    }

    public String typed(Box box) {
        return answer.typed().getOrDefault(box.id(), "");
    }

    /** What is chosen of a box, as its word. */
    public boolean chosen(Box box, Box.Option option) {
        String typed = typed(box);
        return option.word().equalsIgnoreCase(typed) || option.words().equalsIgnoreCase(typed);
    }

    public String fault(Box box) {
        return answer.faults().getOrDefault(box.id(), "");
    }

    /** The id of a box in the page. */
    public static String id(String box) {
        return "b-" + box;
    }

    /** Names of what is renewed in the form while the answer follows in place. */
    public String renewed() {
        List<String> ids = new ArrayList<>();
        question.boxes().forEach(box -> {
            ids.add("#n-" + box.id());
            ids.add("#e-" + box.id());
        });
        ids.add("#brief");
        ids.add("#keepwith");
        return String.join(",", ids);
    }

    /** The box that answers what could be told next; null where there is none here. */
    public @Nullable Box box(NextInput next) {
        String id = answer.boxes().get(next.input());
        return question.boxes().stream()
                .filter(box -> box.id().equals(id))
                .findFirst()
                .orElse(null);
    }

    /** The address of this question with one more answer. */
    public String with(Box box, String value) {
        Map<String, String> all = new LinkedHashMap<>(answer.typed());
        all.put(box.id(), value);
        return "/ask/" + question.id() + "?"
                + all.entrySet().stream()
                        .map(one -> one.getKey() + "=" + Shown.part(one.getValue()))
                        .collect(Collectors.joining("&"));
    }

    /** What is typed in the boxes of the field's names. */
    public String kept(String box) {
        return keep.getOrDefault(box, "");
    }

    public String keptFault(String box) {
        return keepFaults.getOrDefault(box, "");
    }
}
