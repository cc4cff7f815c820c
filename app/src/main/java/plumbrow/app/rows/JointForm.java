package plumbrow.app.rows;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/**
 * One thing that is entered at once though it stands in several tables: what several of its rows have in common is typed once.
 *
 * @param id its name in an address
 * @param title what is entered
 * @param parts its rows
 */
public record JointForm(String id, String title, List<Part> parts) {
    public JointForm {
        parts = List.copyOf(parts);
    }

    /** What is kept, as the end of "Keep …": "this seed". */
    public String keep() {
        return title.replaceFirst("^An? ", "this ").replaceFirst("^What it brings$", "these numbers");
    }

    /**
     * A cell that is asked for. Words that are empty are those of the column.
     *
     * @param needed whether it must be filled in here, though the column may be blank
     * @param label what it is called here
     * @param unit its unit here
     * @param hint what belongs there
     */
    public record Asked(Column<?> column, boolean needed, String label, String unit, String hint) {}

    /**
     * One row of it.
     *
     * @param prefix sets its boxes apart from those of other rows; ends in a point
     * @param sheet its table
     * @param asked the cells that are asked for
     * @param fixed cells that stand fast
     * @param same cells that are typed in another part, by the name of their box there
     * @param always whether the row is made even where nothing of it was typed
     * @param finish the last touch to the row's cells
     */
    public record Part(
            String prefix,
            Sheet<?> sheet,
            List<Asked> asked,
            Map<String, String> fixed,
            Map<String, String> same,
            boolean always,
            UnaryOperator<Map<String, String>> finish) {}

    /**
     * A part of the table of that name, with its row made in any case.
     *
     * @param cells the cells asked for, as "key", "key=label" or "key=label|unit|hint"; a star behind the key marks one that
     *     must be filled in here
     */
    public static Part part(String prefix, String table, String... cells) {
        Sheet<?> sheet = Sheets.named(table).orElseThrow();
        List<Asked> asked = new ArrayList<>();
        for (String cell : cells) {
            String[] keyAndWords = cell.split("=", 2);
            String key = keyAndWords[0].replace("*", "");
            String[] words = (keyAndWords.length > 1 ? keyAndWords[1] : "").split("\\|", -1);
            Column<?> column = column(sheet, key);
            asked.add(new Asked(
                    column,
                    column.required() || keyAndWords[0].endsWith("*"),
                    words[0],
                    words.length > 1 ? words[1] : "",
                    words.length > 2 ? words[2] : ""));
        }
        return new Part(prefix, sheet, asked, Map.of(), Map.of(), true, row -> row);
    }

    public static Part fixed(Part part, Map<String, String> cells) {
        return new Part(part.prefix, part.sheet, part.asked, cells, part.same, part.always, part.finish);
    }

    public static Part same(Part part, Map<String, String> cells) {
        return new Part(part.prefix, part.sheet, part.asked, part.fixed, cells, part.always, part.finish);
    }

    /** Its row is made only where something of it was typed. */
    public static Part maybe(Part part) {
        List<Asked> optional = part.asked.stream()
                .map(one -> new Asked(one.column(), false, one.label(), one.unit(), one.hint()))
                .toList();
        return new Part(part.prefix, part.sheet, optional, part.fixed, part.same, false, part.finish);
    }

    public static Part finished(Part part, UnaryOperator<Map<String, String>> finish) {
        return new Part(part.prefix, part.sheet, part.asked, part.fixed, part.same, part.always, finish);
    }

    private static Column<?> column(Sheet<?> sheet, String key) {
        return sheet.columns().stream()
                .filter(column -> column.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no column " + key + " in " + sheet.name()));
    }

    /** The rows that come of what was typed, and the part of each. */
    public Map<Integer, RowChange> rows(Map<String, String> typed) {
        Map<Integer, RowChange> rows = new LinkedHashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            Map<String, String> row = new LinkedHashMap<>();
            boolean said = part.always;
            for (Asked asked : part.asked) {
                String text = text(typed, part.prefix + asked.column().key());
                if (!text.isEmpty()) {
                    row.put(asked.column().key(), text);
                    said = true;
                }
            }
            if (said) {
                row.putAll(part.fixed);
                part.same.forEach((key, name) -> {
                    String text = text(typed, name);
                    if (!text.isEmpty() && !row.containsKey(key)) {
                        row.put(key, text);
                    }
                });
                rows.put(i, RowChange.add(part.sheet.name(), part.finish.apply(row)));
            }
        }
        return rows;
    }

    /** The name of the box in which a cell of a part is typed; empty where it is in none. */
    public Optional<String> box(int part, String key) {
        Part at = parts.get(part);
        boolean here = at.asked.stream().anyMatch(asked -> asked.column().key().equals(key));
        return here ? Optional.of(at.prefix + key) : Optional.ofNullable(at.same.get(key));
    }

    private static String text(Map<String, String> typed, String name) {
        return typed.getOrDefault(name, "").replace("\r\n", "\n").strip();
    }
}
