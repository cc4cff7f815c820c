package plumbrow.advice.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;

/**
 * A product that may be used in one place of a season and is barred in another: the line in between is a state's or a
 * county's.
 *
 * @param places what the gates of place say of it, field by field
 */
public record AcrossLine(String product, List<Place> places) {
    private static final Set<String> GATES_OF_PLACE = Set.of("crop-on-label", "registered-in-state", "county");

    public AcrossLine {
        places = List.copyOf(places);
    }

    /**
     * What is said of it on one field.
     *
     * @param lies every county the field lies in: "Tamsen and Larkin County, MN"
     */
    public record Place(String field, String lies, Standing standing, Finding finding) {}

    static List<AcrossLine> of(SeasonCheck check) {
        Map<String, Set<Place>> products = new LinkedHashMap<>();
        Gates gates = Gates.of(check.season());
        for (ProgramCheck program : check.programs()) {
            for (Finding finding : program.findings()) {
                if (GATES_OF_PLACE.contains(finding.gate())) {
                    products.computeIfAbsent(product(finding), first -> new LinkedHashSet<>())
                            .add(new Place(
                                    program.field().name(),
                                    String.join(" and ", gates.counties(program.field())),
                                    finding.standing(),
                                    finding));
                }
            }
        }
        return products.entrySet().stream()
                .map(one -> told(one.getKey(), one.getValue()))
                .filter(AcrossLine::differs)
                .toList();
    }

    /** On each field what bars it, and where nothing does, its registration. */
    private static AcrossLine told(String product, Set<Place> all) {
        Set<String> barred = all.stream()
                .filter(place -> place.standing() == Standing.BARRED)
                .map(Place::field)
                .collect(Collectors.toSet());
        Set<String> gates = all.stream()
                .filter(place -> place.standing() == Standing.BARRED)
                .map(place -> place.finding().gate())
                .collect(Collectors.toSet());
        List<Place> told = new ArrayList<>();
        for (Place place : all) {
            boolean speaks = gates.contains(place.finding().gate());
            if (speaks
                    && (!barred.contains(place.field())
                            || place.standing() == Standing.BARRED
                            || severalCounties(place))) {
                told.add(place);
            }
        }
        return new AcrossLine(product, told);
    }

    private static boolean severalCounties(Place place) {
        return place.lies().contains(" and ");
    }

    private boolean differs() {
        return places.stream().anyMatch(place -> place.standing() == Standing.BARRED)
                && places.stream().anyMatch(place -> place.standing() != Standing.BARRED);
    }

    private static String product(Finding finding) {
        String subject = finding.subject();
        return subject.startsWith("pass ") ? subject.substring(subject.indexOf(", ") + 2) : subject;
    }
}
