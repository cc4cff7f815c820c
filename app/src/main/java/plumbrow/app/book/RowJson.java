package plumbrow.app.book;

import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** A row of texts by column as a JSON object on one line, and back. */
public final class RowJson {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private RowJson() {}

    public static String of(Map<String, String> row) {
        return JSON.writeValueAsString(row);
    }

    /**
     * The row of a text that {@link #of} made.
     *
     * @throws IllegalArgumentException where it is none
     */
    public static Map<String, String> read(String json) {
        try {
            Map<String, String> row = new LinkedHashMap<>();
            JSON.readTree(json)
                    .properties()
                    .forEach(cell -> row.put(cell.getKey(), cell.getValue().asString()));
            return row;
        } catch (JacksonException | IllegalStateException wrong) {
            throw new IllegalArgumentException("no row of texts", wrong);
        }
    }
}
