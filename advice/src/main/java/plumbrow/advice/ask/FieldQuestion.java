package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.field.Crop;
import plumbrow.science.reference.TypicalValues;

/** What all questions have in common: who asks, the boxes of place and money, and what is typical in a box. */
abstract class FieldQuestion implements Question {
    static final Box STATE = Box.choice("state", "State", "for its typical values", UsStates.options());
    static final Box PRICE =
            Box.number("price", "Price at harvest", "$/bu", "what is bid for harvest, basis taken off", 0.5, 40);
    static final Box YIELD =
            Box.number("yield", "Average yield of the field", "bu/ac", "a good stand, pests under control", 5, 400);
    static final Box ACRES = Box.number("acres", "Acres", "ac", "only for dollars of the whole field", 0.1, 20_000);

    private final String id;
    private final String asks;
    private final String about;
    private final List<Box> boxes;

    FieldQuestion(String id, String asks, String about, Box... boxes) {
        this.id = id;
        this.asks = asks;
        this.about = about;
        this.boxes = List.of(boxes);
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final String asks() {
        return asks;
    }

    @Override
    public final String about() {
        return about;
    }

    @Override
    public final List<Box> boxes() {
        return boxes;
    }

    /** The typical quantity that stands in an empty box, by the box. */
    abstract Map<String, String> quantities(Answers answers);

    @Override
    public final Map<String, String> typical(Answers answers, LocalDate asOf) {
        Crop crop = crop(answers);
        Map<String, String> quantities = new LinkedHashMap<>();
        quantities.put("price", crop == Crop.WHEAT ? "planning price" : "projected price");
        quantities.put("yield", crop == Crop.WHEAT ? "state mean yield" : "planning yield level, crop 2026");
        quantities.putAll(quantities(answers));
        Map<String, String> shown = new LinkedHashMap<>();
        quantities.forEach((box, quantity) -> TypicalValues.find(crop.word(), answers.choice("state"), quantity)
                .ifPresent(found -> shown.put(box, Draft.shown(found.likely()))));
        shown.put("acres", Draft.shown(Draft.ACRES));
        days(asOf).forEach(shown::put);
        shown.keySet().removeIf(box -> boxes.stream().noneMatch(one -> one.id().equals(box)));
        return shown;
    }

    /** The days that stand in empty boxes. */
    Map<String, String> days(LocalDate asOf) {
        return Map.of();
    }

    static Crop cropOf(Answers answers, Crop usual) {
        return switch (answers.choice("crop")) {
            case "corn" -> Crop.CORN;
            case "soybean" -> Crop.SOYBEAN;
            case "wheat" -> Crop.WHEAT;
            default -> usual;
        };
    }
}
