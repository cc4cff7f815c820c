package plumbrow.app.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * What was changed in the book since a season was last brought in from outside: a workbook that lacks it does not go over it
 * unasked. Works inside the transaction of whoever calls.
 */
final class DeskChangeRows {
    private final JdbcClient client;

    DeskChangeRows(JdbcClient client) {
        this.client = client;
    }

    /** A part of a season that is changed by itself: a program with its passes, an outline, or a thing around a field. */
    private record Part(String kind, String field, String name) {
        String words() {
            return switch (kind) {
                case "program" -> "the program '" + name + "' of " + field;
                case "outline" -> "the outline of " + field;
                default -> "the " + kind + " '" + name + "' at " + field;
            };
        }
    }

    /** Notes what differs between a season and what it was changed to. */
    void note(Season before, Season after) {
        Map<Part, String> old = parts(before);
        Map<Part, String> now = parts(after);
        Set<Part> all = new LinkedHashSet<>(old.keySet());
        all.addAll(now.keySet());
        all.stream()
                .filter(part -> !Objects.equals(old.get(part), now.get(part)))
                .forEach(part -> client.sql(
                                "INSERT INTO desk_change (season, kind, field, name) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING")
                        .params(after.year(), part.kind(), part.field(), part.name())
                        .update());
    }

    /** What was changed in the season held and is otherwise in the one that comes, in words. */
    List<String> lost(Season held, Season coming) {
        List<Part> changed = client.sql(
                        "SELECT kind, field, name FROM desk_change WHERE season = ? ORDER BY field, kind, name")
                .param(held.year())
                .query((cells, number) -> new Part(cells.getString(1), cells.getString(2), cells.getString(3)))
                .list();
        if (changed.isEmpty()) {
            return List.of();
        }
        Map<Part, String> now = parts(held);
        Map<Part, String> then = parts(coming);
        return changed.stream()
                .filter(part -> !Objects.equals(now.get(part), then.get(part)))
                .map(Part::words)
                .toList();
    }

    /** A season that was brought in stands as it came. */
    void forget(int year) {
        client.sql("DELETE FROM desk_change WHERE season = ?").param(year).update();
    }

    private static Map<Part, String> parts(Season season) {
        Map<Part, String> parts = new LinkedHashMap<>();
        for (Field field : season.fields()) {
            parts.put(new Part("outline", field.name(), ""), String.valueOf(field.boundary()));
        }
        Map<Part, List<String>> rows = new LinkedHashMap<>();
        for (Program program : season.programs()) {
            add(rows, program(program.field(), program.name()), program);
        }
        season.work().sprayPlans().forEach(plan -> add(rows, program(plan.field(), plan.program()), plan));
        season.pests().weedBook().tillage().forEach(work -> add(rows, program(work.field(), work.program()), work));
        for (Feature feature : season.ground().features()) {
            add(rows, new Part(feature.kind().word(), feature.field(), feature.name()), feature);
        }
        rows.forEach((part, list) -> parts.put(part, String.join("\n", list)));
        return parts;
    }

    private static Part program(String field, String name) {
        return new Part("program", field, name);
    }

    private static void add(Map<Part, List<String>> rows, Part part, Object row) {
        rows.computeIfAbsent(part, none -> new ArrayList<>()).add(row.toString());
    }
}
