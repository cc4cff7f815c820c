package plumbrow.advice.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;

/**
 * One thing that stands in the way or is to be kept, told once however many findings it is of: a label to read with all its
 * blanks, a ditch with every product's distance, the weather of the day for all that is sprayed.
 *
 * @param about what it is about: a product, a ditch on a field, an ingredient
 * @param line what it is and what to do, in one line that names its subject
 * @param told the findings it is made of, in their order; each finding that is not clear is in one matter
 */
public record Matter(MatterKind kind, String about, String line, List<Told> told) {
    private static final int MOST_NAMED = 6;
    private static final int MOST_WHERE = 3;
    private static final Set<String> OF_SEED =
            Set.of("treated-seed", "refuge-acres", "refuge-placement", "right-to-save");

    public Matter {
        told = List.copyOf(told);
    }

    /** A finding and the program it stands in. */
    public record Told(String field, String program, Finding finding) {
        public String place() {
            return program + " on " + field;
        }
    }

    private record Key(MatterKind kind, String what) {}

    /** The matters of programs, in the order of telling: barred first, and of what to look up that which settles most. */
    public static List<Matter> of(List<ProgramCheck> checks) {
        return ofFindings(checks.stream()
                .flatMap(check -> check.findings().stream()
                        .map(finding ->
                                new Told(check.field().name(), check.program().name(), finding)))
                .toList());
    }

    /** The matters of findings, of one program or many. */
    public static List<Matter> ofFindings(List<Told> findings) {
        Map<Key, List<Told>> matters = new LinkedHashMap<>();
        for (Told told : findings) {
            Standing standing = told.finding().standing();
            if (standing != Standing.CLEAR && standing != Standing.NOTHING_ASKED) {
                MatterKind kind = MatterKind.of(told.finding());
                matters.computeIfAbsent(new Key(kind, what(kind, told)), first -> new ArrayList<>())
                        .add(told);
            }
        }
        boolean many = findings.stream().map(Told::place).distinct().count() > 1;
        return matters.entrySet().stream()
                .map(one -> matter(one.getKey().kind(), one.getValue(), many))
                .sorted(Comparator.comparing(Matter::kind)
                        .thenComparing(matter -> matter.kind() == MatterKind.LOOK_UP
                                ? -matter.told().size()
                                : 0))
                .toList();
    }

    /** Findings of one matter have this in common. */
    private static String what(MatterKind kind, Told told) {
        Finding finding = told.finding();
        String thing = thing(finding);
        return switch (kind) {
            case BARRED -> finding.gate() + "|" + thing + "|" + finding.clears();
            case LOOK_UP -> {
                Where where = Where.of(finding);
                yield where
                        + switch (where) {
                            case LABEL -> product(finding);
                            case FIELD -> told.field();
                            case PLAN -> told.field() + "|" + told.program();
                            case FARM -> "";
                        };
            }
            case PLAN ->
                switch (finding.gate()) {
                    case "bulletin", "wear", "central-display", "notice" -> finding.gate();
                    case "setback-water", "setback-people", "setback-wildlife", "setback-neighbours" ->
                        "setback|" + told.field() + "|" + last(thing);
                    case "tank-mix", "right-to-save" -> finding.gate() + "|" + finding.clears();
                    default -> finding.gate() + "|" + product(finding);
                };
            case DAY, STEWARDSHIP -> finding.gate();
            case GAP -> finding.gap() == null ? thing : finding.gap().ingredient();
        };
    }

    private static Matter matter(MatterKind kind, List<Told> told, boolean many) {
        String about = about(kind, told);
        String line = switch (kind) {
            case LOOK_UP -> about + ": " + lookUps(told);
            case GAP ->
                about + ": the reference data lack "
                        + told.stream()
                                .flatMap(one -> Stream.ofNullable(one.finding().gap()))
                                .map(Finding.Gap::property)
                                .distinct()
                                .collect(Collectors.joining("; "))
                        + ". Unknown, and counted as the worst.";
            case BARRED -> says(told) + where(told, many);
            default -> duties(told) + (kind == MatterKind.PLAN ? where(told, many) : programs(told, many));
        };
        return new Matter(kind, about, line, told);
    }

