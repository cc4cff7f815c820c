package plumbrow.science.reference;

import java.util.Optional;
import plumbrow.science.figure.Numbers;

/**
 * How much of a listed substance, lost within a day, must be reported in the United States.
 *
 * @param law the federal list it stands on
 * @param rqLb reportable quantity [lb], above 0; a loss equal to it counts
 * @param tpqLb threshold planning quantity [lb] as printed, "10/10000" for powders and others; empty where there is none
 */
public record ReportableQuantity(
        String name,
        String cas,
        Law law,
        double rqLb,
        String tpqLb,
        String conditions,
        Origin origin,
        Backing backing,
        int row)
        implements Entry {

    /** A federal list. */
    public enum Law {
        CERCLA,
        EPCRA;

        static Optional<Law> find(String name) {
            for (Law law : values()) {
                if (law.name().equals(name)) {
                    return Optional.of(law);
                }
            }
            return Optional.empty();
        }
    }

    @Override
    public String about() {
        return name + " (" + cas + ") " + law;
    }

    @Override
    public String says() {
        return Numbers.plain(rqLb) + " lb" + (tpqLb.isEmpty() ? "" : ", planning " + tpqLb);
    }
}
