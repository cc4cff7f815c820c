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
 * @param programs how many programs those stand in
 * @param fields the fields of those programs
 * @param gates ids of the gates that ask
 */
public record LookUp(
        String ask, String about, Where where, int settles, int programs, List<String> fields, List<String> gates) {
    public LookUp {
        fields = List.copyOf(fields);
        gates = List.copyOf(gates);
    }

    private record Key(String ask, String about, Where where, String field, String program) {
        static Key of(ProgramCheck check, Finding finding) {
            Where where = Where.of(finding);
            boolean ofOneField = where == Where.FIELD || where == Where.PLAN;
            return new Key(
                    finding.clears(),
                    where == Where.PLAN ? finding.subject() : LookUp.thing(finding, where),
                    where,
                    ofOneField ? check.field().name() : "",
                    where == Where.PLAN ? check.program().name() : "");
        }
    }

    /** What an unknown finding is of, without the pass it was found in: a label is read once for all passes. */
    public static String thing(Finding finding) {
        return thing(finding, Where.of(finding));
    }

    private static String thing(Finding finding, Where where) {
        String subject = finding.subject();
        int comma = subject.indexOf(", ");
        boolean pass = subject.startsWith("pass ") || subject.startsWith("log of ");
        String bare = pass && comma > 0 ? subject.substring(comma + 2) : subject;
        return where == Where.FIELD && bare.contains(", ") ? bare.substring(bare.indexOf(", ") + 2) : bare;
    }

    /** What the programs wait for; that which settles most comes first. */
    static List<LookUp> of(List<ProgramCheck> checks) {
        Map<Key, List<Finding>> asked = new LinkedHashMap<>();
        Map<Key, Set<ProgramCheck>> programs = new LinkedHashMap<>();
        for (ProgramCheck check : checks) {
            for (Finding finding : check.findings()) {
                if (finding.standing() == Standing.UNKNOWN) {
                    Key key = Key.of(check, finding);
                    asked.computeIfAbsent(key, first -> new ArrayList<>()).add(finding);
                    programs.computeIfAbsent(key, first -> new LinkedHashSet<>())
                            .add(check);
                }
            }
        }
        return asked.entrySet().stream()
                .map(one -> lookUp(one.getKey(), one.getValue(), programs.getOrDefault(one.getKey(), Set.of())))
                .sorted(Comparator.comparingInt(LookUp::settles).reversed())
                .toList();
    }

    private static LookUp lookUp(Key key, List<Finding> findings, Set<ProgramCheck> programs) {
        String about = key.program().isEmpty() ? key.about() : key.about() + " of " + key.program();
        boolean named = key.field().isEmpty() || key.field().equals(about);
        return new LookUp(
                key.ask(),
                named ? about : about + ", " + key.field(),
                key.where(),
                findings.size(),
                programs.size(),
                programs.stream().map(check -> check.field().name()).distinct().toList(),
                findings.stream().map(Finding::gate).distinct().toList());
    }
}
