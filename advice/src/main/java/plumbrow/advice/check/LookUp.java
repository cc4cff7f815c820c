package plumbrow.advice.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;

/**
 * One thing to look up, and what it would settle.
 *
 * @param ask what to look up
 * @param about the product, feature or field it is looked up for
 * @param where where it is found
 * @param settles how many findings are unknown for want of it
 * @param courses how many courses those stand in
 * @param fields the fields of those courses
 * @param gates ids of the gates that ask
 */
public record LookUp(
        String ask, String about, Where where, int settles, int courses, List<String> fields, List<String> gates) {
    public LookUp {
        fields = List.copyOf(fields);
        gates = List.copyOf(gates);
    }

    private record Key(String ask, String about, Where where, String field, String course) {
        static Key of(CourseCheck check, Finding finding) {
            Where where = Where.of(finding);
            boolean ofOneField = where == Where.FIELD || where == Where.PLAN;
            return new Key(
                    finding.clears(),
                    where == Where.PLAN ? finding.subject() : thing(finding, where),
                    where,
                    ofOneField ? check.field().name() : "",
                    where == Where.PLAN ? check.course().name() : "");
        }

        /** The subject without the pass it was found in: a label is read once for all passes. */
        private static String thing(Finding finding, Where where) {
            String subject = finding.subject();
            int comma = subject.indexOf(", ");
            boolean pass = subject.startsWith("pass ") || subject.startsWith("log of ");
            String bare = pass && comma > 0 ? subject.substring(comma + 2) : subject;
            return where == Where.FIELD && bare.contains(", ") ? bare.substring(bare.indexOf(", ") + 2) : bare;
        }
    }

    /** What the courses wait for; that which settles most comes first. */
    static List<LookUp> of(List<CourseCheck> checks) {
        Map<Key, List<Finding>> asked = new LinkedHashMap<>();
        Map<Key, Set<CourseCheck>> courses = new LinkedHashMap<>();
        for (CourseCheck check : checks) {
            for (Finding finding : check.findings()) {
                if (finding.standing() == Standing.UNKNOWN) {
                    Key key = Key.of(check, finding);
                    asked.computeIfAbsent(key, first -> new ArrayList<>()).add(finding);
                    courses.computeIfAbsent(key, first -> new LinkedHashSet<>()).add(check);
                }
            }
        }
        return asked.entrySet().stream()
                .map(one -> lookUp(one.getKey(), one.getValue(), courses.getOrDefault(one.getKey(), Set.of())))
                .sorted(Comparator.comparingInt(LookUp::settles).reversed())
                .toList();
    }

    private static LookUp lookUp(Key key, List<Finding> findings, Set<CourseCheck> courses) {
        String about = key.course().isEmpty() ? key.about() : key.about() + " of " + key.course();
        boolean named = key.field().isEmpty() || key.field().equals(about);
        return new LookUp(
                key.ask(),
                named ? about : about + ", " + key.field(),
                key.where(),
                findings.size(),
                courses.size(),
                courses.stream().map(check -> check.field().name()).distinct().toList(),
                findings.stream().map(Finding::gate).distinct().toList());
    }
}
