package plumbrow.documents.confirm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import plumbrow.advice.field.CropName;
import plumbrow.documents.label.grammar.CropList;

/**
 * Which row of a product's label is meant. It stays the same however often the label is read.
 *
 * @param key the properties by which it is told from the others, as text; those without a value are left out
 * @param nth 1, or which one of several rows with the same key, in the order of the label
 */
public record RowName(ShelfTable table, Map<String, String> key, int nth) {
    private static final String NEXT_CROP = "next_crop";

    public RowName {
        key = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(key));
    }

    /** A line for each part of the key: what a book keeps. */
    public String keyText() {
        StringJoiner lines = new StringJoiner("\n");
        key.forEach((property, text) -> lines.add(property + "=" + text));
        return lines.toString();
    }

    /**
     * The name back from its parts.
     *
     * @throws IllegalArgumentException if the text is no key
     */
    public static RowName of(ShelfTable table, String keyText, int nth) {
        Map<String, String> key = new LinkedHashMap<>();
        for (String line : keyText.lines().toList()) {
            int sign = line.indexOf('=');
            String part = ShelfTable.keyOf(line.substring(0, Math.max(sign, 0)));
            if (!table.key().contains(part)) {
                throw new IllegalArgumentException("'" + line + "' is no part of a row of " + table.word());
            }
            key.put(part, line.substring(sign + 1));
        }
        return new RowName(table, key, nth);
    }

    static RowName of(ShelfTable table, Record row, int nth) {
        Map<String, String> key = new LinkedHashMap<>();
        for (String property : table.key()) {
            String text = table.text(row, property);
            if (!text.isEmpty()) {
                key.put(property, text.replaceAll("\\s+", " "));
            }
        }
        return new RowName(table, key, nth);
    }

    /** Whether both name one row: the crop of a plant-back row may be written in the plural or by another of its names. */
    boolean sameAs(RowName other) {
        return table == other.table
                && key.keySet().equals(other.key.keySet())
                && key.entrySet().stream().allMatch(part -> {
                    String text = other.key.getOrDefault(part.getKey(), "");
                    return part.getKey().equals(NEXT_CROP)
                            ? CropName.same(part.getValue(), text)
                            : part.getValue().equals(text);
                });
    }

    /** The same without a part of the key. */
    RowName without(String property) {
        Map<String, String> rest = new LinkedHashMap<>(key);
        rest.remove(property);
        return new RowName(table, rest, nth);
    }

    /** One row for each crop where a plant-back row names several; else the row itself. */
    List<RowName> byCrop() {
        String printed = key.getOrDefault(NEXT_CROP, "");
        List<String> crops = table == ShelfTable.PLANT_BACKS ? CropList.of(printed) : List.of();
        return crops.size() < 2
                ? List.of(this)
                : crops.stream()
                        .map(crop -> {
                            Map<String, String> own = new LinkedHashMap<>(key);
                            own.put(NEXT_CROP, crop);
                            return new RowName(table, own, nth);
                        })
                        .toList();
    }

    /** A name for links and commands: "setbacks.stream" or "plant-backs.alfalfa.2". */
    public String id() {
        StringBuilder id = new StringBuilder(table.word().replace('_', '-'));
        key.forEach((property, text) -> {
            if (!text.equals("no") && !text.equals("none")) {
                String plain = text.toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\d.]+", "-")
                        .replaceAll("^-+|-+$", "");
                id.append('.').append(plain.isEmpty() ? property : plain);
            }
        });
        return nth == 1 ? id.toString() : id.append('.').append(nth).toString();
    }

    /** In a person's words: "corn", "stream, downwind only", "soybean, pH from 7.5"; empty where a product has one row. */
    public String words() {
        StringJoiner words = new StringJoiner(", ");
        for (Map.Entry<String, String> part : key.entrySet()) {
            String text = part.getValue();
            switch (part.getKey()) {
                case "downwind_only" -> words.add(text.equals("yes") ? "downwind only" : "");
                case "forbidden" -> words.add(text.equals("yes") ? "forbidden" : "");
                case "condition" -> words.add(text.equals("none") ? "" : text);
                case "per" -> words.add("in one " + text);
                case "organic_matter_from_pct" -> words.add("organic matter from " + text + " %");
                case "organic_matter_below_pct" -> words.add("organic matter below " + text + " %");
                case "erodible" ->
                    words.add(text.equals("yes") ? "highly erodible land" : "other than highly erodible land");
                case "residue_from_pct" -> words.add("residue from " + text + " %");
                case "residue_below_pct" -> words.add("residue below " + text + " %");
                case "earliest_stage" -> words.add("from stage " + text);
                case "latest_stage" -> words.add("up to stage " + text);
                case "ph_from" -> words.add("pH from " + text);
                case "ph_below" -> words.add("pH below " + text);
                default -> words.add(text);
            }
        }
        String said = String.join(
                ", ",
                List.of(words.toString().split(", ", -1)).stream()
                        .filter(word -> !word.isEmpty())
                        .toList());
        return nth == 1 ? said : said + " (" + nth + ")";
    }
}
