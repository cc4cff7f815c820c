package plumbrow.documents.workbook.rule;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.documents.workbook.form.Near;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.CourseSheet;
import plumbrow.documents.workbook.sheet.PassSheet;

/** A field with courses has exactly one baseline, and each pass belongs to a course of its field. */
final class CoursesOfFields implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        baselines(tables, objections);
        passes(tables, objections);
    }

    private static void baselines(Tables tables, Objections objections) {
        Map<String, Row> baselines = new HashMap<>();
        Set<String> unreadable = new HashSet<>();
        for (Row row : tables.rows(CourseSheet.SHEET)) {
            String field = row.find(CourseSheet.FIELD);
            if (field == null) {
                continue;
            }
            Boolean baseline = row.find(CourseSheet.BASELINE);
            if (baseline == null) {
                unreadable.add(field);
            } else if (baseline) {
                Row other = baselines.putIfAbsent(field, row);
                if (other != null) {
                    objections.at(
                            row,
                            CourseSheet.BASELINE,
                            "one baseline for " + field + "; row " + other.number() + " is one already");
                }
            }
        }
        tables.index(CourseSheet.SHEET, CourseSheet.FIELD).forEach((field, row) -> {
            if (!baselines.containsKey(field) && !unreadable.contains(field)) {
                objections.at(row, CourseSheet.BASELINE, "yes for one course of " + field + ", the baseline");
            }
        });
    }

    private static void passes(Tables tables, Objections objections) {
        Map<String, Set<String>> courses = new HashMap<>();
        for (Row row : tables.rows(CourseSheet.SHEET)) {
            String field = row.find(CourseSheet.FIELD);
            String course = row.find(CourseSheet.COURSE);
            if (field != null && course != null) {
                courses.computeIfAbsent(field, key -> new HashSet<>()).add(course);
            }
        }
        for (Row row : tables.rows(PassSheet.SHEET)) {
            String field = row.find(PassSheet.FIELD);
            String course = row.find(PassSheet.COURSE);
            Set<String> known = courses.getOrDefault(String.valueOf(field), Set.of());
            if (field != null && course != null && !known.contains(course)) {
                objections.at(
                        row,
                        PassSheet.COURSE,
                        "a course of " + field + " on the sheet courses"
                                + Near.to(course, List.copyOf(known))
                                        .map(near -> "; did you mean " + near + "?")
                                        .orElse(""));
            }
        }
    }
}
