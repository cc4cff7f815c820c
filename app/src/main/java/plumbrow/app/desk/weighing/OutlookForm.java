package plumbrow.app.desk.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.outlook.Chances;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.weighing.UncertainInput;
import plumbrow.app.desk.shown.Shown;

/** The outlook of a field in boxes: what the season says, what was typed instead, and what can't be read. */
public record OutlookForm(List<Line> lines) {

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
     * @param law the law typed, where it differs from the season's and can be read
     */
    public record Line(
            int number,
            UncertainInput input,
            List<Box> boxes,
            @Nullable Law law) {
        public boolean changed() {
            return law != null;
        }

        /** The unit beside the label; a chance is asked for in per cent and needs none. */
        public String unit() {
            return input.law() instanceof Law.Chance ? "" : input.unit();
        }

        public boolean faulty() {
            return boxes.stream().anyMatch(box -> !box.fault().isEmpty());
        }
    }

    /** The form as the season fills it. */
    public static OutlookForm of(List<UncertainInput> inputs) {
        return read(inputs, Map.of());
    }

    /** The form as it was typed; a box that was not sent holds what the season says. */
    public static OutlookForm read(List<UncertainInput> inputs, Map<String, String> typed) {
        List<Line> lines = new ArrayList<>();
        for (UncertainInput input : inputs) {
            lines.add(line(lines.size(), input, typed));
        }
        return new OutlookForm(List.copyOf(lines));
    }

    /** What the season leaves open. */
    public List<Line> open() {
        return lines.stream()
                .filter(line -> !Chances.settled(line.input().law()))
                .toList();
    }

    /** What the season takes as certain; it can be doubted all the same. */
    public List<Line> settled() {
        return lines.stream()
                .filter(line -> Chances.settled(line.input().law()))
                .toList();
    }

    /** The laws that differ from the season's, by input. */
    public Map<String, Law> changes() {
        Map<String, Law> laws = new LinkedHashMap<>();
        for (Line line : lines) {
            if (line.law() != null) {
                laws.put(line.input().id(), line.law());
            }
        }
        return laws;
    }

    public boolean changed() {
        return !changes().isEmpty();
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
        StringBuilder ids = new StringBuilder("#brief,#carried");
        for (Line line : lines) {
            ids.append(",#m").append(line.number()).append(",#e").append(line.number());
        }
        return ids.toString();
    }

    private static Line line(int number, UncertainInput input, Map<String, String> typed) {
        Shape shape = Shape.of(input.law());
        List<String> season = shape.texts(input.law());
        List<String> texts = new ArrayList<>();
        for (int part = 0; part < season.size(); part++) {
            texts.add(typed.getOrDefault(name(input, part), season.get(part)).strip());
        }
        if (texts.equals(season)) {
            return new Line(number, input, boxes(number, input, shape, texts, null), null);
        }
        try {
            Law law = drawable(shape.law(input, texts));
            return new Line(
                    number, input, boxes(number, input, shape, texts, null), law.equals(input.law()) ? null : law);
        } catch (BoxFault fault) {
            return new Line(number, input, boxes(number, input, shape, texts, fault), null);
        }
    }

    /** The law, if the engine can draw from it; it says best itself what is wrong. */
    private static Law drawable(Law law) {
        try {
            Objects.requireNonNull(Chances.of(law));
            return law;
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
