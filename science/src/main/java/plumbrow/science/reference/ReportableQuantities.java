package plumbrow.science.reference;

import java.util.List;

/**
 * Federal reportable quantities. A name that is not found has none <em>here</em>: that is no answer to whether a loss must
 * be reported. States ask for less, and a form of the substance may be listed under another name or number.
 */
public final class ReportableQuantities {
    private static final List<ReportableQuantity> ALL = ReferenceSet.REPORTABLE.entries(ReportableQuantity.class);

    private ReportableQuantities() {}

    public static List<ReportableQuantity> all() {
        return ALL;
    }

    /** Every listing under a name, capitals ignored, or a CAS number; the same substance may stand on both lists. */
    public static List<ReportableQuantity> find(String nameOrCas) {
        String asked = nameOrCas.strip();
        return ALL.stream()
                .filter(listed ->
                        listed.name().equalsIgnoreCase(asked) || listed.cas().equals(asked))
                .toList();
    }
}