    private static String about(MatterKind kind, List<Told> told) {
        Told first = told.get(0);
        String thing = thing(first.finding());
        return switch (kind) {
            case LOOK_UP ->
                switch (Where.of(first.finding())) {
                    case LABEL -> "Label or tag of " + product(first.finding());
                    case FIELD -> "Field " + first.field();
                    case PLAN -> "Plan of " + first.place();
                    case FARM -> "At the farm";
                };
            case GAP ->
                first.finding().gap() == null ? thing : first.finding().gap().ingredient();
            default -> names(things(told));
        };
    }

    /** "read 14 blanks: …", each once. */
    private static String lookUps(List<Told> told) {
        Set<String> asks = new LinkedHashSet<>();
        told.forEach(one -> asks.add(one.finding().clears()));
        return (asks.size() == 1 ? "" : asks.size() + " things. ") + String.join(" ", asks) + settles(told);
    }

    private static String settles(List<Told> told) {
        long programs = told.stream().map(Told::place).distinct().count();
        return " Settles " + told.size() + (told.size() == 1 ? " finding" : " findings") + " in " + programs
                + (programs == 1 ? " program." : " programs.");
    }

    private static String says(List<Told> told) {
        Finding finding = told.get(0).finding();
        String apart = told.stream().map(one -> one.finding().says()).distinct().count() == 1
                ? finding.says()
                : finding.says() + " And alike elsewhere.";
        return names(things(told)) + ": " + apart + " " + finding.clears();
    }

    /** What to do, each once, with the things it is of. */
    private static String duties(List<Told> told) {
        Map<String, Set<String>> duties = new LinkedHashMap<>();
        told.forEach(one -> duties.computeIfAbsent(one.finding().clears(), first -> new TreeSet<>())
                .add(thing(one.finding())));
        List<String> parts = new ArrayList<>();
        duties.forEach((duty, things) -> parts.add(names(List.copyOf(things)) + ": " + duty));
        return parts.size() <= MOST_NAMED
                ? String.join(" ", parts)
                : String.join(" ", parts.subList(0, MOST_NAMED)) + " And " + (parts.size() - MOST_NAMED) + " more.";
    }

    private static List<String> things(List<Told> told) {
        return told.stream().map(one -> thing(one.finding())).distinct().toList();
    }

    /** The subject without the pass it was found in. */
    static String thing(Finding finding) {
        String subject = finding.subject();
        int comma = subject.indexOf(", ");
        boolean pass = subject.startsWith("pass ") || subject.startsWith("log of ");
        return pass && comma > 0 ? subject.substring(comma + 2) : subject;
    }

    /** The product a finding is of; gates of seed name nothing else, whatever commas its name has. */
    private static String product(Finding finding) {
        String thing = thing(finding);
        int comma = thing.indexOf(", ");
        return comma < 0 || OF_SEED.contains(finding.gate()) ? thing : thing.substring(0, comma);
    }

    private static String last(String thing) {
        return thing.substring(thing.lastIndexOf(", ") < 0 ? 0 : thing.lastIndexOf(", ") + 2);
    }

    private static String names(List<String> names) {
        return names.size() <= MOST_NAMED
                ? String.join("; ", names)
                : String.join("; ", names.subList(0, MOST_NAMED)) + " and " + (names.size() - MOST_NAMED) + " more";
    }

    /** In which programs, where there are several to tell apart. */
    private static String where(List<Told> told, boolean many) {
        if (!many) {
            return "";
        }
        List<String> places = told.stream().map(Told::place).distinct().toList();
        return places.size() <= MOST_WHERE
                ? " (" + String.join("; ", places) + ")"
                : " (" + String.join("; ", places.subList(0, MOST_WHERE)) + "; " + (places.size() - MOST_WHERE)
                        + " more)";
    }

    private static String programs(List<Told> told, boolean many) {
        long places = told.stream().map(Told::place).distinct().count();
        return many ? " (" + places + (places == 1 ? " program)" : " programs)") : "";
    }

    /** How many programs it stands in. */
    public int programs() {
        return (int) told.stream().map(Told::place).distinct().count();
    }

    /** The fields it stands on. */
    public List<String> fields() {
        return told.stream().map(Told::field).distinct().toList();
    }

    /** The findings themselves, each once. */
    public List<Finding> findings() {
        return told.stream().map(Told::finding).distinct().toList();
    }
}
