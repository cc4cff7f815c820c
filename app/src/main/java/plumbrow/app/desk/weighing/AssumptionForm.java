package plumbrow.app.desk.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.weighing.KeptAssumptions;
import plumbrow.advice.weighing.UncertainInput;
import plumbrow.app.desk.shown.Shown;

/** The assumptions of a field in boxes: what the season says, what was typed instead, and what can't be read. */
public record AssumptionForm(List<Line> lines) {

    /**
     * One box.
     *
     * @param name under which the form sends it
     * @param id under which the page finds it
     * @param fault what is wrong with it; empty where it can be read
     */
    public record Box(String name, String id, String label, String typed, String fault) {}

    /**
     * One uncertain input.
     *
     * @param distribution the distribution typed, where it differs from the season's and can be read
     */
    public record Line(
            int number,
            UncertainInput input,
            List<Box> boxes,
            @Nullable Distribution distribution) {
        public boolean changed() {
            return distribution != null;
        }

        /** The unit beside the label; a chance is asked for in per cent and needs none. */
        public String unit() {
            return input.distribution() instanceof Distribution.Chance ? "" : input.unit();
        }

        public boolean faulty() {
            return boxes.stream().anyMatch(box -> !box.fault().isEmpty());
        }
    }

    /** The form as the season fills it. */
    public static AssumptionForm of(List<UncertainInput> inputs) {
        return read(inputs, Map.of());
    }

    /** The form as it was typed; a box that was not sent holds what the season says. */
    public static AssumptionForm read(List<UncertainInput> inputs, Map<String, String> typed) {
        List<Line> lines = new ArrayList<>();
        for (UncertainInput input : inputs) {
            lines.add(line(lines.size(), input, typed));
        }
        return new AssumptionForm(List.copyOf(lines));
    }

    /** What the season leaves open. */
    public List<Line> open() {
        return lines.stream()
                .filter(line -> !Chances.settled(line.input().distribution()))
                .toList();
    }

    /** What the season takes as certain; it can be doubted all the same. */
    public List<Line> settled() {
        return lines.stream()
                .filter(line -> Chances.settled(line.input().distribution()))
                .toList();
    }

    /** The distributions that differ from the season's, by input. */
    public Map<String, Distribution> changes() {
        Map<String, Distribution> distributions = new LinkedHashMap<>();
        for (Line line : lines) {
            if (line.distribution() != null) {
                distributions.put(line.input().id(), line.distribution());
            }
        }
        return distributions;
    }

    public boolean changed() {
        return !changes().isEmpty();
    }

    /** What is changed and can be kept for this field, in words. */
    public List<String> keepable() {
        return labels(true);
    }

    /** What is changed and can't. */
    public List<String> left() {
        return labels(false);
    }

    private List<String> labels(boolean keepable) {
        Map<String, Distribution> changes = changes();
        return lines.stream()
                .map(Line::input)
                .filter(input -> {
                    Distribution to = changes.get(input.id());
                    return to != null && KeptAssumptions.keepable(input.id(), to) == keepable;
                })
                .map(UncertainInput::label)
                .toList();
    }

    /** The boxes that can't be read. */
    public List<Box> faults() {
        return lines.stream()
                .flatMap(line -> line.boxes().stream())
                .filter(box -> !box.fault().isEmpty())
                .toList();
    }

    /** The boxes that hold something else than the season says, to be carried along by another form. */
    public Map<String, String> carried() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Line line : lines) {
            if (line.changed() || line.faulty()) {
                line.boxes().forEach(box -> texts.put(box.name(), box.typed()));
            }
        }
        return texts;
    }

    /** What the page must renew of this form when the answer changes: marks and faults, by id. */
    public String renewed() {
        StringBuilder ids = new StringBuilder("#brief,#carried,#keeping");
        for (Line line : lines) {
            ids.append(",#m").append(line.number()).append(",#e").append(line.number());
        }
        return ids.toString();
    }

    private static Line line(int number, UncertainInput input, Map<String, String> typed) {
        Shape shape = Shape.of(input.distribution());
        List<String> season = shape.texts(input.distribution());
        List<String> texts = new ArrayList<>();
        for (int part = 0; part < season.size(); part++) {
            texts.add(typed.getOrDefault(name(input, part), season.get(part)).strip());
        }
        if (texts.equals(season)) {
            return new Line(number, input, boxes(number, input, shape, texts, null), null);
        }
        try {
            Distribution distribution = drawable(shape.distribution(input, texts));
            return new Line(
                    number,
                    input,
                    boxes(number, input, shape, texts, null),
                    distribution.equals(input.distribution()) ? null : distribution);
        } catch (BoxFault fault) {
            return new Line(number, input, boxes(number, input, shape, texts, fault), null);
        }
    }

    /** The distribution, if the engine can draw from it; it says best itself what is wrong. */
    private static Distribution drawable(Distribution distribution) {
        try {
            Objects.requireNonNull(Chances.of(distribution));
            return distribution;
        } catch (IllegalArgumentException fault) {
            throw new BoxFault(0, Shown.text(fault.getMessage()));
        }
    }

    private static List<Box> boxes(
            int number, UncertainInput input, Shape shape, List<String> texts, @Nullable BoxFault fault) {
        List<Box> boxes = new ArrayList<>();
        for (int part = 0; part < texts.size(); part++) {
            String label = shape.labels().get(part);
            boxes.add(new Box(
                    name(input, part),
                    "i" + number + "-" + part,
                    label,
                    texts.get(part),
                    fault != null && fault.box() == part
                            ? input.label() + ", " + label + ": " + fault.says() + "."
                            : ""));
        }
        return List.copyOf(boxes);
    }

    private static String name(UncertainInput input, int part) {
        return "box " + part + " " + input.id();
    }
}
