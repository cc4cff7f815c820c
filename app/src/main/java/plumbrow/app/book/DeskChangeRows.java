package plumbrow.app.book;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/**
 * What was changed in the book since a season was last brought in from outside: a workbook that lacks it does not go over it
 * unasked. Works inside the transaction of whoever calls.
 */
final class DeskChangeRows {
    /** Stands for what the season that was brought in did not have. */
    private static final String NOTHING = "";

    private final JdbcClient client;

    DeskChangeRows(JdbcClient client) {
        this.client = client;
    }

    /** A part of a season that is changed by itself: a course with its passes, an outline, or a thing around a field. */
    private record Part(String kind, String field, String name) {
        String words() {
            return switch (kind) {
                case "course" -> "the course '" + name + "' of " + field;
                case "outline" -> "the outline of " + field;
                default -> "the " + kind + " '" + name + "' at " + field;
            };
        }
    }

    /** Notes what differs between a season and what it was changed to. What is put back as it came is no change. */
    void note(Season before, Season after) {
        Map<Part, String> old = parts(before);
        Map<Part, String> now = parts(after);
        TreeSet<Part> all = new TreeSet<>((one, other) -> one.toString().compareTo(other.toString()));
        all.addAll(old.keySet());
        all.addAll(now.keySet());
        for (Part part : all) {
            String was = old.getOrDefault(part, NOTHING);
            String is = now.getOrDefault(part, NOTHING);
            if (!was.equals(is)) {
                Optional<String> brought = brought(after.year(), part);
                if (brought.isEmpty()) {
                    client.sql("INSERT INTO desk_change (season, kind, field, name, brought) VALUES (?, ?, ?, ?, ?)")
                            .params(after.year(), part.kind(), part.field(), part.name(), sum(was))
                            .update();
                } else if (brought.get().equals(sum(is))) {
                    client.sql("DELETE FROM desk_change WHERE season = ? AND kind = ? AND field = ? AND name = ?")
                            .params(after.year(), part.kind(), part.field(), part.name())
                            .update();
                }
            }
        }
    }

    private Optional<String> brought(int year, Part part) {
        return client.sql("SELECT brought FROM desk_change WHERE season = ? AND kind = ? AND field = ? AND name = ?")
                .params(year, part.kind(), part.field(), part.name())
                .query(String.class)
                .optional();
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
            parts.put(new Part("outline", field.name(), NOTHING), String.valueOf(field.boundary()));
        }
        Map<Part, List<String>> rows = new LinkedHashMap<>();
        for (Course course : season.courses()) {
            add(rows, course(course.field(), course.name()), course);
        }
        season.work().sprayPlans().forEach(plan -> add(rows, course(plan.field(), plan.course()), plan));
        season.pests().weedBook().tillage().forEach(work -> add(rows, course(work.field(), work.course()), work));
        for (Feature feature : season.ground().features()) {
            add(rows, new Part(feature.kind().word(), feature.field(), feature.name()), feature);
        }
        rows.forEach((part, list) -> parts.put(part, String.join("\n", list)));
        return parts;
    }

    private static Part course(String field, String name) {
        return new Part("course", field, name);
    }

    private static void add(Map<Part, List<String>> rows, Part part, Object row) {
        rows.computeIfAbsent(part, none -> new ArrayList<>()).add(row.toString());
    }

    private static String sum(String rows) {
        return rows.equals(NOTHING) ? NOTHING : PaperRows.sha256(rows.getBytes(StandardCharsets.UTF_8));
    }
}
