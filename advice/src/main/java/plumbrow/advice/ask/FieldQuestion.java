package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Crop;
import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Range;
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

    /** Normal scores, and chances, by which a mean over a normal is taken from three points. Source: Gauss and Hermite. */
    private static final double[] SCORES = {-Math.sqrt(3), 0, Math.sqrt(3)};

    private static final double[] CHANCES = {1 / 6.0, 2 / 3.0, 1 / 6.0};
    private static final int DAYS_APART = 7;

    /**
     * Choices each as likely as the next; numbers by the spread of what is typical, from three points; days a week either way. Price and
     * yield are spread as fields and bids differ, not as years do.
     */
    @Override
    public final List<Likely> likely(Box box, Answers answers, LocalDate asOf) {
        if (!box.options().isEmpty()) {
            double chance = 1.0 / box.options().size();
            return box.options().stream()
                    .map(option -> new Likely(option.word(), chance))
                    .toList();
        }
        List<Likely> all = new ArrayList<>();
        for (int i = 0; i < SCORES.length; i++) {
            String typed = box.day() ? dayAt(box, i - 1, asOf) : numberAt(box, answers, asOf, SCORES[i]);
            if (!typed.isEmpty()) {
                all.add(new Likely(typed, CHANCES[i]));
            }
        }
        return all;
    }

    private String dayAt(Box box, int weeks, LocalDate asOf) {
        String usual = days(asOf).getOrDefault(box.id(), "");
        int year = Draft.year(asOf);
        return usual.isEmpty()
                ? ""
                : Answers.day(usual, year)
                        .map(day -> day.plusDays((long) weeks * DAYS_APART).toString())
                        .orElse("");
    }

    private String numberAt(Box box, Answers answers, LocalDate asOf, double score) {
        String id = box.id();
        double value;
        if (id.equals("price") || id.equals("yield")) {
            double middle = Double.parseDouble(typical(answers, asOf).getOrDefault(id, "0"));
            value = middle * Math.exp((id.equals("price") ? Draft.PRICE_SD : Draft.LEVEL_CV) * score);
        } else {
            String quantity = quantities(answers).get(id);
            if (quantity == null) {
                return "";
            }
            value = TypicalValues.find(crop(answers).word(), answers.choice("state"), quantity)
                    .map(found -> Chances.of(Draft.spread(found)).quantile(StandardNormal.below(score)))
                    .orElse(Double.NaN);
        }
        Range range = box.range();
        return Double.isNaN(value) || range == null
                ? ""
                : Double.toString(Math.max(range.low(), Math.min(range.high(), value)));
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
