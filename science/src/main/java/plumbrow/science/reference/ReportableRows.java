package plumbrow.science.reference;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import plumbrow.science.safety.CasCheck;

/** Reads rows of reportable quantities. */
final class ReportableRows {
    /** The rule knows these five; a few extremely hazardous substances keep 500 or 10,000 besides. */
    private static final Set<Double> STEPS = Set.of(1., 10., 100., 500., 1000., 5000., 10_000.);

    private ReportableRows() {}

    static Optional<Entry> read(Row row) {
        String name = row.needed("common_name", "the name of the substance");
        Optional<String> cas = row.as("cas", text -> Optional.of(text).filter(CasCheck::fits), SubstanceRows.CAS);
        Optional<ReportableQuantity.Law> law = row.as("law", ReportableQuantity.Law::find, "CERCLA or EPCRA");
        OptionalDouble pounds = row.number("rq_lb", 1, 10_000, "1, 10, 100, 500, 1000, 5000 or 10000 lb");
        if (row.sound() && (pounds.isEmpty() || !STEPS.contains(pounds.getAsDouble()))) {
            row.object("rq_lb", "1, 10, 100, 500, 1000, 5000 or 10000 lb");
        }
        String planning = row.text("tpq_lb");
        if (!planning.matches("|\\d+(/10000)?")) {
            row.object("tpq_lb", "nothing, pounds, or pounds/10000");
        }
        Optional<Backing> backing = row.backing();
        if (!row.sound() || cas.isEmpty() || law.isEmpty() || pounds.isEmpty()) {
            return Optional.empty();
        }
        return backing.map(status -> new ReportableQuantity(
                name,
                cas.get(),
                law.get(),
                pounds.getAsDouble(),
                planning,
                row.text("conditions"),
                row.origin(),
                status,
                row.number()));
    }
}
